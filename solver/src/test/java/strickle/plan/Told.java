package strickle.plan;

import java.time.LocalDateTime;
import java.util.Optional;
import java.util.OptionalInt;
import strickle.plan.replan.Happening;
import strickle.plan.replan.HappeningKind;

/** What has happened, as a test tells it in a few words. An empty end: somebody is still at it. */
final class Told {

  private static final Optional<String> NOTHING = Optional.empty();

  private Told() {}

  static Happening poured(String lot, String person, String start, String end) {
    return task(HappeningKind.POURED, Optional.of(lot), NOTHING, 0, person, start, end);
  }

  static Happening demoulded(String run, String person, String start, String end) {
    return task(HappeningKind.DEMOULDED, NOTHING, Optional.of(run), 0, person, start, end);
  }

  static Happening step(String run, int step, String person, String start, String end) {
    return task(HappeningKind.STEP, NOTHING, Optional.of(run), step, person, start, end);
  }

  private static Happening task(
      HappeningKind kind,
      Optional<String> lot,
      Optional<String> run,
      int step,
      String person,
      String start,
      String end) {
    return new Happening(
        kind,
        lot,
        run,
        step == 0 ? OptionalInt.empty() : OptionalInt.of(step),
        Optional.of(person),
        Optional.of(LocalDateTime.parse(start)),
        Optional.of(end).filter(at -> !at.isEmpty()).map(LocalDateTime::parse),
        OptionalInt.empty(),
        NOTHING,
        OptionalInt.empty(),
        Optional.empty(),
        Optional.empty());
  }

  static Happening scrapped(String run, int pieces) {
    return new Happening(
        HappeningKind.SCRAPPED,
        NOTHING,
        Optional.of(run),
        OptionalInt.empty(),
        NOTHING,
        Optional.empty(),
        Optional.empty(),
        OptionalInt.of(pieces),
        NOTHING,
        OptionalInt.empty(),
        Optional.empty(),
        Optional.empty());
  }

  static Happening away(String person, String from, String to) {
    return new Happening(
        HappeningKind.AWAY,
        NOTHING,
        NOTHING,
        OptionalInt.empty(),
        Optional.of(person),
        Optional.empty(),
        Optional.empty(),
        OptionalInt.empty(),
        NOTHING,
        OptionalInt.empty(),
        Optional.of(LocalDateTime.parse(from)),
        Optional.of(LocalDateTime.parse(to)));
  }

  static Happening broken(String form, int count, String from) {
    return thing(HappeningKind.BROKEN, form, count, from, Optional.empty());
  }

  static Happening broken(String form, int count, String from, String to) {
    return thing(HappeningKind.BROKEN, form, count, from, Optional.of(to));
  }

  static Happening mended(String form, int count, String from) {
    return thing(HappeningKind.MENDED, form, count, from, Optional.empty());
  }

  static Happening back(String person, String from) {
    return new Happening(
        HappeningKind.BACK,
        NOTHING,
        NOTHING,
        OptionalInt.empty(),
        Optional.of(person),
        Optional.empty(),
        Optional.empty(),
        OptionalInt.empty(),
        NOTHING,
        OptionalInt.empty(),
        Optional.of(LocalDateTime.parse(from)),
        Optional.empty());
  }

  private static Happening thing(
      HappeningKind kind, String form, int count, String from, Optional<String> to) {
    return new Happening(
        kind,
        NOTHING,
        NOTHING,
        OptionalInt.empty(),
        NOTHING,
        Optional.empty(),
        Optional.empty(),
        OptionalInt.empty(),
        Optional.of(form),
        OptionalInt.of(count),
        Optional.of(LocalDateTime.parse(from)),
        to.map(LocalDateTime::parse));
  }
}
