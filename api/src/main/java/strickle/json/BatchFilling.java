package strickle.json;

import java.util.List;
import java.util.Optional;
import strickle.mix.Enough;

/**
 * A mould that a batch is for, or a plain volume.
 *
 * @param mould its id; nothing for a volume
 * @param castings how many castings
 * @param volumeMl what one takes, without waste
 * @param wastePercent what is lost beside it
 * @param gramsEach wet mix of one casting, waste included
 * @param onHand how many castings there is material for
 * @param bags how many a bag of each material makes
 */
public record BatchFilling(
    Optional<String> mould,
    int castings,
    double volumeMl,
    double wastePercent,
    double gramsEach,
    Optional<Enough> onHand,
    List<Enough> bags) {

  private static final double ML_PER_LITRE = 1000;
  private static final double PERCENT = 100;

  /** One that nothing is worked out of yet. */
  public static BatchFilling of(
      Optional<String> mould, int castings, double volumeMl, double wastePercent) {
    return new BatchFilling(
        mould, castings, volumeMl, wastePercent, 0, Optional.empty(), List.of());
  }

  /** The same of a mix so dense. */
  BatchFilling at(double kgPerM3) {
    double grams = volumeMl / ML_PER_LITRE * kgPerM3 * (1 + wastePercent / PERCENT);
    return new BatchFilling(mould, castings, volumeMl, wastePercent, grams, onHand, bags);
  }

  /** The same with what there is to make it from. */
  BatchFilling from(Optional<Enough> there, List<Enough> perBag) {
    return new BatchFilling(mould, castings, volumeMl, wastePercent, gramsEach, there, perBag);
  }

  /** Wet mix of all castings. */
  double grams() {
    return castings * gramsEach;
  }
}
