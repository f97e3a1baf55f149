package strickle.cli;

import java.util.List;
import java.util.Optional;
import strickle.mix.Enough;

/**
 * A mould that a batch is for, or a plain volume.
 *
 * @param mould its id; "volume" when there is no mould
 * @param castings how many castings
 * @param volumeMl what one takes, without waste
 * @param wastePercent what is lost beside it
 * @param gramsEach wet mix of one casting, waste included
 * @param onHand how many castings there is material for
 * @param bags how many a bag of each material makes
 */
record Filling(
    String mould,
    int castings,
    double volumeMl,
    double wastePercent,
    double gramsEach,
    Optional<Enough> onHand,
    List<Enough> bags) {

  /** One that nothing is worked out of yet. */
  static Filling of(String mould, int castings, double volumeMl, double wastePercent) {
    return new Filling(mould, castings, volumeMl, wastePercent, 0, Optional.empty(), List.of());
  }

  /** The same of a mix so dense. */
  Filling at(double kgPerM3) {
    double grams = volumeMl / 1000 * kgPerM3 * (1 + wastePercent / 100);
    return new Filling(mould, castings, volumeMl, wastePercent, grams, onHand, bags);
  }

  /** The same with what there is to make it from. */
  Filling from(Optional<Enough> there, List<Enough> perBag) {
    return new Filling(mould, castings, volumeMl, wastePercent, gramsEach, there, perBag);
  }

  /** Wet mix of all castings. */
  double grams() {
    return castings * gramsEach;
  }
}
