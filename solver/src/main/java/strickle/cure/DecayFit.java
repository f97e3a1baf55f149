package strickle.cure;

import java.util.List;
import java.util.stream.IntStream;

/**
 * The rate that fits a log best, and all rates that 90 of 100 such logs would not rule out: those
 * whose squares exceed the least by no more than s² t² (profile likelihood). Looked for on a
 * lattice of rates, and the best among its neighbours by golden section.
 */
final class DecayFit {

  /** A loss that slows by less than this over the whole log has no end to be seen. */
  private static final double LEAST_SLOWING = 0.1;

  /** After so many times its mean life between two weighings nothing is left to fit. */
  private static final double MOST_SLOWING = 8;

  private static final int LATTICE = 400;
  private static final int SECTIONS = 80;
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
  private static final int UNKNOWNS = 3;

  private final DryingLog log;
  private final List<Decay> lattice;
  private final int bestPlace;
  private final Decay best;

  private DecayFit(DryingLog log, List<Decay> lattice, int bestPlace, Decay best) {
    this.log = log;
    this.lattice = lattice;
    this.bestPlace = bestPlace;
    this.best = best;
  }

  /** The fit of a log. */
  static DecayFit of(DryingLog log) {
    double least = LEAST_SLOWING / (log.lastDays() - log.firstDays());
    double most = MOST_SLOWING / log.shortestDays();
    List<Decay> lattice = lattice(log, least, most);
    int place = 0;
    for (int i = 1; i < LATTICE; i++) {
      place = lattice.get(i).squares() < lattice.get(place).squares() ? i : place;
    }
    double rate = lattice.get(place).rate();
    double step = lattice.get(1).rate() / lattice.get(0).rate();
    Decay refined = refined(log, rate / step, rate * step);
    Decay best = refined.squares() < lattice.get(place).squares() ? refined : lattice.get(place);
    return new DecayFit(log, lattice, place, best);
  }

  private static Decay refined(DryingLog log, double low, double high) {
    double from = low;
    double to = high;
    for (int i = 0; i < SECTIONS; i++) {
      double left = to - GOLDEN * (to - from);
      double right = from + GOLDEN * (to - from);
      if (Decay.of(log, left).squares() < Decay.of(log, right).squares()) {
        to = right;
      } else {
        from = left;
      }
    }
    return Decay.of(log, (from + to) / 2);
  }

  /** The curve that fits best. */
  Decay best() {
    return best;
  }

  /**
   * Standard deviation of the weights from the best curve, in grams, and never less than what the
   * steps of the scale make of any weight.
   */
  double missGrams() {
    double rounding = log.scaleStepGrams() / Math.sqrt(12);
    return Math.max(rounding, Math.sqrt(best.squares() / freedom()));
  }

  /** By how much the squares of a curve may still grow before it is ruled out; below 0 if it is. */
  double room(Decay curve) {
    double reach = StudentT.ninety(freedom()) * missGrams();
    return best.squares() + reach * reach - curve.squares();
  }

  /** Curves that are not ruled out, from the slowest to the fastest, close to each other. */
  List<Decay> region() {
    double slowest = best.rate();
    double fastest = best.rate();
    for (Decay one : lattice) {
      slowest = room(one) >= 0 ? Math.min(slowest, one.rate()) : slowest;
      fastest = room(one) >= 0 ? Math.max(fastest, one.rate()) : fastest;
    }
    // A lattice of its own, as the first may be coarse beside a narrow band.
    double step = lattice.get(1).rate() / lattice.get(0).rate();
    return lattice(log, slowest / step, fastest * step).stream()
        .filter(one -> room(one) >= 0)
        .toList();
  }

  private static List<Decay> lattice(DryingLog log, double least, double most) {
    double step = Math.log(most / least) / (LATTICE - 1);
    return IntStream.range(0, LATTICE)
        .mapToObj(i -> Decay.of(log, least * Math.exp(i * step)))
        .toList();
  }

  /** Whether a loss that does not slow is not ruled out. */
  boolean slowestIsPossible() {
    return room(lattice.get(0)) >= 0;
  }

  /** Whether the fastest loss there is fits best. */
  boolean fastestIsBest() {
    return bestPlace == LATTICE - 1;
  }

  private int freedom() {
    return log.weighings().size() - UNKNOWNS;
  }
}
