package strickle.bench;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import strickle.book.Order;
import strickle.book.WaitKind;
import strickle.mix.Ballast;
import strickle.mix.Recipe;
import strickle.plan.FormHold;
import strickle.plan.Lot;
import strickle.plan.Needs;
import strickle.plan.OrderOutcome;
import strickle.plan.Plan;
import strickle.plan.PlanWait;
import strickle.plan.Ready;
import strickle.plan.Run;
import strickle.plan.Spell;
import strickle.plan.Task;
import strickle.plan.TaskKind;
import strickle.plan.Totals;
import strickle.plan.Wait;
import strickle.plan.Weighed;

/** Reads a solution of the model back into a plan. */
final class ExactWeekPlan {

  private final ExactWeekModel week;
  private final ExactWeekSearch found;
  private final Map<String, int[]> freeFrom = new LinkedHashMap<>();
  private final List<Lot> lots = new ArrayList<>();
  private final List<Task> tasks = new ArrayList<>();
  private final List<Wait> waits = new ArrayList<>();
  private final List<Ready> ready = new ArrayList<>();

  private ExactWeekPlan(ExactWeekModel week, ExactWeekSearch found) {
    this.week = week;
    this.found = found;
    week.book.forms().forEach(form -> freeFrom.put(form.id(), new int[form.count()]));
  }

  /** The plan of the best solution; no order says why it is late. */
  static Plan of(ExactWeekModel week, ExactWeekSearch found) {
    ExactWeekPlan plan = new ExactWeekPlan(week, found);
    week.runs.stream()
        .filter(run -> found.isTrue(run.pour.present))
        .sorted(Comparator.comparingLong(run -> found.value(run.pour.start)))
        .forEach(plan::addLot);
    return plan.plan();
  }

  private Plan plan() {
    List<OrderOutcome> orders = week.book.orders().stream().map(this::outcome).toList();
    BigDecimal late = BigDecimal.ZERO;
    for (OrderOutcome outcome : orders) {
      long hours = Math.ceilDiv(outcome.lateMinutes(), 60L);
      BigDecimal weight = week.book.order(outcome.order()).weight();
      late = late.add(weight.multiply(BigDecimal.valueOf(hours)));
    }
    Totals totals =
        new Totals(
            late,
            (int) orders.stream().filter(order -> order.lateMinutes() > 0).count(),
            tasks.stream().mapToLong(Task::minutes).sum(),
            lots.size(),
            ready.stream().map(Ready::at).max(Comparator.naturalOrder()).orElse(week.time.at(0)));
    String name = week.book.studio().name();
    return new Plan(name, week.time.at(0), 0, lots, tasks, waits, ready, orders, totals);
  }

  private OrderOutcome outcome(Order order) {
    long at = 0;
    for (Map.Entry<String, Integer> need : Needs.of(week.book).of(order.id()).entrySet()) {
      at = Math.max(at, readyOf(need.getKey(), need.getValue()));
    }
    long lateMinutes = Math.max(0, at - week.time.minute(order.due()));
    return new OrderOutcome(order.id(), week.time.at(at), lateMinutes, List.of());
  }

  /** When so many castings of a piece are ready. */
  private long readyOf(String piece, int castings) {
    List<ExactWeekRun> inOrder =
        week.runsOf(week.kindOf(piece).orElseThrow()).stream()
            .filter(run -> found.isTrue(run.present))
            .sorted(Comparator.comparingLong(run -> found.value(run.ready())))
            .toList();
    long left = castings;
    for (ExactWeekRun run : inOrder) {
      left -= found.value(run.castings);
      if (left <= 0) {
        return found.value(run.ready());
      }
    }
    throw new IllegalStateException("too few castings of " + piece);
  }

  private void addLot(ExactWeekRun leader) {
    String id = "L" + (lots.size() + 1);
    tasks.add(
        task(id + "/pour", TaskKind.POUR, id, Optional.empty(), OptionalInt.empty(), leader.pour));
    Recipe recipe = Recipe.of(leader.kind.mix(), week.book::material);
    List<Run> runs = new ArrayList<>();
    double grams = 0;
    for (ExactWeekRun run : week.runs) {
      if (week.lots.isJoined(leader, run, found)) {
        runs.add(run(id, id + "-" + (runs.size() + 1), run, recipe));
        grams += ExactWeekBook.grams(week.book, run.kind.piece()) * found.value(run.castings);
      }
    }
    List<Weighed> weighOut =
        recipe.weighOut(grams).stream().map(p -> new Weighed(p.material(), p.grams())).toList();
    lots.add(new Lot(id, leader.kind.mix().id(), runs, weighOut, Math.round(grams * 10) / 10.0));
  }

  private Run run(String lot, String id, ExactWeekRun run, Recipe recipe) {
    long from = found.value(run.setStart);
    for (int i = 0; i < run.stages.size(); i++) {
      ExactWeekTask stage = run.stages.get(i);
      boolean step = i > 0;
      tasks.add(
          task(
              id + (step ? "/step-" + i : "/demould"),
              step ? TaskKind.STEP : TaskKind.DEMOULD,
              lot,
              Optional.of(id),
              step ? OptionalInt.of(i) : OptionalInt.empty(),
              stage));
      addWait(id, run.kind, i, from);
      from = found.value(stage.end);
    }
    long at = from + run.kind.tailMinutes();
    if (at > from) {
      waits.add(new Wait(id, PlanWait.DRY, week.time.at(from), week.time.at(at)));
    }
    ready.add(new Ready(id, week.time.at(at)));
    OptionalLong ballast =
        run.kind.mould().core().stream()
            .mapToLong(core -> Math.round(Ballast.grams(core, recipe.wetDensityKgPerM3())))
            .findFirst();
    int castings = (int) found.value(run.castings);
    return new Run(id, run.kind.piece().id(), castings, forms(run, castings), ballast);
  }

  private void addWait(String id, ExactWeekKind kind, int number, long from) {
    ExactWeekKind.Stage stage = kind.stages().get(number);
    int to = week.ages.end((int) from, stage.hours(), stage.cures());
    if (to > from) {
      PlanWait what =
          number == 0 ? PlanWait.SET : wait(kind.piece().route().get(number - 1).after().kind());
      waits.add(new Wait(id, what, week.time.at(from), week.time.at(to)));
    }
  }

  private static PlanWait wait(WaitKind kind) {
    return PlanWait.valueOf(kind.name());
  }

  /** The lowest units free again; runs are read in the order they are poured. */
  private List<FormHold> forms(ExactWeekRun run, int castings) {
    List<FormHold> holds = new ArrayList<>();
    int end = (int) found.value(run.stages.getFirst().end);
    run.kind
        .formsEach()
        .forEach(
            (form, each) -> {
              int[] free = freeFrom.get(form);
              List<Integer> units = new ArrayList<>();
              for (int unit = 0; unit < free.length && units.size() < each * castings; unit++) {
                if (free[unit] <= found.value(run.pourStart)) {
                  free[unit] = end;
                  units.add(unit + 1);
                }
              }
              holds.add(new FormHold(form, units));
            });
    return holds;
  }

  private Task task(
      String id,
      TaskKind kind,
      String lot,
      Optional<String> run,
      OptionalInt step,
      ExactWeekTask task) {
    ExactWeekTask.Hand hand =
        task.hands.stream().filter(one -> found.isTrue(one.by())).findFirst().orElseThrow();
    int minutes = (int) found.value(task.minutes.expression());
    List<Spell> spells =
        week.calendars.get(hand.person()).spells((int) found.value(hand.worked()), minutes).stream()
            .map(one -> new Spell(week.time.at(one.start()), week.time.at(one.end())))
            .toList();
    String person = week.book.people().get(hand.person()).id();
    return new Task(id, kind, lot, run, step, person, spells);
  }
}
