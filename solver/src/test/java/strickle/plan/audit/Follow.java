package strickle.plan.audit;

import static java.util.Comparator.naturalOrder;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import strickle.plan.Lot;
import strickle.plan.OrderOutcome;
import strickle.plan.Plan;
import strickle.plan.PlanWait;
import strickle.plan.Ready;
import strickle.plan.Run;
import strickle.plan.Task;
import strickle.plan.Totals;
import strickle.plan.Wait;

/**
 * What follows from the tasks of a plan of the sample's piece, by plain arithmetic: the waits in
 * minutes are told, all runs are for one order of weight 3 that needs every one of them.
 *
 * @param due when the order is due
 */
record Follow(int set, int cure, int dry, int finalDry, OffsetDateTime due) {

  private static final ZoneId ZONE = ZoneId.of("America/Chicago");
  private static final int WASH_MINUTES = 8;

  /** As the sample book has it. */
  static final Follow SAMPLE =
      new Follow(1321, 7924, 240, 1440, OffsetDateTime.parse("2027-04-24T17:00-05:00"));

  Follow withSet(int minutes) {
    return new Follow(minutes, cure, dry, finalDry, due);
  }

  Follow withCure(int minutes) {
    return new Follow(set, minutes, dry, finalDry, due);
  }

  Follow withDry(int minutes) {
    return new Follow(set, cure, minutes, finalDry, due);
  }

  Follow withFinalDry(int minutes) {
    return new Follow(set, cure, dry, minutes, due);
  }

  Follow withDue(String local) {
    OffsetDateTime at = LocalDateTime.parse(local).atZone(ZONE).toOffsetDateTime();
    return new Follow(set, cure, dry, finalDry, at);
  }

  Plan settle(Plan plan) {
    Map<String, OffsetDateTime> ends = new HashMap<>();
    plan.tasks().forEach(task -> ends.putIfAbsent(place(task), task.end()));
    List<Wait> waits = new ArrayList<>();
    List<Ready> ready = new ArrayList<>();
    for (Lot lot : plan.lots()) {
      lot.runs().forEach(run -> run(ends, lot, run, waits, ready));
    }
    OffsetDateTime last = ready.stream().map(Ready::at).max(naturalOrder()).orElse(plan.from());
    long late = Math.max(0, Duration.between(due, last).toMinutes());
    List<String> because = late > 0 ? List.of("the tub is out until Monday") : List.of();
    long attended = plan.tasks().stream().mapToLong(Task::minutes).sum();
    BigDecimal hours = BigDecimal.valueOf(3 * ((late + 59) / 60));
    return new Plan(
        plan.book(),
        plan.from(),
        plan.seed(),
        plan.coverPercent(),
        plan.lots(),
        plan.tasks(),
        waits,
        ready,
        List.of(new OrderOutcome("O-104", last, late, because)),
        new Totals(hours, late > 0 ? 1 : 0, attended, plan.lots().size(), last),
        plan.history());
  }

  private void run(
      Map<String, OffsetDateTime> ends, Lot lot, Run run, List<Wait> waits, List<Ready> ready) {
    Function<String, Optional<OffsetDateTime>> end = place -> Optional.ofNullable(ends.get(place));
    end.apply("POUR " + lot.id())
        .map(pour -> pour.minusMinutes(WASH_MINUTES))
        .ifPresent(from -> waits.add(wait(run, PlanWait.SET, from, set)));
    end.apply("STEP 1 " + run.id())
        .ifPresent(from -> waits.add(wait(run, PlanWait.CURE, from, cure)));
    end.apply("STEP 2 " + run.id())
        .ifPresent(from -> waits.add(wait(run, PlanWait.DRY, from, dry)));
    Optional<OffsetDateTime> last =
        end.apply("STEP 3 " + run.id()).or(() -> end.apply("DEMOULD " + run.id()));
    last.ifPresent(from -> waits.add(wait(run, PlanWait.DRY, from, finalDry)));
    last.ifPresent(from -> ready.add(new Ready(run.id(), after(from, finalDry))));
  }

  private static Wait wait(Run run, PlanWait kind, OffsetDateTime from, int minutes) {
    return new Wait(run.id(), kind, from, after(from, minutes));
  }

  private static OffsetDateTime after(OffsetDateTime from, int minutes) {
    return from.plusMinutes(minutes).atZoneSameInstant(ZONE).toOffsetDateTime();
  }

  private static String place(Task task) {
    String step = task.step().isPresent() ? task.step().getAsInt() + " " : "";
    return task.kind() + " " + step + task.run().orElse(task.lot());
  }
}
