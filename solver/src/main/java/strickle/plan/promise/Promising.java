package strickle.plan.promise;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import strickle.book.Book;
import strickle.plan.Effort;
import strickle.plan.Filling;
import strickle.plan.Plan;
import strickle.plan.PlanRequest;
import strickle.plan.promise.Latest.Way;

/** Finds out what can be promised for a new order on top of a plan. */
public final class Promising {

  /** So many placings of a casting take about a second, the program's start included. */
  private static final long PLACINGS = 100_000;

  private static final long FEWEST = 200;
  private static final long MOST = 5_000;

  /** The two searches for a kept date, side by side, go different ways. */
  private static final List<Room> FIRST_ROOMS = List.of(Room.BEFORE, Room.LOOSE, Room.EVERYWHERE);

  private static final List<Room> OTHER_ROOMS = List.of(Room.LOOSE, Room.EVERYWHERE);

  private static final Comparator<Offer> EARLIEST =
      Comparator.<Offer, Instant>comparing(offer -> offer.ready().toInstant())
          .thenComparingLong(Offer::slippedMinutes);

  private static final Comparator<Offer> CHEAPEST =
      Comparator.<Offer, BigDecimal>comparing(offer -> offer.plan().totals().weightedLateHours())
          .thenComparingInt(offer -> offer.later().size())
          .thenComparing(EARLIEST);

  private final Addition addition;
  private final Plan present;
  private final PromiseRequest request;
  private final Yardstick yardstick;
  private final Searches searches;

  private Promising(Book book, Plan plan, PromiseRequest request) {
    this.addition = new Addition(book, request);
    this.present = plan;
    this.request = request;
    this.yardstick = new Yardstick(addition, plan);
    this.searches = new Searches(addition, yardstick, effort());
  }

  /**
   * Finds out.
   *
   * @param plan a plan of the book that the audit finds nothing in
   * @throws strickle.book.Faulty when the piece is not in the book, the quantity or the date makes
   *     no sense, or there is more to make than can be planned; paths are the names of the
   *     request's fields
   */
  public static Promise of(Book book, Plan plan, PromiseRequest request) {
    Sense.check(book, plan, request);
    return new Promising(book, plan, request).promise().explained();
  }

  private PlanRequest effort() {
    long castings =
        present.lots().stream()
            .flatMap(lot -> lot.runs().stream())
            .mapToLong(run -> run.castings())
            .sum();
    long usual = Math.clamp(PLACINGS / Math.max(1, castings), FEWEST, MOST);
    Effort effort = Effort.ofSchedules(request.schedules().orElse(usual));
    return new PlanRequest(present.from(), effort, request.seed())
        .covering(present.coverPercent())
        .waitingAs(present);
  }

  /** What the search for a pressed date comes to, and one for a kept date behind it. */
  private record Pressing(Optional<Offer> pressed, Optional<Offer> kept) {}

  private Promise promise() {
    Optional<Offer> still =
        present.history().isPresent()
            ? searches.still()
            : Filling.of(addition.due(present.from()), present).flatMap(yardstick::kept);
    CompletableFuture<Pressing> pressing = CompletableFuture.supplyAsync(() -> pressing(still));
    // No date lies before the one a single piece could have.
    OffsetDateTime soonest = searches.alone(1).orElse(yardstick.begins());
    Optional<Offer> searched = searches.kept(still, soonest, FIRST_ROOMS);
    Pressing other = pressing.join();
    Optional<Offer> kept = earliest(still, earliest(searched, other.kept()));
    Optional<Offer> pressed =
        other.pressed().filter(one -> kept.isEmpty() || isBefore(one, kept.get()));
    CompletableFuture<Optional<Offer>> milder =
        CompletableFuture.supplyAsync(() -> pressed.map(this::milder));
    Optional<Offer> calmer = kept.filter(one -> one.slippedMinutes() > 0).flatMap(searches::calmer);
    return promise(still, earliest(kept, calmer), milder.join());
  }

  private Pressing pressing(Optional<Offer> still) {
    Optional<Offer> pressed =
        searches.pressed(present, yardstick.begins()).flatMap(yardstick::pressed);
    Optional<Offer> harmless = pressed.filter(yardstick::harmless);
    return new Pressing(pressed, harmless.or(() -> pressed.flatMap(one -> behind(one, still))));
  }

  private Optional<Offer> behind(Offer pressed, Optional<Offer> still) {
    return searches.another().kept(still, pressed.ready(), OTHER_ROOMS);
  }

  /** The same date or an earlier one with others slipping less, if that is found. */
  private Offer milder(Offer pressed) {
    return searches
        .pressed(pressed.plan(), pressed.ready())
        .flatMap(yardstick::pressed)
        .filter(other -> !isBefore(pressed, other))
        .filter(other -> CHEAPEST.compare(other, pressed) < 0)
        .orElse(pressed);
  }

  private Promise promise(Optional<Offer> still, Optional<Offer> kept, Optional<Offer> pressed) {
    Optional<OffsetDateTime> asked = request.latest().map(addition::moment);
    boolean inTime = asked.isEmpty() || kept.filter(one -> isBy(one, asked.get())).isPresent();
    Optional<Offer> by = inTime ? Optional.empty() : by(asked.get(), pressed);
    Optional<Offer> best = earliest(kept, by.flatMap(offer -> yardstick.kept(offer.plan())));
    Optional<Offer> first = earliest(pressed, by);
    return new Promise(
        addition.id(),
        request.piece(),
        request.quantity(),
        yardstick.begins(),
        best,
        still.filter(one -> isBefore(best.orElse(one), one)),
        first.filter(one -> best.isEmpty() || isBefore(one, best.get())),
        asked.map(at -> latest(at, best, by, first)));
  }

  /**
   * The plan in which the order is ready by a date and others slip least. An order that is due
   * before the date may be served before others that are not behind it when it is due on the date.
   */
  private Optional<Offer> by(OffsetDateTime at, Optional<Offer> pressed) {
    Plan from = pressed.filter(one -> isBy(one, at)).map(Offer::plan).orElse(present);
    Optional<Offer> searched =
        searches.pressed(from, at).flatMap(plan -> yardstick.offer(plan, at));
    Optional<Offer> found = pressed.flatMap(one -> yardstick.offer(one.plan(), at));
    Optional<Offer> sooner = pressed.filter(one -> isBy(one, at));
    return Stream.of(searched, found, sooner).flatMap(Optional::stream).min(CHEAPEST);
  }

  private Latest latest(
      OffsetDateTime at, Optional<Offer> kept, Optional<Offer> by, Optional<Offer> first) {
    Optional<Offer> harmless = kept.filter(one -> isBy(one, at));
    if (harmless.isPresent()) {
      return new Latest(at, Way.KEPT, harmless, Optional.empty());
    }
    if (by.isPresent()) {
      return new Latest(at, Way.PRESSED, by, Optional.empty());
    }
    Optional<OffsetDateTime> alone =
        Stream.concat(searches.alone(request.quantity()).stream(), first.map(Offer::ready).stream())
            .min(OffsetDateTime.timeLineOrder())
            .filter(ready -> ready.isAfter(at));
    return new Latest(at, Way.IMPOSSIBLE, Optional.empty(), alone);
  }

  private static boolean isBefore(Offer one, Offer other) {
    return one.ready().isBefore(other.ready());
  }

  private static boolean isBy(Offer offer, OffsetDateTime at) {
    return !offer.ready().isAfter(at);
  }

  private static Optional<Offer> earliest(Optional<Offer> one, Optional<Offer> other) {
    return Stream.concat(one.stream(), other.stream()).min(EARLIEST);
  }
}
