package strickle.price.fair;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strickle.book.Book;
import strickle.book.Fair;
import strickle.book.Faulty;
import strickle.plan.EarlyUse;
import strickle.plan.Effort;
import strickle.plan.Plan;
import strickle.plan.PlanRequest;
import strickle.plan.Planning;
import strickle.price.fair.Programme.Chosen;
import strickle.price.fair.Programme.Level;

/**
 * Finds what to bring to a fair: the best build that the limits allow is planned beside the open
 * orders; as long as that plan is late, less is asked of what was late and the best build is looked
 * for again; at last what there still is room for is added casting by casting.
 */
public final class FairBuilding {

  private final Book book;
  private final Fair fair;
  private final FairRequest request;
  private final List<Ware> wares;
  private final BigDecimal lateAnyway;
  private final Map<String, Integer> caps = new HashMap<>();
  private final List<Tightened> tightened = new ArrayList<>();
  private Optional<Plan> last;

  private FairBuilding(Book book, Fair fair, FairRequest request) {
    this.book = book;
    this.fair = fair;
    this.request = request;
    this.wares = Wares.of(book, fair);
    // Pins may be of castings that only the fair needs.
    Plan without = plan(book.withPins(List.of()), Optional.empty());
    this.lateAnyway = without.totals().weightedLateHours();
    this.last = Optional.of(without);
  }

  /**
   * Finds the build.
   *
   * @throws Faulty with everything that stands in the way: paths of the book, or {@code .fair},
   *     {@code .from} for what was asked
   */
  public static FairAnswer of(Book book, FairRequest request) {
    FairCheck.refuse(book, request);
    Fair fair = book.fair(request.fair());
    return new FairBuilding(FairOrders.without(book, fair), fair, request).answer();
  }

  private FairAnswer answer() {
    Means means = means();
    Chosen allowed = means.programme().best();
    Trial trial = trial(build(means, allowed));
    while (!trial.isOnTime()) {
      tighten(trial);
      Means less = means();
      trial = trial(build(less, less.programme().best()));
    }
    Trial full = tightened.isEmpty() ? trial : filled(means, trial);
    FairBuild build =
        new FairResult(book, fair, request, wares).build(means, allowed, full, tightened);
    return new FairAnswer(build, full.book(), full.plan());
  }

  private Means means() {
    return new Means(book, fair, request, wares, caps);
  }

  private Map<String, Integer> build(Means means, Chosen chosen) {
    Map<String, Integer> build = new LinkedHashMap<>();
    for (int i = 0; i < chosen.levels().size(); i++) {
      build.put(means.items().get(i), chosen.levels().get(i).pieces());
    }
    return build;
  }

  private Trial trial(Map<String, Integer> build) {
    Book with = FairOrders.with(book, fair, build);
    Plan plan = plan(with, last);
    last = Optional.of(plan);
    Set<String> missing = EarlyUse.of(with, plan, request.orderingFrom());
    return new Trial(fair, build, with, plan, lateAnyway, missing);
  }

  /**
   * A plan in which nothing begins before its materials can be there. Often the stock lasts until
   * the rest has come; only else does everything that uses it wait, which costs time.
   */
  private Plan plan(Book planned, Optional<Plan> present) {
    Effort effort = Effort.ofSchedules(request.schedules());
    PlanRequest asked = new PlanRequest(request.from(), effort, request.seed());
    PlanRequest begun = present.map(asked::startingFrom).orElse(asked);
    Plan plan = Planning.of(planned, begun, progress -> {}).run();
    OffsetDateTime ordered = request.orderingFrom();
    return EarlyUse.of(planned, plan, ordered).isEmpty()
        ? plan.waiting(Optional.of(ordered))
        : waiting(planned, begun.ordering(ordered)).orElse(plan);
  }

  /** Empty when a settled pour cannot wait. */
  private static Optional<Plan> waiting(Book planned, PlanRequest request) {
    try {
      return Optional.of(Planning.of(planned, request, progress -> {}).run());
    } catch (Faulty settled) {
      return Optional.empty();
    }
  }

  private void tighten(Trial trial) {
    List<Tightened> less = trial.tightened(leastWorth(trial.build()));
    if (less.isEmpty()) {
      throw new IllegalStateException("a build of nothing is later than no build");
    }
    less.forEach(one -> caps.merge(one.piece(), one.atMost(), Math::min));
    tightened.addAll(less);
  }

  /** The piece of the build of which the last one that is made is worth least. */
  private Optional<String> leastWorth(Map<String, Integer> build) {
    return wares.stream()
        .filter(ware -> build.getOrDefault(ware.piece(), 0) > 0)
        .min(
            Comparator.comparingInt((Ware ware) -> isStock(ware, build) ? 1 : 0)
                .thenComparingDouble(ware -> ware.worth(build.get(ware.piece()))))
        .map(Ware::piece);
  }

  private static boolean isStock(Ware ware, Map<String, Integer> build) {
    return build.get(ware.piece()) <= ware.stock();
  }

  /** Adds castings for as long as one of them still fits, those that are worth most first. */
  private Trial filled(Means means, Trial start) {
    Programme programme = means.programme();
    Trial best = start;
    Set<String> full = new HashSet<>();
    for (Optional<Step> step = step(means, programme, best, full);
        step.isPresent();
        step = step(means, programme, best, full)) {
      Map<String, Integer> more = new LinkedHashMap<>(best.build());
      more.put(step.get().piece(), step.get().pieces());
      last = Optional.of(best.plan());
      Trial trial = trial(more);
      if (trial.isOnTime()) {
        best = trial;
      } else {
        full.add(step.get().piece());
      }
    }
    return best;
  }

  private record Step(String piece, int pieces, double worth) {}

  private Optional<Step> step(Means means, Programme programme, Trial trial, Set<String> full) {
    List<Step> steps = new ArrayList<>();
    for (int i = 0; i < means.items().size(); i++) {
      String piece = means.items().get(i);
      int now = trial.build().get(piece);
      if (!full.contains(piece)) {
        next(programme.items().get(i), now)
            .filter(level -> allows(means, programme, trial.build(), piece, level))
            .ifPresent(level -> steps.add(step(piece, level, programme, means, now)));
      }
    }
    return steps.stream().max(Comparator.comparingDouble(Step::worth));
  }

  private Step step(String piece, Level level, Programme programme, Means means, int now) {
    List<Level> levels = programme.items().get(means.items().indexOf(piece));
    return new Step(piece, level.pieces(), level.worth() - at(levels, now).worth());
  }

  private static Optional<Level> next(List<Level> levels, int now) {
    return levels.stream().filter(level -> level.pieces() > now).findFirst();
  }

  /** The level that has so many pieces, or the first that has more. */
  static Level at(List<Level> levels, int pieces) {
    return levels.stream()
        .filter(level -> level.pieces() >= pieces)
        .findFirst()
        .orElse(levels.get(levels.size() - 1));
  }

  private static boolean allows(
      Means means, Programme programme, Map<String, Integer> build, String piece, Level level) {
    Map<String, Integer> more = new HashMap<>(build);
    more.put(piece, level.pieces());
    return fixed(means, programme, more).isPresent();
  }

  /** The choice that a build is; empty when it does not keep the limits. */
  static Optional<Chosen> fixed(Means means, Programme programme, Map<String, Integer> build) {
    List<List<Level>> items = new ArrayList<>();
    for (int i = 0; i < means.items().size(); i++) {
      int pieces = build.getOrDefault(means.items().get(i), 0);
      items.add(List.of(at(programme.items().get(i), pieces)));
    }
    Programme only = new Programme(items, programme.sides(), programme.limits());
    return only.isPossible() ? Optional.of(only.best()) : Optional.empty();
  }
}
