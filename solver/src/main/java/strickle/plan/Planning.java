package strickle.plan;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Feasible;
import strickle.shop.Budget;
import strickle.shop.NoRoomException;
import strickle.shop.Report;
import strickle.shop.Schedule;
import strickle.shop.Scheduler;
import strickle.shop.Shop;

/**
 * One planning of a book: from book to shop, from shop to schedule, from schedule to plan. It can
 * be stopped from another thread at any moment and then keeps the best it has.
 */
public final class Planning {

  /** Two years more are far enough for most books; a book that needs more gets more. */
  private static final int FIRST_HORIZON_MINUTES = 2 * 366 * 24 * 60;

  /** More than a studio of two pours in years; it keeps a slip of the pen from filling memory. */
  private static final int MOST_CASTINGS = 10_000;

  /** A year. */
  static final int YEAR_MINUTES = 366 * 24 * 60;

  private static final int HORIZONS = 4;

  private final Book book;
  private final PlanRequest request;
  private final Consumer<Progress> listener;
  private final StudioTime time;
  private final List<Aim> aims;
  private final Set<String> staying;
  private final Optional<RestPlanning> rest;
  private Scheduler scheduler;
  private boolean stopped;

  private Planning(
      Book book,
      PlanRequest request,
      List<Aim> aims,
      Set<String> staying,
      Consumer<Progress> listener) {
    this.book = book;
    this.aims = List.copyOf(aims);
    this.staying = Set.copyOf(staying);
    this.request = request;
    this.listener = listener;
    this.time = time(book, request.from());
    this.rest =
        RestPlanning.isAsked(request)
            ? Optional.of(RestPlanning.of(book, request, aims))
            : Optional.empty();
  }

  /**
   * Makes ready to plan a book. A request that begins from a plan under way is for the rest of it:
   * what has happened stays, and materials are waited for as that plan does.
   *
   * @param listener told of every better plan as it is found, from one thread at a time
   * @throws Faulty with everything that makes the book impossible to plan, see {@link #faults}
   */
  public static Planning of(Book book, PlanRequest request, Consumer<Progress> listener) {
    Cover cover = Cover.of(request.coverPercent());
    if (RestPlanning.isAsked(request)) {
      return new Planning(book, request, List.of(), Set.of(), listener);
    }
    List<Fault> faults = new ArrayList<>(faults(book, request.from(), cover));
    if (faults.isEmpty() && request.ordering().isPresent()) {
      StudioTime time = time(book, request.from());
      OffsetDateTime now = request.ordering().get();
      faults.addAll(Arrivals.of(book, Needs.of(book, cover), time, now).pins());
    }
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
    return new Planning(book, request, List.of(), Set.of(), listener);
  }

  /**
   * Plans a book with other aims than its orders' dues. Orders are still served by due, and what
   * the plan says of them is true of the book; only why any is late it does not say.
   *
   * @param book one that {@link #faults} finds nothing in
   * @param aims one or more; an order without one may be ready whenever
   * @throws Faulty when there are no hours for all of it
   */
  public static Plan aiming(Book book, PlanRequest request, List<Aim> aims) {
    return aiming(book, request, aims, Set.of());
  }

  /**
   * The same with lots that stay where they are.
   *
   * @param staying ids of lots of the plan that the request begins from
   */
  public static Plan aiming(Book book, PlanRequest request, List<Aim> aims, Set<String> staying) {
    return new Planning(book, request, aims, staying, progress -> {}).run();
  }

  /**
   * Everything that makes a book impossible to plan from that moment on, each with its path, the
   * value found and what would make it possible: pieces that can never be made, and pins that
   * cannot be kept. Castings are counted as they turn out on average.
   */
  public static List<Fault> faults(Book book, OffsetDateTime from) {
    return faults(book, from, Cover.AVERAGE);
  }

  /** The same with so much cover against castings that do not turn out. */
  public static List<Fault> faults(Book book, OffsetDateTime from, Cover cover) {
    StudioTime time = time(book, from);
    Needs needs = Needs.of(book, cover);
    List<Fault> faults = new ArrayList<>(Feasible.faults(book));
    faults.addAll(tooMuch(book, needs.castings()));
    boolean canBeTried = faults.isEmpty();
    faults.addAll(Feasibility.masses(book));
    if (canBeTried) {
      faults.addAll(Feasibility.waits(book, time));
    }
    faults.addAll(PinRules.faults(book, time, needs));
    if (faults.isEmpty()) {
      PinTrial trial = PinTrial.of(book, time, horizon(book, time));
      trial.withoutRoom().forEach(lot -> faults.add(PinRules.noRoom(lot)));
    }
    return faults;
  }

  /**
   * Everything that keeps a book from being planned on from a plan: of one under way only what is
   * still to come counts.
   */
  public static List<Fault> faults(Book book, Plan plan) {
    return plan.history().isPresent()
        ? RestPlanning.faults(book, plan)
        : faults(book, plan.from(), Cover.of(plan.coverPercent()));
  }

  /** The moment before which nothing new of a plan begins. */
  public static OffsetDateTime begins(Plan plan) {
    return plan.history().map(History::now).orElse(plan.from());
  }

  /**
   * Plans, until the effort is spent or {@link #stop} is called.
   *
   * @return the best plan found; every plan has passed no audit yet
   * @throws Faulty when there are no hours for all of it
   */
  public Plan run() {
    if (rest.isPresent()) {
      Plan plan = rest.get().run(staying);
      return aims.isEmpty() ? explained(book, plan) : plan;
    }
    int horizon = horizon(book, time);
    Needs needs = Needs.of(book, Cover.of(request.coverPercent()));
    Optional<Arrivals> arrivals =
        request.ordering().map(now -> Arrivals.of(book, needs, time, now));
    List<PinnedLot> pins = PinTrial.of(book, time, horizon).lots();
    for (int tried = 1; ; tried++) {
      StudioShop compiled = Compiler.compile(book, time, horizon, needs, pins);
      StudioShop waiting = arrivals.map(one -> one.on(compiled)).orElse(compiled);
      StudioShop studio = settled(aims.isEmpty() ? waiting : Aims.on(waiting, aims));
      try {
        Schedule schedule = begin(studio).run();
        Plan plan =
            Assembler.plan(studio, schedule, request.seed(), request.coverPercent())
                .waiting(request.ordering());
        return aims.isEmpty() ? explained(book, plan) : plan;
      } catch (NoRoomException none) {
        if (tried == HORIZONS) {
          throw new Faulty(List.of(noHours()));
        }
        horizon += FIRST_HORIZON_MINUTES << tried;
      }
    }
  }

  /**
   * A plan with why each late order is late. What waits for materials is told of by those alone:
   * reasons are read in a studio that has all.
   *
   * @param plan a valid plan of this book
   */
  public static Plan explained(Book book, Plan plan) {
    Plan explained = Why.explained(book, plan);
    return plan.orderingFrom()
        .map(now -> arrivals(book, plan, now).explained(plan, explained))
        .orElse(explained);
  }

  private static Arrivals arrivals(Book book, Plan plan, OffsetDateTime now) {
    Needs needs = Needs.of(book, Cover.of(plan.coverPercent()));
    return Arrivals.of(book, needs, time(book, plan.from()), now);
  }

  private StudioShop settled(StudioShop studio) {
    return staying.isEmpty()
        ? studio
        : Staying.on(studio, request.present().orElseThrow(), staying);
  }

  /** Ends the search soon; the best plan found so far is kept. */
  public synchronized void stop() {
    stopped = true;
    rest.ifPresent(RestPlanning::stop);
    if (scheduler != null) {
      scheduler.stop();
    }
  }

  private synchronized Scheduler begin(StudioShop studio) {
    Budget budget = new Budget(request.effort().schedules(), request.effort().time());
    List<Schedule.Lot> present =
        request.present().map(plan -> PresentLots.of(studio, plan)).orElse(List.of());
    scheduler =
        new Scheduler(
            studio.shop(), budget, request.seed(), present, report -> tell(studio, report));
    if (stopped) {
      scheduler.stop();
    }
    return scheduler;
  }

  private void tell(StudioShop studio, Report report) {
    BigDecimal late =
        BigDecimal.valueOf(report.best().late())
            .divide(BigDecimal.valueOf(studio.weightScale()))
            .stripTrailingZeros();
    listener.accept(
        new Progress(
            Duration.ofNanos(report.nanos()), report.schedules(), late, report.best().attended()));
  }

  /** How far to look ahead at first: past the last pin and the longest waits, and two years. */
  static int horizon(Book book, StudioTime time) {
    long lastPin = book.pins().stream().mapToLong(pin -> time.minute(pin.start())).max().orElse(0);
    return (int) lastPin + Feasibility.longestWaitMinutes(book) + FIRST_HORIZON_MINUTES;
  }

  /** What a book asks for beyond what can be planned. */
  static List<Fault> tooMuch(Book book, long castings) {
    List<Fault> faults = new ArrayList<>();
    int people = book.people().size();
    if (people > Shop.MOST_WORKERS) {
      String right = "at most " + Shop.MOST_WORKERS + " to plan for";
      faults.add(new Fault("$.people", people + " people", right));
    }
    if (castings > MOST_CASTINGS) {
      String right = "at most " + MOST_CASTINGS + " at a time; check quantities and goodPercent";
      faults.add(new Fault("$.orders", castings + " castings to plan", right));
    }
    return faults;
  }

  static Fault noHours() {
    return new Fault(
        "$.people",
        "hours that are used up before everything is made",
        "hours that come again every week, or fewer castings");
  }

  private static StudioTime time(Book book, OffsetDateTime from) {
    return new StudioTime(from.toInstant(), book.studio().timeZone());
  }
}
