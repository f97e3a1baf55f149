package strickle.plan;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.plan.audit.Audit;
import strickle.plan.replan.Comparison;
import strickle.plan.replan.Happening;
import strickle.plan.replan.HappeningKind;
import strickle.plan.replan.Move;
import strickle.plan.replan.ReplanRequest;
import strickle.plan.replan.Replanned;
import strickle.plan.replan.Thawed;

/**
 * Lays a plan that is under way out anew: what has happened stays as it was, what is about to stays
 * as planned, and of the rest as little moves as can be without being later for it. It can be
 * stopped from another thread at any moment and then keeps the best it has.
 */
public final class Replanning {

  /** How the effort is spent: on all as it is or pushed, on pours, on what is free, on few. */
  private static final double ALL = 0.02;

  private static final double POURS = 0.1;
  private static final double FREE = 0.2;
  private static final double FEW = 0.05;
  private static final double BACK = 0.1;

  /** A task that was about to begin and moves counts as much as so many others that move. */
  private static final long FROZEN_COUNTS = 10;

  /** What was to begin on the first of these days is pushed, and further only in the last trial. */
  private static final List<Integer> DAYS_PUSHED = List.of(1, 2, 4);

  /** So many lots at a time are tried to be moved back. */
  private static final int MOST_TURNS = 60;

  private final Book book;
  private final ReplanRequest request;
  private final Standing standing;
  private final RestSearch search;
  private final Set<String> all = new TreeSet<>();
  private final Set<String> frozen = new TreeSet<>();

  private Replanning(Book book, Plan present, ReplanRequest request) {
    this.book = book;
    this.request = request;
    this.standing = StandingReader.of(book, present, request.happened(), request.now());
    Owed owed = Owed.of(standing);
    RestPins pins = RestPins.of(standing);
    List<Fault> faults = RestFaults.of(standing, owed, pins);
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
    this.search = new RestSearch(standing, owed, pins, request.effort(), request.seed(), List.of());
    present.lots().forEach(lot -> all.add(lot.id()));
    present.tasks().stream()
        .filter(task -> standing.history(Tasks.idOf(task)).isEmpty())
        .filter(task -> task.start().isBefore(request.frozenUntil()))
        .forEach(task -> frozen.add(task.id()));
  }

  /**
   * Makes ready to lay a plan out anew.
   *
   * @param book the book as it is now; its orders and pins may be others than those of the plan
   * @param present a plan whose tasks break no rule of the book
   * @throws Faulty with everything that cannot have happened, paths beginning with {@code
   *     $.happened[0]}, with {@code now} when no such plan can be gone on with then, or with what
   *     in the book cannot be made or kept any more
   */
  public static Replanning of(Book book, Plan present, ReplanRequest request) {
    List<Fault> faults = NowFaults.of(book, present, request.now());
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
    return new Replanning(book, present, request);
  }

  /** Ends the search soon; the best plan found so far is kept. */
  public void stop() {
    search.stop();
  }

  /**
   * Lays out anew, until the effort is spent or {@link #stop} is called.
   *
   * @throws Faulty when a pin cannot be kept, or there are no hours for all of it
   */
  public Replanned run() {
    RestPlan asItIs = search.of(Reading.of(this::isAny), ALL);
    if (asItIs.isAsItWas() && !(asItIs.isLate() && isRoomTold())) {
      return replanned(asItIs, asItIs, asItIs);
    }
    List<RestPlan> all = new ArrayList<>(List.of(asItIs));
    all.add(search.of(Reading.of(this::isAny).noEarlier(), ALL));
    for (int until : pushedUntil()) {
      for (boolean anybody : List.of(false, true)) {
        Pushing pushing = search.pushing(anybody, until);
        RestPlan pushed = search.of(Reading.of(this::isAny).pushedBy(pushing), ALL);
        // Runs under way are taken to be where they are told to be, also where there is no place.
        if (Audit.of(book, pushed.plan()).isEmpty()) {
          all.add(pushed);
        }
      }
    }
    RestPlan free = lessLate(Collections.min(all), task -> false);
    boolean nothingHeld =
        standing.present().tasks().stream()
            .noneMatch(task -> isFrozen(task) && !task.start().isBefore(request.now()));
    if (nothingHeld) {
      return replanned(free, free, asItIs);
    }
    Comparator<RestPlan> better = RestPlan.minding(frozen, FROZEN_COUNTS);
    RestPlan held = lessLate(Collections.min(all, better), this::isFrozen);
    List<RestPlan> found = new ArrayList<>(all);
    found.addAll(List.of(free, held));
    return replanned(Collections.min(found, better), held, asItIs);
  }

  /**
   * Whether somebody is told to be back or something mended, so that what is late may be less so.
   */
  private boolean isRoomTold() {
    return request.happened().stream()
        .map(Happening::kind)
        .anyMatch(kind -> kind == HappeningKind.BACK || kind == HappeningKind.MENDED);
  }

  /** The ends of today, of the next days, and of the plan, in minutes. */
  private List<Integer> pushedUntil() {
    LocalDate today = request.now().atZoneSameInstant(zone()).toLocalDate();
    List<Integer> until = new ArrayList<>();
    for (int days : DAYS_PUSHED) {
      until.add((int) standing.time().minute(today.plusDays(days).atStartOfDay()));
    }
    until.add(Integer.MAX_VALUE);
    return until;
  }

  private ZoneId zone() {
    return standing.book().studio().timeZone();
  }

  /** Lets more move while that makes things less late, and then as much back as can be. */
  private RestPlan lessLate(RestPlan kept, Predicate<Task> held) {
    if (!kept.isLate()) {
      return kept;
    }
    RestPlan free = search.of(Reading.of(held), FREE);
    free = free.orBetter(search.of(Reading.of(held.or(this::isPour)), POURS));
    if (!free.isLessLateThan(kept)) {
      return kept.orBetter(free);
    }
    Set<String> stay = new TreeSet<>(all);
    stay.removeAll(lotsOf(free.ordersLessLateThan(kept)));
    Predicate<Task> wanted = held.or(task -> stay.contains(task.lot()));
    RestPlan few = search.of(Reading.of(wanted).from(free), FEW);
    return few.compareTo(free) <= 0
        ? movedBack(few, stay, held)
        : movedBack(free, new TreeSet<>(), held);
  }

  /** Lots of the present plan with a piece that one of these orders asks for. */
  private Set<String> lotsOf(Set<String> orders) {
    Set<String> pieces = new TreeSet<>();
    orders.forEach(
        id -> standing.book().order(id).lines().forEach(line -> pieces.add(line.piece())));
    Set<String> lots = new TreeSet<>();
    for (Lot lot : standing.present().lots()) {
      if (lot.runs().stream().anyMatch(run -> pieces.contains(run.piece()))) {
        lots.add(lot.id());
      }
    }
    return lots;
  }

  private boolean isAny(Task task) {
    return true;
  }

  private boolean isPour(Task task) {
    return task.kind() == TaskKind.POUR;
  }

  private boolean isFrozen(Task task) {
    return frozen.contains(task.id());
  }

  /** Lets lots stay after all, as many as can without the plan getting later. */
  private RestPlan movedBack(RestPlan free, Set<String> stay, Predicate<Task> held) {
    RestPlan best = free;
    List<String> lots = all.stream().filter(lot -> !stay.contains(lot)).toList();
    int turns = Math.min(MOST_TURNS, lots.size());
    for (int turn = 0; turn < turns; turn++) {
      int from = lots.size() * turn / turns;
      int to = lots.size() * (turn + 1) / turns;
      Set<String> tried = new TreeSet<>(stay);
      tried.addAll(lots.subList(from, to));
      Predicate<Task> wanted = held.or(task -> tried.contains(task.lot()));
      RestPlan next = search.of(Reading.of(wanted).from(best), BACK / turns);
      if (next.compareTo(best) <= 0) {
        best = next;
        stay.addAll(tried);
      }
    }
    return best;
  }

  /**
   * @param asItIs the plan in which everything stays that can
   * @param held the best plan in which what is frozen stays if it can
   */
  private Replanned replanned(RestPlan best, RestPlan held, RestPlan asItIs) {
    List<Move> moves = Comparison.moves(standing.present(), best.plan());
    Map<String, Move> byTask = new HashMap<>();
    moves.forEach(move -> byTask.put(move.task(), move));
    ThawReasons reasons = search.thawReasons(best.plan());
    List<Thawed> thawed = new ArrayList<>();
    for (Task task : standing.present().tasks()) {
      Optional<Move> move = Optional.ofNullable(byTask.get(task.id()));
      boolean moved = move.map(one -> one.change().isMove()).orElse(false);
      if (moved && isFrozen(task)) {
        String reason = reasons.of(task).orElseGet(() -> inTheWay(task, best, held, asItIs));
        thawed.add(new Thawed(task.id(), reason));
      }
    }
    return new Replanned(
        Planning.explained(book, best.plan()),
        moves,
        Comparison.orders(standing.present(), best.plan()),
        Comparison.newOrders(standing.present(), best.plan()),
        Comparison.goneOrders(standing.present(), best.plan()),
        thawed);
  }

  private static String inTheWay(Task task, RestPlan best, RestPlan held, RestPlan asItIs) {
    if (RestSearch.NO_ROOM.equals(asItIs.reasons().get(Tasks.idOf(task)))) {
      return RestSearch.NO_ROOM;
    }
    return best.isLessLateThan(held)
        ? "left there, orders would be late by more: "
            + held.late().toPlainString()
            + " weighted hours, not "
            + best.late().toPlainString()
        : "left there, more would have to move";
  }
}
