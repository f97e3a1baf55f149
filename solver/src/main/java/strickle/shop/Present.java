package strickle.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Lays out again what another schedule did, to go on from there: its steps are tried in the order
 * in which they started, and as long as one then gets a place it did not have, because it came
 * before another that had taken that place, it is put behind that one. A step in the place it had
 * is in nobody's way, so this ends at an order that leads to the other schedule, if there is one.
 * Jobs that the other schedule does not have are then tried at several places among the others.
 */
final class Present {

  /** Further jobs are tried at so many places at least, and at more if there are schedules left. */
  private static final int PLACES = 4;

  /** This part of the schedules that are left may go into finding a place for them. */
  private static final long SHARE = 4;

  /** After so many steps put behind others without getting further, it goes no further. */
  private static final int PATIENCE = 60;

  private final Tables tables;
  private final Claims claims;
  private final Trials trials;
  private final List<Past.Step> steps;
  private final List<Integer> further;

  private Present(Tables tables, Trials trials, List<Schedule.Lot> lots) {
    this.tables = tables;
    this.claims = trials.decoder().claims();
    this.trials = trials;
    this.steps = new ArrayList<>(Past.of(tables, claims, lots));
    List<Integer> known = steps.stream().flatMap(step -> step.claims().stream()).toList();
    boolean[] isKnown = new boolean[claims.jobClaims];
    known.forEach(claim -> isKnown[claim] = true);
    this.further =
        IntStream.range(0, claims.jobClaims).filter(claim -> !isKnown[claim]).boxed().toList();
  }

  /** Tries what the lots of another schedule did, if there are any. */
  static void tryAgain(Tables tables, Trials trials, List<Schedule.Lot> lots) {
    if (!lots.isEmpty()) {
      Present present = new Present(tables, trials, lots);
      present.repair();
      present.tryFurther();
    }
  }

  private void repair() {
    int furthest = -1;
    int patience = PATIENCE;
    while (patience > 0 && !trials.spent()) {
      boolean fits = trials.tryOrder(order(steps.size()));
      OptionalInt astray = fits ? firstAstray() : OptionalInt.empty();
      if (astray.isEmpty()) {
        return;
      }
      patience = astray.getAsInt() > furthest ? PATIENCE : patience - 1;
      furthest = Math.max(furthest, astray.getAsInt());
      int behind = inTheWay(astray.getAsInt());
      steps.add(behind, steps.remove(astray.getAsInt()));
    }
  }

  private void tryFurther() {
    int places = (int) Math.max(PLACES, Math.min(trials.left() / SHARE, steps.size()));
    for (int place = 0; place < places && !further.isEmpty(); place++) {
      trials.tryOrder(order(steps.size() * place / places));
    }
  }

  /** The first step that got another place than it had. */
  private OptionalInt firstAstray() {
    return IntStream.range(0, steps.size())
        .filter(step -> stray(steps.get(step)).isPresent())
        .findFirst();
  }

  /** The first activity of a step that does not start when it did. */
  private Optional<Stray> stray(Past.Step step) {
    Timetable timetable = trials.decoder().timetable();
    for (Past.Part part : step.parts()) {
      int slot = timetable.runSlot[trials.decoder().runOf(part.job())] + part.local();
      for (Schedule.Placed had : part.places()) {
        if (timetable.start[slot] != had.start()) {
          return Optional.of(
              new Stray(
                  timetable.worker[slot], timetable.start[slot], timetable.end[slot], had.start()));
        }
        slot++;
      }
    }
    return Optional.empty();
  }

  /** An activity that went astray: who does it, when now, and when it started before. */
  private record Stray(int worker, int start, int end, int had) {

    boolean takesWorker(Schedule.Placed other) {
      return other.worker() == worker && other.start() < end && start < other.end();
    }

    boolean shouldHaveWaitedFor(Schedule.Placed other) {
      return other.start() < Math.max(end, had) && start < other.end();
    }
  }

  /**
   * The next step whose worker was taken by the one that went astray; or else that was about when
   * it should have waited; or else just the next.
   */
  private int inTheWay(int astray) {
    Stray stray = stray(steps.get(astray)).orElseThrow();
    OptionalInt sameWorker = next(astray, stray::takesWorker);
    OptionalInt inThatTime = next(astray, stray::shouldHaveWaitedFor);
    int next = Math.min(astray + 1, steps.size() - 1);
    return sameWorker.orElse(inThatTime.orElse(next));
  }

  private OptionalInt next(int from, Predicate<Schedule.Placed> test) {
    return IntStream.range(from + 1, steps.size())
        .filter(
            step ->
                steps.get(step).parts().stream()
                    .flatMap(part -> part.places().stream())
                    .anyMatch(test))
        .findFirst();
  }

  /** The steps in their order, with the further jobs before step {@code at}. */
  private int[] order(int at) {
    List<Integer> order = new ArrayList<>();
    Lots lots = new Lots(tables, new Timetable(tables));
    boolean formed = false;
    int nextBreak = claims.jobClaims;
    for (int i = 0; i <= steps.size(); i++) {
      if (i == at) {
        order.addAll(further);
      }
      if (i < steps.size()) {
        Past.Step step = steps.get(i);
        if (claims.segment[step.claims().get(0)] == 0) {
          if (formed && joins(lots, step) && nextBreak < claims.count()) {
            order.add(nextBreak++);
          }
          form(lots, step, formed);
          formed = true;
        }
        order.addAll(step.claims());
      }
    }
    IntStream.range(nextBreak, claims.count()).forEach(order::add);
    return order.stream().mapToInt(Integer::intValue).toArray();
  }

  /** Whether the step's first job would join the lot before it, which it did not. */
  private boolean joins(Lots lots, Past.Step step) {
    int job = claims.job[step.claims().get(0)];
    return lots.sameFamily(job) && lots.join(job);
  }

  private void form(Lots lots, Past.Step step, boolean formed) {
    if (formed) {
      lots.drop();
    }
    lots.begin(claims.job[step.claims().get(0)]);
    step.claims().stream().skip(1).forEach(claim -> lots.force(claims.job[claim]));
  }
}
