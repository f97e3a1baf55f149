package strickle.plan;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strickle.book.Fault;
import strickle.book.Faulty;

/**
 * Gathers what is wrong with one record of a plan, so that all of it is told at once. Paths are
 * relative to the record; a part that is null counts as not given.
 */
final class Flaws {

  private static final int FIRST_YEAR = 1970;
  private static final int LAST_YEAR = 2999;

  private final List<Fault> faults = new ArrayList<>();

  /** Notes a fault when {@code wrong}. */
  Flaws when(boolean wrong, String path, Object found, String right) {
    if (wrong) {
      faults.add(new Fault(path, found == null ? "nothing" : found.toString(), right));
    }
    return this;
  }

  /** Something has to be given; says whether it was. */
  boolean given(String path, Object value, String right) {
    when(value == null, path, value, right);
    return value != null;
  }

  /** An id that has to say something. */
  Flaws id(String path, String id) {
    String found = id == null ? null : "\"" + id + "\"";
    return when(id == null || id.isBlank(), path, found, "an id that is not blank");
  }

  /** A count or an amount of at least {@code least}. */
  Flaws atLeast(long least, String path, long found) {
    return when(found < least, path, found, "a whole number, " + least + " or more");
  }

  /** Grams: a number, and not below nothing. */
  Flaws grams(String path, double grams) {
    boolean wrong = !(grams >= 0) || Double.isInfinite(grams);
    return when(wrong, path, grams, "a number of grams, 0 or more");
  }

  /** A time of a year that can be meant. */
  Flaws time(String path, OffsetDateTime at) {
    boolean wrong = at == null || at.getYear() < FIRST_YEAR || at.getYear() > LAST_YEAR;
    return when(wrong, path, at, "a time with its offset, from " + FIRST_YEAR + " to " + LAST_YEAR);
  }

  /** Two times of which the second may not come first. */
  Flaws order(String path, OffsetDateTime from, OffsetDateTime to) {
    boolean wrong = from != null && to != null && to.isBefore(from);
    return when(wrong, path, to, "a time not before " + from);
  }

  /** Something that may be there or not, but is never null itself. */
  <T> Optional<T> optional(String path, Optional<T> value) {
    return given(path, value, "a value or none") ? value : Optional.empty();
  }

  /** An unmodifiable copy; a missing list or item is a fault and leaves the copy empty. */
  <T> List<T> list(String path, List<T> list) {
    if (!given(path, list, "a list, empty when there is nothing in it")) {
      return List.of();
    }
    boolean whole = true;
    for (int i = 0; i < list.size(); i++) {
      whole &= given(path + "[" + i + "]", list.get(i), "something, or no place in the list");
    }
    return whole ? List.copyOf(list) : List.of();
  }

  /**
   * Ends the gathering.
   *
   * @throws Faulty when anything was noted
   */
  void raise() {
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
  }
}
