package strickle.plan.promise;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import strickle.book.Book;
import strickle.book.Faulty;
import strickle.book.Line;
import strickle.book.Order;
import strickle.plan.Aim;
import strickle.plan.Effort;
import strickle.plan.Lot;
import strickle.plan.Plan;
import strickle.plan.PlanRequest;
import strickle.plan.Planning;

/** The searches for a better date: each begins from a plan that has the new order in it. */
final class Searches {

  /**
   * What a minute costs that must not be: more than all minutes that only should not be come to
   * together, and not so much that a sum of them could not be counted.
   */
  private static final long DEAR = 1_000_000_000;

  private static final long DEAREST = 1_000_000_000_000L;

  /** A weight counts in tenths, and no order is cheaper than a tenth or dearer than a hundred. */
  private static final BigDecimal TENTHS = BigDecimal.TEN;

  private static final long MOST_TENTHS = 1000;

  /** A book with nothing but one order takes no long search. */
  private static final long LITTLE = 500;

  private final Addition addition;
  private final Yardstick yardstick;
  private final Rooms rooms;
  private final PlanRequest request;

  /**
   * Searches.
   *
   * @param request from where on, how long and from which seed each searches
   */
  Searches(Addition addition, Yardstick yardstick, PlanRequest request) {
    this.addition = addition;
    this.yardstick = yardstick;
    this.rooms = new Rooms(addition, yardstick);
    this.request = request;
  }

  /** The same searches from another seed. */
  Searches another() {
    PlanRequest other = new PlanRequest(request.from(), request.effort(), request.seed() + 1);
    return new Searches(
        addition, yardstick, other.covering(request.coverPercent()).waitingAs(yardstick.present()));
  }

  /**
   * Looks for an earlier date that makes no present order later, in one room after the other, each
   * time from the best found so far. Who is served first changes at the dues of present orders for
   * the same piece; only dates after the last such due before the best date are looked for. If all
   * of that stretch is won, the next search goes for the stretch before.
   *
   * @param sofar an offer that makes nobody later
   * @param after no date before this is possible
   */
  Optional<Offer> kept(Optional<Offer> sofar, OffsetDateTime after, List<Room> tried) {
    Optional<Offer> best = sofar;
    for (Room room : tried) {
      if (best.isEmpty() || after.isBefore(best.get().ready())) {
        Optional<Offer> before = best;
        best =
            kept(best, after, room, tried.size())
                .filter(offer -> before.isEmpty() || offer.ready().isBefore(before.get().ready()))
                .or(() -> before);
      }
    }
    return best;
  }

  private Optional<Offer> kept(Optional<Offer> best, OffsetDateTime after, Room room, int parts) {
    OffsetDateTime before = best.map(Offer::ready).orElse(OffsetDateTime.MAX);
    OffsetDateTime begin = begin(after, before);
    List<Aim> aims = new ArrayList<>(List.of(new Aim(addition.id(), begin, 1)));
    aims.addAll(limits());
    Plan from = best.map(Offer::plan).orElse(yardstick.present());
    Set<String> staying = best.map(offer -> rooms.staying(offer, room)).orElse(Set.of());
    return plan(addition.due(begin), from, aims, staying, parts).flatMap(yardstick::kept);
  }

  /** The last moment before a date from which on another present order is served first. */
  private OffsetDateTime begin(OffsetDateTime after, OffsetDateTime before) {
    return addition.book().orders().stream()
        .filter(order -> order.lines().stream().anyMatch(this::isSame))
        .map(order -> due(order).plusMinutes(1))
        .filter(due -> due.isAfter(after) && due.isBefore(before))
        .max(OffsetDateTime.timeLineOrder())
        .orElse(after);
  }

  private boolean isSame(Line line) {
    return line.piece().equals(addition.piece());
  }

  /** No present order later than it is, or than it is due. */
  private List<Aim> limits() {
    List<Aim> aims = new ArrayList<>();
    for (Order order : addition.book().orders()) {
      OffsetDateTime due = due(order);
      OffsetDateTime was = yardstick.before(order.id()).ready();
      aims.add(new Aim(order.id(), was.isAfter(due) ? was : due, DEAR));
    }
    return aims;
  }

  /** Looks for a plan that keeps an offer and lets present orders be ready as they are planned. */
  Optional<Offer> calmer(Offer offer) {
    List<Aim> aims = new ArrayList<>(List.of(new Aim(addition.id(), offer.ready(), DEAR)));
    aims.addAll(limits());
    for (Order order : addition.book().orders()) {
      aims.add(new Aim(order.id(), yardstick.before(order.id()).ready(), 1));
    }
    Set<String> staying = rooms.staying(offer, Room.LOOSE);
    return plan(offer.book(), offer.plan(), aims, staying, 1).flatMap(yardstick::kept);
  }

  /** Looks for the plan in which the new order is ready soonest after a date, whoever slips. */
  Optional<Plan> pressed(Plan start, OffsetDateTime date) {
    List<Aim> aims = new ArrayList<>(List.of(new Aim(addition.id(), date, DEAREST)));
    for (Order order : addition.book().orders()) {
      long tenths =
          order.weight().multiply(TENTHS).min(BigDecimal.valueOf(MOST_TENTHS)).longValue();
      aims.add(new Aim(order.id(), due(order), Math.max(1, tenths)));
    }
    return plan(addition.due(date), start, aims, Set.of(), 1);
  }

  /** Looks for a date with every task that is planned left as it is. */
  Optional<Offer> still() {
    Plan present = yardstick.present();
    List<Aim> aims = new ArrayList<>(List.of(new Aim(addition.id(), yardstick.begins(), 1)));
    aims.addAll(limits());
    Set<String> all = present.lots().stream().map(Lot::id).collect(Collectors.toSet());
    return plan(addition.due(yardstick.begins()), present, aims, all, 1)
        .filter(plan -> Set.copyOf(plan.tasks()).containsAll(present.tasks()))
        .flatMap(yardstick::kept);
  }

  /** When so many of the piece would be ready if the studio began nothing else. */
  Optional<OffsetDateTime> alone(int quantity) {
    OffsetDateTime from = yardstick.begins();
    Book book = addition.alone(from, quantity);
    Aim soon = new Aim(addition.id(), from, 1);
    Effort little =
        Effort.ofSchedules(Math.min(LITTLE, request.effort().schedules().orElseThrow()));
    Plan present = yardstick.present();
    PlanRequest quick = new PlanRequest(from, little, request.seed()).waitingAs(present);
    try {
      boolean underWay = present.history().isPresent();
      PlanRequest begin = underWay ? quick.startingFrom(present) : quick;
      OffsetDateTime ready =
          Planning.aiming(book, begin, List.of(soon)).orders().getFirst().ready();
      return Optional.of(ready.isBefore(from) ? from : ready);
    } catch (Faulty noHours) {
      return Optional.empty();
    }
  }

  private Optional<Plan> plan(
      Book book, Plan start, List<Aim> aims, Set<String> staying, int parts) {
    long schedules = Math.max(1, request.effort().schedules().orElseThrow() / parts);
    PlanRequest part =
        new PlanRequest(request.from(), Effort.ofSchedules(schedules), request.seed())
            .covering(request.coverPercent())
            .waitingAs(yardstick.present());
    try {
      return Optional.of(Planning.aiming(book, part.startingFrom(start), aims, staying));
    } catch (Faulty noHours) {
      return Optional.empty();
    }
  }

  private OffsetDateTime due(Order order) {
    return addition.moment(order.due());
  }
}
