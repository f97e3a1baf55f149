package strickle.plan.audit;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.SortedMap;
import java.util.TreeMap;
import strickle.book.RestsOn;

/** Rule 6: what rests at a station finds its places there. */
final class StationsRule implements Rule {

  @Override
  public int number() {
    return 6;
  }

  @Override
  public void read(Facts facts, Findings findings) {
    Map<String, SortedMap<Long, Long>> changes = new HashMap<>();
    for (Course course : facts.courses()) {
      for (int number = 1; number <= course.piece().route().size(); number++) {
        rest(facts, course, number, changes);
      }
    }
    facts
        .book()
        .stations()
        .forEach(
            station ->
                places(
                    facts,
                    "station " + station.id(),
                    station.places(),
                    changes.getOrDefault(station.id(), new TreeMap<>()),
                    findings));
  }

  /** Notes by how many the places taken change, and when. */
  private static void rest(
      Facts facts, Course course, int number, Map<String, SortedMap<Long, Long>> changes) {
    Optional<RestsOn> rests = course.step(number).restsOn();
    Optional<Stint> step = course.stages().get(number);
    if (rests.isEmpty() || step.isEmpty()) {
      return;
    }
    OptionalLong until = until(facts, course, number);
    if (until.isEmpty()) {
      return;
    }
    long from = step.get().start();
    if (from < until.getAsLong()) {
      long places = course.pieces() * rests.get().placesEach();
      SortedMap<Long, Long> there =
          changes.computeIfAbsent(rests.get().station(), station -> new TreeMap<>());
      there.merge(from, places, Long::sum);
      there.merge(until.getAsLong(), -places, Long::sum);
    }
  }

  private static OptionalLong until(Facts facts, Course course, int number) {
    boolean isLast = number == course.piece().route().size();
    if (course.isLost() && (isLast || course.stages().get(number + 1).isEmpty())) {
      return course.stages().get(number).map(last -> OptionalLong.of(last.end())).orElseThrow();
    }
    if (isLast) {
      return facts.ready(course);
    }
    return course
        .stages()
        .get(number + 1)
        .map(next -> OptionalLong.of(next.start()))
        .orElseGet(OptionalLong::empty);
  }

  /** Tells each time the places taken rise above what there is. */
  private static void places(
      Facts facts, String where, long places, SortedMap<Long, Long> changes, Findings findings) {
    long taken = 0;
    for (Map.Entry<Long, Long> change : changes.entrySet()) {
      taken += change.getValue();
      findings.unless(
          taken <= places || change.getValue() <= 0,
          where,
          taken + " places taken of " + places + " from " + facts.time().say(change.getKey()));
    }
  }
}
