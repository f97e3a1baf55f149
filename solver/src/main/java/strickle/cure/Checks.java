package strickle.cure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import strickle.book.Fault;
import strickle.book.Faulty;

/** Gathers what is wrong with a record, so that all of it is told at once. */
final class Checks {

  private final List<Fault> faults = new ArrayList<>();

  /** A number between two, both allowed. */
  void between(String path, double value, double least, double most) {
    String right = "a number from " + shown(least) + " to " + shown(most);
    that(least <= value && value <= most, path, shown(value), right);
  }

  /** A number above one and not above another. */
  void above(String path, double value, double bound, double most) {
    String right = "a number above " + shown(bound) + ", at most " + shown(most);
    that(bound < value && value <= most, path, shown(value), right);
  }

  /** Notes a fault unless the rule holds. */
  void that(boolean holds, String path, String found, String right) {
    if (!holds) {
      faults.add(new Fault(path, found, right));
    }
  }

  /**
   * Ends the check.
   *
   * @throws Faulty when anything is wrong
   */
  void done() {
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
  }

  /** A number as a person would write it. */
  static String shown(double value) {
    return Double.isFinite(value)
        ? BigDecimal.valueOf(value).stripTrailingZeros().toPlainString()
        : Double.toString(value);
  }
}
