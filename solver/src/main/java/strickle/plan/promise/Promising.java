package strickle.plan.promise;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.Comparator;
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
  private static final long PLACINGS = 200_000;

  private static final long FEWEST = 200;
  private static final long MOST = 20_000;

  private static final Comparator<Offer> EARLIEST =
      Comparator.comparing(offer -> offer.ready().toInstant());

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
    return new PlanRequest(present.from(), effort, request.seed()).covering(present.coverPercent());
  }

  private Promise promise() {
    Optional<Plan> filled = Filling.of(addition.due(present.from()), present);
    Optional<Offer> still = filled.flatMap(yardstick::kept);
    Plan start = filled.orElse(present);
    CompletableFuture<Optional<Offer>> pressing =
        CompletableFuture.supplyAsync(
            () -> searches.pressed(start, present.from()).flatMap(yardstick::pressed));
    Optional<Offer> searched = searched(start, still);
    Optional<Offer> pressed = pressing.join();
    Optional<Offer> byChance = pressed.flatMap(offer -> yardstick.kept(offer.plan()));
    return promise(start, still, earliest(still, earliest(searched, byChance)), pressed);
  }

  private Promise promise(
      Plan start, Optional<Offer> still, Optional<Offer> kept, Optional<Offer> pressed) {
    Optional<OffsetDateTime> asked = request.latest().map(addition::moment);
    boolean inTime = asked.isEmpty() || kept.filter(one -> isBy(one, asked.get())).isPresent();
    Optional<Offer> by = inTime ? Optional.empty() : by(start, asked.get(), pressed);
    Optional<Offer> best = earliest(kept, by.flatMap(offer -> yardstick.kept(offer.plan())));
    Optional<Offer> first = earliest(pressed, by);
    return new Promise(
        addition.id(),
        request.piece(),
        request.quantity(),
        present.from(),
        best,
        still.filter(one -> best.orElse(one).ready().isBefore(one.ready())),
        first.filter(one -> best.isEmpty() || one.ready().isBefore(best.get().ready())),
        asked.map(at -> latest(at, best, by, first)));
  }

  /** The search for what nobody minds, unless the order can have its pieces at once. */
  private Optional<Offer> searched(Plan start, Optional<Offer> still) {
    OffsetDateTime before = still.map(Offer::ready).orElse(OffsetDateTime.MAX);
    return before.isEqual(present.from()) ? Optional.empty() : searches.kept(start, before);
  }

  /** The plan in which the order is ready by a date and others slip least. */
  private Optional<Offer> by(Plan start, OffsetDateTime at, Optional<Offer> pressed) {
    Plan from = pressed.filter(one -> isBy(one, at)).map(Offer::plan).orElse(start);
    Optional<Offer> searched =
        searches.pressed(from, at).flatMap(plan -> yardstick.offer(plan, at));
    Optional<Offer> found = pressed.flatMap(one -> yardstick.offer(one.plan(), at));
    return Stream.of(searched, found).flatMap(Optional::stream).min(CHEAPEST);
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
        Stream.concat(searches.alone().stream(), first.map(Offer::ready).stream())
            .min(OffsetDateTime.timeLineOrder());
    return new Latest(at, Way.IMPOSSIBLE, Optional.empty(), alone);
  }

  private static boolean isBy(Offer offer, OffsetDateTime at) {
    return !offer.ready().isAfter(at);
  }

  private static Optional<Offer> earliest(Optional<Offer> one, Optional<Offer> other) {
    return Stream.concat(one.stream(), other.stream()).min(EARLIEST);
  }
}
