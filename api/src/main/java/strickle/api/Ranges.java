package strickle.api;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import strickle.book.Fault;
import strickle.book.Faulty;

/** Gathers what is out of range in what was sent; a message's constructor tells it all at once. */
final class Ranges {

  private final List<Fault> faults = new ArrayList<>();

  /**
   * Notes a number that is not from one to another.
   *
   * @param path of the field, relative to the message
   * @param what such a number is, such as "a temperature in °C"
   */
  Ranges within(String path, OptionalDouble value, double least, double most, String what) {
    String right = what + " from " + shown(least) + " to " + shown(most);
    return must(value.stream().allMatch(v -> least <= v && v <= most), path, found(value), right);
  }

  /** Notes a number that is not above 0, or above another. */
  Ranges above(String path, OptionalDouble value, double most, String what) {
    String right = what + " above 0, at most " + shown(most);
    return must(value.stream().allMatch(v -> 0 < v && v <= most), path, found(value), right);
  }

  /** Notes what does not hold. */
  Ranges must(boolean holds, String path, String found, String right) {
    if (!holds) {
      faults.add(new Fault(path, found, right));
    }
    return this;
  }

  /**
   * Ends it.
   *
   * @throws Faulty when anything was noted
   */
  void done() {
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
  }

  private static String found(OptionalDouble value) {
    return value.isPresent() ? shown(value.getAsDouble()) : "nothing";
  }

  /** A number without an exponent. */
  static String shown(double value) {
    return Double.isFinite(value)
        ? BigDecimal.valueOf(value).stripTrailingZeros().toPlainString()
        : Double.toString(value);
  }
}
