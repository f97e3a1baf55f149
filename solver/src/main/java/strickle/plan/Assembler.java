package strickle.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.TreeMap;
import strickle.book.FormUse;
import strickle.book.Mould;
import strickle.book.Order;
import strickle.book.Piece;
import strickle.book.Step;
import strickle.mix.Ballast;
import strickle.mix.Portion;
import strickle.mix.Recipe;
import strickle.shop.Calendar;
import strickle.shop.Clock;
import strickle.shop.Schedule;
import strickle.shop.Schedule.Placed;

/** Reads a schedule of a studio's shop back into a plan. */
final class Assembler {

  private static final int HOUR = 60;

  private final StudioShop studio;
  private final Schedule schedule;
  private final Units units;
  private final List<Lot> lots = new ArrayList<>();
  private final List<Task> tasks = new ArrayList<>();
  private final List<Wait> waits = new ArrayList<>();
  private final List<Ready> ready = new ArrayList<>();

  private Assembler(StudioShop studio, Schedule schedule) {
    this.studio = studio;
    this.schedule = schedule;
    this.units = new Units(studio.book());
  }

  /** The plan of a schedule; {@code seed} and {@code coverPercent} are only noted in it. */
  static Plan plan(StudioShop studio, Schedule schedule, long seed, OptionalDouble coverPercent) {
    Assembler assembler = new Assembler(studio, schedule);
    List<Schedule.Lot> inOrder = new ArrayList<>(schedule.lots());
    inOrder.sort(
        Comparator.comparingInt((Schedule.Lot lot) -> lot.first().start())
            .thenComparingInt(lot -> lot.first().worker()));
    inOrder.forEach(assembler::add);
    return assembler.plan(seed, coverPercent);
  }

  private Plan plan(long seed, OptionalDouble coverPercent) {
    List<OrderOutcome> orders = outcomes();
    return new Plan(
        studio.book().studio().name(),
        studio.time().at(0),
        seed,
        coverPercent,
        lots,
        tasks,
        waits,
        ready,
        orders,
        totals(orders),
        Optional.empty());
  }

  /** What becomes of each order, in the order of the book; why is another's to say. */
  private List<OrderOutcome> outcomes() {
    List<OrderOutcome> outcomes = new ArrayList<>();
    for (Order order : studio.book().orders()) {
      int due = studio.orders().indexOf(order);
      int met = schedule.met().get(due);
      long late = Math.max(0, met - studio.time().minute(order.due()));
      outcomes.add(new OrderOutcome(order.id(), studio.time().at(met), late, List.of()));
    }
    return outcomes;
  }

  private Totals totals(List<OrderOutcome> orders) {
    BigDecimal late = BigDecimal.ZERO;
    for (OrderOutcome outcome : orders) {
      long hours = (outcome.lateMinutes() + HOUR - 1) / HOUR;
      BigDecimal weight = studio.book().order(outcome.order()).weight();
      late = late.add(weight.multiply(BigDecimal.valueOf(hours)));
    }
    long lateOrders = orders.stream().filter(order -> order.lateMinutes() > 0).count();
    long attended = tasks.stream().mapToLong(Task::minutes).sum();
    int last =
        schedule.lots().stream()
            .flatMap(lot -> lot.runs().stream())
            .mapToInt(Schedule.Run::done)
            .max()
            .orElse(0);
    return new Totals(late, (int) lateOrders, attended, lots.size(), studio.time().at(last));
  }

  private void add(Schedule.Lot lot) {
    String id = "L" + (lots.size() + 1);
    tasks.add(
        new Task(
            id + "/pour",
            TaskKind.POUR,
            id,
            Optional.empty(),
            OptionalInt.empty(),
            person(lot.first()),
            spells(lot.first())));
    List<Run> runs = new ArrayList<>();
    double grams = 0;
    for (Schedule.Run run : lot.runs()) {
      Piece piece = studio.pieces().get(run.kind());
      grams += studio.gramsEach(piece) * run.jobs();
      runs.add(run(id, id + "-" + (runs.size() + 1), piece, run, lot.first()));
    }
    String mix = studio.pieces().get(lot.runs().get(0).kind()).mix();
    List<Weighed> weighOut = weighOut(mix, grams);
    lots.add(new Lot(id, mix, runs, weighOut, Math.round(grams * 10) / 10.0));
  }

  private List<Weighed> weighOut(String mix, double grams) {
    List<Portion> portions = studio.recipes().get(mix).weighOut(grams);
    return portions.stream().map(one -> new Weighed(one.material(), one.grams())).toList();
  }

  private Run run(String lot, String id, Piece piece, Schedule.Run run, Placed pour) {
    int wash = studio.book().mix(piece.mix()).washMinutes();
    Mould mould = studio.book().mould(piece.mould());
    Placed demould = run.rest().get(0);
    addWait(id, PlanWait.SET, pour.end() - wash, mould.setHours());
    addTask(lot, id, "demould", TaskKind.DEMOULD, OptionalInt.empty(), demould);
    for (int i = 0; i < piece.route().size(); i++) {
      Step step = piece.route().get(i);
      addWait(id, PlanWait.of(step.after().kind()), run.rest().get(i).end(), step.after().hours());
      String name = "step-" + (i + 1);
      addTask(lot, id, name, TaskKind.STEP, OptionalInt.of(i + 1), run.rest().get(i + 1));
    }
    int lastEnd = run.rest().get(run.rest().size() - 1).end();
    addWait(id, PlanWait.DRY, lastEnd, piece.finalDryHours());
    ready.add(new Ready(id, studio.time().at(run.done())));
    List<FormHold> forms = forms(mould, run.jobs(), pour.start(), demould.end());
    return new Run(id, piece.id(), run.jobs(), forms, ballast(mould, piece));
  }

  private List<FormHold> forms(Mould mould, int castings, int start, int end) {
    Map<String, Integer> needed = new TreeMap<>();
    for (FormUse use : mould.forms()) {
      needed.merge(use.form(), use.count() * castings, Integer::sum);
    }
    List<FormHold> holds = new ArrayList<>();
    needed.forEach(
        (form, count) -> holds.add(new FormHold(form, units.take(form, count, start, end))));
    return holds;
  }

  private OptionalLong ballast(Mould mould, Piece piece) {
    Recipe recipe = studio.recipes().get(piece.mix());
    return mould
        .core()
        .map(core -> OptionalLong.of(Math.round(Ballast.grams(core, recipe.wetDensityKgPerM3()))))
        .orElse(OptionalLong.empty());
  }

  private void addTask(
      String lot, String run, String name, TaskKind kind, OptionalInt step, Placed placed) {
    String id = run + "/" + name;
    tasks.add(new Task(id, kind, lot, Optional.of(run), step, person(placed), spells(placed)));
  }

  private void addWait(String run, PlanWait kind, int from, double hours) {
    boolean ages = kind == PlanWait.SET || kind == PlanWait.CURE;
    Clock clock = studio.shop().clocks().get(ages ? Chains.ROOM : Chains.WALL);
    int to = clock.end(from, hours);
    if (to > from) {
      waits.add(new Wait(run, kind, studio.time().at(from), studio.time().at(to)));
    }
  }

  private String person(Placed placed) {
    return studio.book().people().get(placed.worker()).id();
  }

  private List<Spell> spells(Placed placed) {
    Calendar calendar = studio.shop().workers().get(placed.worker());
    return calendar.spells(placed.worked(), placed.minutes()).stream()
        .map(one -> new Spell(studio.time().at(one.start()), studio.time().at(one.end())))
        .toList();
  }
}
