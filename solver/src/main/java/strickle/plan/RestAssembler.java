package strickle.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import strickle.book.After;
import strickle.book.Book;
import strickle.book.Mould;
import strickle.book.Piece;
import strickle.mix.Ballast;
import strickle.mix.Recipe;
import strickle.shop.Clock;
import strickle.shop.Schedule;

/** Reads a schedule of the rest of a plan back into a whole plan, with what has happened in it. */
final class RestAssembler {

  private final Standing standing;
  private final Book book;
  private final StudioShop studio;
  private final RestNames names;
  private final RestUnits units;
  private final List<Lot> lots = new ArrayList<>();
  private final List<Task> tasks = new ArrayList<>();
  private final List<Wait> waits = new ArrayList<>();
  private final List<Ready> ready = new ArrayList<>();
  private final List<History.Exceeded> exceeded = new ArrayList<>();

  private RestAssembler(Standing standing, StudioShop studio, RestNames names) {
    this.standing = standing;
    this.book = standing.book();
    this.studio = studio;
    this.names = names;
    this.units = new RestUnits(standing);
  }

  /** The plan of a schedule of which these lots, in that order, were settled. */
  static Plan plan(
      Standing standing, StudioShop studio, List<KeptLot> kept, Schedule schedule, long seed) {
    RestNames names = RestNames.of(standing, studio, kept, schedule);
    RestAssembler assembler = new RestAssembler(standing, studio, names);
    List<Schedule.Lot> inOrder = new ArrayList<>(schedule.lots());
    inOrder.sort(
        Comparator.comparingInt((Schedule.Lot lot) -> lot.first().start())
            .thenComparingInt(lot -> lot.first().worker()));
    IdentityHashMap<Schedule.Lot, KeptLot> keptBy = new IdentityHashMap<>();
    for (int i = 0; i < kept.size(); i++) {
      keptBy.put(schedule.lots().get(i), kept.get(i));
    }
    inOrder.forEach(lot -> assembler.add(lot, Optional.ofNullable(keptBy.get(lot))));
    return assembler.plan(seed);
  }

  private Plan plan(long seed) {
    Outcomes outcomes =
        new Outcomes(book, standing.goods(), standing.present().from(), lots, ready);
    History history =
        new History(
            standing.time().at(standing.now()), standing.away(), standing.broken(), exceeded);
    List<OrderOutcome> orders = outcomes.orders(Optional.of(history));
    return new Plan(
        book.studio().name(),
        standing.present().from(),
        seed,
        standing.present().coverPercent(),
        standing.present().orderingFrom(),
        lots,
        tasks,
        waits,
        ready,
        orders,
        outcomes.totals(orders, tasks),
        Optional.of(history));
  }

  private void add(Schedule.Lot lot, Optional<KeptLot> kept) {
    String id = names.of(lot);
    Task pour =
        kept.map(KeptLot::pour)
            .orElseGet(
                () ->
                    new Task(
                        Tasks.pour(id),
                        TaskKind.POUR,
                        id,
                        Optional.empty(),
                        OptionalInt.empty(),
                        person(lot.first()),
                        spells(lot.first())));
    tasks.add(pour);
    List<Run> runs = new ArrayList<>();
    double grams = 0;
    for (int i = 0; i < lot.runs().size(); i++) {
      Schedule.Run run = lot.runs().get(i);
      Piece piece = studio.pieces().get(run.kind());
      grams += studio.gramsEach(piece) * run.jobs();
      String name = names.of(run);
      Run bare = bare(name, piece, run.jobs(), kept);
      List<Task> own = tasks(id, bare, run, kept);
      follow(pour, bare, own);
      runs.add(units.with(bare, standing.start(pour), standing.end(own.get(0)), kept));
    }
    String mix = studio.pieces().get(lot.runs().get(0).kind()).mix();
    List<Weighed> weighOut =
        studio.recipes().get(mix).weighOut(grams).stream()
            .map(one -> new Weighed(one.material(), one.grams()))
            .toList();
    lots.add(new Lot(id, mix, runs, weighOut, Math.round(grams * 10) / 10.0));
  }

  private Run bare(String name, Piece piece, int castings, Optional<KeptLot> kept) {
    Mould mould = book.mould(piece.mould());
    Recipe recipe = studio.recipes().get(piece.mix());
    OptionalLong ballast =
        mould
            .core()
            .map(
                core ->
                    OptionalLong.of(Math.round(Ballast.grams(core, recipe.wetDensityKgPerM3()))))
            .orElse(OptionalLong.empty());
    int lost = kept.isEmpty() ? 0 : standing.scrapped().getOrDefault(name, 0);
    return new Run(name, piece.id(), castings, List.of(), ballast, lost);
  }

  private List<Task> tasks(String lot, Run bare, Schedule.Run run, Optional<KeptLot> kept) {
    List<Task> own = new ArrayList<>(kept.map(one -> one.rest(bare)).orElse(List.of()));
    for (int i = own.size(); i < run.rest().size(); i++) {
      Schedule.Placed placed = run.rest().get(i);
      own.add(Tasks.toCome(lot, bare.id(), i + 1, person(placed), spells(placed)));
    }
    tasks.addAll(own);
    return own;
  }

  /** Notes the waits between a run's tasks, and which of them have grown too long. */
  private void follow(Task pour, Run run, List<Task> own) {
    Piece piece = book.piece(run.piece());
    Mould mould = book.mould(piece.mould());
    int set = standing.end(pour) - book.mix(piece.mix()).washMinutes();
    addWait(run, PlanWait.SET, set, mould.setHours());
    most(own.get(0), set, Chains.minutesOfAtMost(mould.setAtMostHours()));
    for (int i = 1; i < own.size(); i++) {
      After after = piece.route().get(i - 1).after();
      int from = standing.end(own.get(i - 1));
      addWait(run, PlanWait.of(after.kind()), from, after.hours());
      most(own.get(i), from, Chains.minutesOfAtMost(after.atMostHours()));
    }
    if (!Goods.isLost(book, run)) {
      int last = standing.end(own.get(own.size() - 1));
      addWait(run, PlanWait.DRY, last, piece.finalDryHours());
      int at = last + Math.max(0, Chains.minutesOfAtLeast(piece.finalDryHours()));
      ready.add(new Ready(run.id(), standing.time().at(at)));
    }
  }

  private void most(Task task, int from, OptionalInt most) {
    int over = standing.start(task) - from - most.orElse(Integer.MAX_VALUE);
    if (most.isPresent() && over > 0) {
      exceeded.add(new History.Exceeded(task.id(), over));
    }
  }

  private void addWait(Run run, PlanWait kind, int from, double hours) {
    boolean ages = kind == PlanWait.SET || kind == PlanWait.CURE;
    Clock clock = studio.shop().clocks().get(ages ? Chains.ROOM : Chains.WALL);
    int to = clock.end(from, hours);
    if (to > from) {
      waits.add(new Wait(run.id(), kind, standing.time().at(from), standing.time().at(to)));
    }
  }

  private String person(Schedule.Placed placed) {
    return book.people().get(placed.worker()).id();
  }

  private List<Spell> spells(Schedule.Placed placed) {
    return studio
        .shop()
        .workers()
        .get(placed.worker())
        .spells(placed.worked(), placed.minutes())
        .stream()
        .map(one -> new Spell(standing.time().at(one.start()), standing.time().at(one.end())))
        .toList();
  }
}
