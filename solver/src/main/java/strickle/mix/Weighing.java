package strickle.mix;

import java.util.ArrayList;
import java.util.List;
import strickle.book.Fault;
import strickle.book.Faulty;

/**
 * How a batch is put on the scale.
 *
 * @param stepGrams what the scale counts in, 0.001 to 100000 grams
 * @param roundUpGrams the batch is rounded up to a whole multiple of this; 0 for no rounding up, at
 *     most 10⁹ grams
 */
public record Weighing(double stepGrams, double roundUpGrams) {

  /** To a tenth of a gram, as in a plan. */
  public static final Weighing USUAL = new Weighing(0.1, 0);

  /** The finest scale there is, in grams. */
  static final double LEAST_STEP = 0.001;

  private static final double MOST_STEP = 100_000;
  private static final double MOST_ROUND_UP = 1e9;

  /** Nearer than this to a whole multiple is one. */
  private static final double ROUND_OFF = 1e-9;

  /** Throws {@link Faulty} with every fault, paths relative to this. */
  public Weighing {
    List<Fault> faults = new ArrayList<>();
    if (!(LEAST_STEP <= stepGrams && stepGrams <= MOST_STEP)) {
      faults.add(new Fault(".stepGrams", stepGrams + "", "0.001 to 100000 g"));
    }
    if (!(0 <= roundUpGrams && roundUpGrams <= MOST_ROUND_UP)) {
      faults.add(new Fault(".roundUpGrams", roundUpGrams + "", "0 to 10⁹ g"));
    }
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
  }

  /** What is mixed when so many grams are needed. */
  double roundedUp(double neededGrams) {
    return roundUpGrams == 0
        ? neededGrams
        : Math.ceil(neededGrams / roundUpGrams - ROUND_OFF) * roundUpGrams;
  }
}
