package strickle.plan.promise;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import strickle.book.Book;
import strickle.book.Faulty;
import strickle.book.Line;
import strickle.book.Order;
import strickle.plan.Aim;
import strickle.plan.Effort;
import strickle.plan.Plan;
import strickle.plan.PlanRequest;
import strickle.plan.Planning;

/** The searches for a better date: each begins from a plan that has the new order in it. */
final class Searches {

  /** More than a minute of the new order, and of all others together, can ever come to. */
  private static final long DEARER = 4_000_000;

  private static final long DEAREST = 1_000_000_000_000L;

  /** A weight counts in tenths, and no order is cheaper than a tenth or dearer than a hundred. */
  private static final BigDecimal TENTHS = BigDecimal.TEN;

  private static final long MOST_TENTHS = 1000;

  private final Addition addition;
  private final Yardstick yardstick;
  private final PlanRequest request;

  /**
   * Searches.
   *
   * @param request from where on, how long and from which seed each searches
   */
  Searches(Addition addition, Yardstick yardstick, PlanRequest request) {
    this.addition = addition;
    this.yardstick = yardstick;
    this.request = request;
  }

  /**
   * Looks for an earlier date that makes no present order later. Between the dues of two present
   * orders for the same piece it is settled who is served first, so each such time is searched by
   * itself, the earliest first.
   *
   * @param start the plan to begin from
   * @param before only dates before this are worth anything
   */
  Optional<Offer> kept(Plan start, OffsetDateTime before) {
    List<OffsetDateTime> begins = begins(before);
    for (int i = 0; i < begins.size(); i++) {
      OffsetDateTime begin = begins.get(i);
      OffsetDateTime end = i + 1 < begins.size() ? begins.get(i + 1) : before;
      Optional<Offer> found =
          plan(addition.due(begin), start, harmless(begin), begins.size())
              .flatMap(yardstick::kept)
              .filter(offer -> offer.ready().isBefore(end));
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  /** The moments from which on another of the present orders is served before the new one. */
  private List<OffsetDateTime> begins(OffsetDateTime before) {
    OffsetDateTime from = request.from();
    TreeSet<OffsetDateTime> begins = new TreeSet<>(OffsetDateTime.timeLineOrder());
    begins.add(from);
    addition.book().orders().stream()
        .filter(order -> order.lines().stream().anyMatch(this::isSame))
        .map(order -> due(order).plusMinutes(1))
        .filter(due -> due.isAfter(from) && due.isBefore(before))
        .forEach(begins::add);
    return List.copyOf(begins);
  }

  private boolean isSame(Line line) {
    return line.piece().equals(addition.piece());
  }

  private List<Aim> harmless(OffsetDateTime begin) {
    List<Aim> aims = new ArrayList<>(List.of(new Aim(addition.id(), begin, 1)));
    for (Order order : addition.book().orders()) {
      OffsetDateTime due = due(order);
      OffsetDateTime was = yardstick.before(order.id()).ready();
      aims.add(new Aim(order.id(), was.isAfter(due) ? was : due, DEARER));
    }
    return aims;
  }

  /** Looks for the plan in which the new order is ready soonest after a date, whoever slips. */
  Optional<Plan> pressed(Plan start, OffsetDateTime date) {
    List<Aim> aims = new ArrayList<>(List.of(new Aim(addition.id(), date, DEAREST)));
    for (Order order : addition.book().orders()) {
      long tenths =
          order.weight().multiply(TENTHS).min(BigDecimal.valueOf(MOST_TENTHS)).longValue();
      aims.add(new Aim(order.id(), due(order), Math.max(1, tenths)));
    }
    return plan(addition.due(date), start, aims, 1);
  }

  /** When the new order would be ready if the studio did nothing else. */
  Optional<OffsetDateTime> alone() {
    OffsetDateTime from = request.from();
    Book book = addition.alone(from);
    Aim soon = new Aim(addition.id(), from, 1);
    try {
      return Optional.of(Planning.aiming(book, request, List.of(soon)).orders().getFirst().ready());
    } catch (Faulty noHours) {
      return Optional.empty();
    }
  }

  private Optional<Plan> plan(Book book, Plan start, List<Aim> aims, int parts) {
    long schedules = Math.max(1, request.effort().schedules().orElseThrow() / parts);
    PlanRequest part =
        new PlanRequest(request.from(), Effort.ofSchedules(schedules), request.seed())
            .covering(request.coverPercent());
    try {
      return Optional.of(Planning.aiming(book, part.startingFrom(start), aims));
    } catch (Faulty noHours) {
      return Optional.empty();
    }
  }

  private OffsetDateTime due(Order order) {
    return addition.moment(order.due());
  }
}
