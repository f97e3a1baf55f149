package strickle.safety;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How long a piece would rather wait for its first coat than its route lets it. No book says what a
 * recipe needs, so it goes by the figures next to it: the set of its own mould, what the book gives
 * the same mix before the same coat elsewhere, and common practice.
 *
 * @param words what it needs, as the end of a sentence
 * @param basis whose figure that is
 * @param sure whether the book's own figures leave no doubt
 */
record CureNeed(String words, String basis, boolean sure) {

  /** So long, at 20 °C, a piece waits for its first coat; common practice, no source. */
  static final double USUAL_HOURS = 72;

  /** So many times as long elsewhere is another cure, not another thickness; common practice. */
  private static final double ANOTHER_CURE = 2;

  /** How long another route of the book waits, and where. */
  private record Elsewhere(String path, double hours) {}

  /**
   * What a route falls short of; empty when it waits long enough.
   *
   * @param first its first coat
   * @param out hours from the demould to it
   */
  static Optional<CureNeed> of(Course course, int first, double out) {
    double set = course.mould().setHours();
    if (out < set) {
      return Optional.of(set(course, set));
    }
    Optional<CureNeed> own =
        elsewhere(course, first)
            .filter(other -> other.hours() >= Math.max(USUAL_HOURS, ANOTHER_CURE * out))
            .map(other -> own(course, other));
    return out < USUAL_HOURS ? own.or(() -> Optional.of(usual())) : own;
  }

  private static CureNeed set(Course course, double hours) {
    return new CureNeed(
        "its mould alone takes " + RouteSense.hours(hours) + " to set",
        "setHours of the mould \"" + course.mould().name() + "\"",
        true);
  }

  private static CureNeed own(Course course, Elsewhere other) {
    String mix = course.book().mix(course.piece().mix()).name();
    return new CureNeed(
        "the mix \"" + mix + "\" gets " + RouteSense.hours(other.hours()) + " elsewhere",
        "the waits before " + other.path(),
        false);
  }

  private static CureNeed usual() {
    return new CureNeed(
        RouteSense.hours(USUAL_HOURS) + " at 20 °C and more are usual",
        "common practice, no source; the mix says nothing of its cure",
        false);
  }

  private static Optional<Elsewhere> elsewhere(Course course, int first) {
    return Course.of(course.book()).stream()
        .filter(other -> other.piece().mix().equals(course.piece().mix()))
        .flatMap(other -> waits(other, course.uses(first)))
        .max(Comparator.comparingDouble(Elsewhere::hours));
  }

  private static Stream<Elsewhere> waits(Course other, List<String> coat) {
    return other.firstSeal().stream()
        .filter(seal -> other.uses(seal).equals(coat))
        .mapToObj(seal -> new Elsewhere(other.path(seal), other.hours(-1, seal)));
  }
}
