package strickle.plan;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.plan.replan.Comparison;
import strickle.shop.Budget;
import strickle.shop.NoRoomException;
import strickle.shop.Schedule;
import strickle.shop.Scheduler;

/** Looks for the best plan in which some tasks stay, and lets go of what cannot. */
final class RestSearch {

  /** A lot that finds no room is let go of, or put behind the others, so often at the most. */
  private static final int MOST_ATTEMPTS = 500;

  /** A lot under way that finds no room is put behind the others so often. */
  private static final int MOST_TIMES_LAST = 3;

  static final String NO_ROOM = "it finds no room beside what is under way";

  private final Standing standing;
  private final RestPins pins;
  private final Owed owed;
  private final Effort effort;
  private final long seed;
  private final List<Aim> aims;
  private final RestShop shop;
  private final Keeping keeping;
  private Scheduler scheduler;
  private boolean stopped;

  /**
   * A search.
   *
   * @param aims what is looked at in place of the orders' dues; none: the dues
   */
  RestSearch(
      Standing standing, Owed owed, RestPins pins, Effort effort, long seed, List<Aim> aims) {
    this.standing = standing;
    this.owed = owed;
    this.pins = pins;
    this.effort = effort;
    this.seed = seed;
    this.aims = List.copyOf(aims);
    int horizon = standing.now() + Planning.horizon(standing.book(), standing.time());
    this.shop = new RestShop(standing, owed, horizon);
    this.keeping =
        new Keeping(standing, shop.hours(), shop.oneOfEach().shop().clocks(), owed, pins);
  }

  /** Ends the search soon. */
  synchronized void stop() {
    stopped = true;
    if (scheduler != null) {
      scheduler.stop();
    }
  }

  /** The present plan with what is still to come pushed back as far as it has to be. */
  Pushing pushing(boolean anybody, int until) {
    return new Pushing(
        standing, shop.hours(), shop.oneOfEach().shop().clocks(), pins, anybody, until);
  }

  /** What keeps tasks of the present plan from being where they were planned. */
  ThawReasons thawReasons(Plan after) {
    return new ThawReasons(standing, shop.hours(), shop.oneOfEach().shop().clocks(), owed, after);
  }

  /** The best plan found in which those tasks stay that are wanted to and can. */
  RestPlan of(Reading reading, double share) {
    Set<String> free = new HashSet<>();
    List<String> last = new ArrayList<>();
    Map<String, String> reasons =
        new LinkedHashMap<>(reading.pushed().map(Pushing::reasons).orElse(Map.of()));
    for (int attempt = 0; attempt < MOST_ATTEMPTS; attempt++) {
      List<KeptLot> kept = kept(reading, free, last);
      keeping.reasons().forEach(reasons::putIfAbsent);
      StudioShop ofDues = shop.with(kept, reading.notBefore());
      StudioShop studio = aims.isEmpty() ? ofDues : Aims.on(ofDues, aims);
      try {
        Plan from = reading.begin().orElse(standing.present());
        Schedule schedule = begin(studio, kept, from, share).run();
        Plan plan = RestAssembler.plan(standing, studio, kept, schedule, seed);
        return new RestPlan(plan, reasons, schedule, Comparison.moves(standing.present(), plan));
      } catch (NoRoomException none) {
        if (none.settledLot() < 0) {
          throw new Faulty(List.of(Planning.noHours()));
        }
        letGo(kept, kept.get(none.settledLot()), free, last, reasons);
      }
    }
    throw new Faulty(List.of(Planning.noHours()));
  }

  private List<KeptLot> kept(Reading reading, Set<String> free, List<String> last) {
    Predicate<Task> wanted = task -> !free.contains(task.lot()) && reading.isWanted(task);
    List<KeptLot> kept = new ArrayList<>(keeping.kept(wanted, reading.pushed()));
    must(kept);
    // The order of those under way may matter, and those to come stay behind them.
    kept.sort(
        Comparator.comparing((KeptLot lot) -> !lot.begun())
            .thenComparingInt(lot -> last.lastIndexOf(lot.lot().id())));
    kept.addAll(pins.fresh());
    return kept;
  }

  /** A pin is kept, or refused with the reason. */
  private void must(List<KeptLot> kept) {
    List<Fault> faults = new ArrayList<>();
    for (String lot : pins.present()) {
      if (kept.stream().noneMatch(one -> one.lot().id().equals(lot))) {
        String reason = keeping.reasons().getOrDefault(Tasks.pour(lot), NO_ROOM);
        faults.add(pins.fault(lot, reason));
      }
    }
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
  }

  /**
   * A lot under way without room is put behind the others under way, as these may have to leave a
   * place for it; if that does not help, or it is still to come, what stays of it is let go of, and
   * then what stays of others.
   */
  private void letGo(
      List<KeptLot> kept,
      KeptLot failed,
      Set<String> free,
      List<String> last,
      Map<String, String> reasons) {
    String id = failed.lot().id();
    List<KeptLot> others =
        kept.stream().filter(lot -> hasPlanned(lot) && pins.of(lot).isEmpty()).toList();
    if (failed.begun() && Collections.frequency(last, id) < MOST_TIMES_LAST) {
      last.add(id);
    } else if (pins.of(failed).isPresent() && others.isEmpty()) {
      throw new Faulty(List.of(PinRules.noRoom(pins.of(failed).get())));
    } else if (others.isEmpty()) {
      throw new Faulty(List.of(Planning.noHours()));
    } else {
      KeptLot freed = others.contains(failed) ? failed : others.get(others.size() - 1);
      free.add(freed.lot().id());
      reasons.putIfAbsent(Tasks.idOf(freed.pour()), NO_ROOM);
      freed
          .rest()
          .values()
          .forEach(rest -> rest.forEach(task -> reasons.putIfAbsent(Tasks.idOf(task), NO_ROOM)));
      last.clear();
    }
  }

  private static boolean hasPlanned(KeptLot lot) {
    return !lot.pour().isHistory()
        || lot.rest().values().stream().flatMap(List::stream).anyMatch(task -> !task.isHistory());
  }

  private synchronized Scheduler begin(
      StudioShop studio, List<KeptLot> kept, Plan from, double share) {
    List<Schedule.Lot> present = PresentLots.of(studio, from);
    List<Schedule.Lot> near = PresentLots.of(studio, keptFirst(kept));
    scheduler = new Scheduler(studio.shop(), budget(share), seed, present, near, report -> {});
    if (stopped) {
      scheduler.stop();
    }
    return scheduler;
  }

  /** The present plan with the lots that stay before the others, as the shop has them. */
  private Plan keptFirst(List<KeptLot> kept) {
    Plan present = standing.present();
    List<String> order = kept.stream().map(lot -> lot.lot().id()).toList();
    List<Lot> lots = new ArrayList<>(present.lots());
    lots.sort(
        Comparator.comparingInt(
            lot -> order.contains(lot.id()) ? order.indexOf(lot.id()) : order.size()));
    return present.withLots(lots);
  }

  private Budget budget(double share) {
    return effort
        .time()
        .map(time -> Budget.ofTime(Duration.ofNanos((long) (time.toNanos() * share))))
        .orElseGet(
            () -> {
              long all = effort.schedules().orElseThrow();
              return Budget.ofSchedules(Math.max(1, (long) (all * share)));
            });
  }
}
