package strickle.plan.why;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import strickle.book.Book;
import strickle.book.Mix;
import strickle.book.Mould;
import strickle.book.Order;
import strickle.mix.Ballast;
import strickle.mix.CastingMass;
import strickle.mix.Recipe;
import strickle.plan.FormHold;
import strickle.plan.Lot;
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

/**
 * Writes down as a plan what a promise rests on: the floor with the changes made and the order's
 * runs moved. Where a run has left its lot, the pour of the others is shorter and ends as before.
 */
final class Promised {

  private final Book book;
  private final Plan origin;
  private final Floor floor;
  private final List<Lot> lots = new ArrayList<>();
  private final List<Task> tasks = new ArrayList<>();
  private final List<Wait> waits = new ArrayList<>();
  private final List<Ready> ready = new ArrayList<>();
  private final Map<String, int[]> freeFrom = new HashMap<>();

  private Promised(Book book, Plan origin, Floor floor) {
    this.book = book;
    this.origin = origin;
    this.floor = floor;
    book.forms().forEach(form -> freeFrom.put(form.id(), new int[form.count()]));
  }

  /** The plan for a book in which the changes have been granted. */
  static Plan plan(Book granted, Plan origin, Floor floor) {
    return new Promised(granted, origin, floor).plan();
  }

  private Plan plan() {
    Map<String, List<Course>> byLot = new LinkedHashMap<>();
    floor.courses().stream()
        .sorted(Comparator.comparingInt(one -> pour(List.of(one)).end()))
        .forEach(one -> byLot.computeIfAbsent(one.lot(), id -> new ArrayList<>()).add(one));
    byLot.entrySet().stream()
        .sorted(Comparator.comparingInt(one -> pour(one.getValue()).start()))
        .forEach(one -> lot(one.getKey(), one.getValue()));
    List<OrderOutcome> orders = book.orders().stream().map(this::outcome).toList();
    return new Plan(
        origin.book(),
        origin.from(),
        origin.seed(),
        lots,
        tasks,
        waits,
        ready,
        orders,
        totals(orders));
  }

  private Placed pour(List<Course> runs) {
    Placed planned = runs.get(0).task(Chain.POUR);
    Mix mix = book.mix(runs.get(0).piece().mix());
    int minutes = mix.mixMinutes() + mix.washMinutes();
    for (Course run : runs) {
      Mould mould = book.mould(run.piece().mould());
      minutes += run.chain().castings() * (mould.prepMinutes() + mould.pourMinutes());
    }
    return new Placed(planned.person(), planned.end() - minutes, planned.end(), minutes);
  }

  private void lot(String id, List<Course> courses) {
    Placed pour = pour(courses);
    tasks.add(
        new Task(
            id + "/pour",
            TaskKind.POUR,
            id,
            Optional.empty(),
            OptionalInt.empty(),
            pour.person(),
            spells(pour)));
    Mix mix = book.mix(courses.get(0).piece().mix());
    Recipe recipe = Recipe.of(mix, book::material);
    List<Run> runs = new ArrayList<>();
    double grams = 0;
    for (Course course : courses) {
      Mould mould = book.mould(course.piece().mould());
      grams += course.chain().castings() * CastingMass.wetGrams(mould, recipe);
      runs.add(run(id, course, pour, recipe));
    }
    List<Weighed> weighOut =
        recipe.weighOut(grams).stream().map(p -> new Weighed(p.material(), p.grams())).toList();
    lots.add(new Lot(id, mix.id(), runs, weighOut, Math.round(grams * 10) / 10.0));
  }

  private Run run(String lot, Course course, Placed pour, Recipe recipe) {
    for (int stage = Chain.DEMOULD; stage <= course.chain().last(); stage++) {
      task(lot, course, stage);
      Placed before = stage == Chain.DEMOULD ? pour : course.task(stage - 1);
      Stage what = course.chain().stages().get(stage);
      int from = course.chain().waitFrom(stage, before);
      addWait(course, what.kind(), from, floor.over(what, from));
    }
    int end = course.task(course.chain().last()).end();
    addWait(course, PlanWait.DRY, end, course.ready());
    ready.add(new Ready(course.run(), at(course.ready())));
    Mould mould = book.mould(course.piece().mould());
    OptionalLong ballast =
        mould
            .core()
            .map(c -> OptionalLong.of(Math.round(Ballast.grams(c, recipe.wetDensityKgPerM3()))))
            .orElse(OptionalLong.empty());
    return new Run(
        course.run(), course.piece().id(), course.chain().castings(), forms(course, pour), ballast);
  }

  private void task(String lot, Course course, int stage) {
    boolean demould = stage == Chain.DEMOULD;
    tasks.add(
        new Task(
            course.run() + (demould ? "/demould" : "/step-" + (stage - 1)),
            demould ? TaskKind.DEMOULD : TaskKind.STEP,
            lot,
            Optional.of(course.run()),
            demould ? OptionalInt.empty() : OptionalInt.of(stage - 1),
            course.task(stage).person(),
            spells(course.task(stage))));
  }

  private void addWait(Course course, PlanWait kind, int from, int to) {
    if (to > from) {
      waits.add(new Wait(course.run(), kind, at(from), at(to)));
    }
  }

  private List<FormHold> forms(Course course, Placed pour) {
    List<FormHold> holds = new ArrayList<>();
    for (Need need : course.chain().opening(Chain.POUR)) {
      int[] free = freeFrom.get(need.thing().id());
      List<Integer> units = new ArrayList<>();
      for (int unit = 0; unit < free.length && units.size() < need.units(); unit++) {
        if (free[unit] <= pour.start()) {
          free[unit] = course.task(Chain.DEMOULD).end();
          units.add(unit + 1);
        }
      }
      holds.add(new FormHold(need.thing().id(), units));
    }
    return holds;
  }

  private List<Spell> spells(Placed task) {
    return floor.hands(task.person()).spells(task).stream()
        .map(spell -> new Spell(at(spell.start()), at(spell.end())))
        .toList();
  }

  private OrderOutcome outcome(Order order) {
    int met = Serving.of(floor).of(order.id()).ready();
    int late = Math.max(0, met - floor.moments().minute(order.due()));
    List<String> because = late > 0 ? List.of("late") : List.of();
    return new OrderOutcome(order.id(), at(met), late, because);
  }

  private Totals totals(List<OrderOutcome> orders) {
    BigDecimal late = BigDecimal.ZERO;
    for (OrderOutcome one : orders) {
      BigDecimal hours = BigDecimal.valueOf((one.lateMinutes() + 59) / 60);
      late = late.add(book.order(one.order()).weight().multiply(hours));
    }
    int lateOrders = (int) orders.stream().filter(one -> one.lateMinutes() > 0).count();
    long attended = tasks.stream().mapToLong(Task::minutes).sum();
    int last = floor.courses().stream().mapToInt(Course::ready).max().orElse(0);
    return new Totals(late, lateOrders, attended, lots.size(), at(last));
  }

  private OffsetDateTime at(int minute) {
    return floor.moments().instant(minute).atZone(book.studio().timeZone()).toOffsetDateTime();
  }
}
