package strickle.plan.why;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Order;
import strickle.plan.Cover;
import strickle.plan.History;
import strickle.plan.Plan;
import strickle.shop.Calendar;

/** The reasons of a plan's late orders, in the maker's words. For one thread at a time. */
public final class Reasons {

  private final Floor floor;
  private final Serving serving;

  /**
   * Reads a plan with its book.
   *
   * @param from the moment from which the hours are counted: when the plan began, or the first
   *     thing that happened before
   * @param hours everybody's opening hours by id, in minutes since then, to well after its end
   * @throws IllegalArgumentException when the plan is not one of this book or lacks a task
   */
  public Reasons(Book book, Plan plan, OffsetDateTime from, Map<String, Calendar> hours) {
    OffsetDateTime opens = plan.history().map(History::now).orElse(from);
    Moments moments = new Moments(from, book.studio().timeZone(), opens);
    Cover cover = Cover.of(plan.coverPercent());
    Floor whole = Floor.of(book, cover, moments, hours, Courses.of(book, plan, moments));
    for (History.Broken broken : plan.history().map(History::broken).orElse(List.of())) {
      whole = broken(whole, moments, broken);
    }
    floor = whole;
    serving = Serving.of(floor);
  }

  /** What will be whole again is there by then; nothing else comes back. */
  private static Floor broken(Floor floor, Moments moments, History.Broken broken) {
    Thing form = Thing.form(broken.form());
    int units = broken.units().size();
    int from = moments.minute(broken.from());
    int to = broken.to().map(moments::minute).orElse(Usage.NEVER);
    if (broken.to().isEmpty()) {
      return floor.withMore(form, -units);
    }
    return from < to ? floor.withLost(form, new Usage.Lost(from, to, units)) : floor;
  }

  /** Whether an order has everything then as these reasons read the plan. */
  public boolean isReady(String orderId, OffsetDateTime at) {
    int ready = Math.max(serving.of(orderId).ready(), 0);
    return ready == floor.moments().minute(at);
  }

  /**
   * Why an order is late: what is late and by how much, what held it on its way in order of time,
   * and last what would free it.
   *
   * @return 2 to 7 sentences without a full stop; empty when the order is on time
   * @throws IllegalArgumentException when the book has no such order
   */
  public List<String> of(String orderId) {
    return explanation(orderId).map(Explanation::lines).orElse(List.of());
  }

  /**
   * What the reasons of an order say would free it or bring it forward, each by itself.
   *
   * @return nothing when the order is on time, has no weight, or nothing of the studio helps
   * @throws IllegalArgumentException when the book has no such order
   */
  public List<Remedy> remedies(String orderId) {
    return explanation(orderId).map(Explanation::remedies).orElse(List.of());
  }

  private Optional<Explanation> explanation(String orderId) {
    Order order = floor.book().order(orderId);
    boolean late = serving.of(orderId).ready() > floor.moments().minute(order.due());
    return late ? Optional.of(new Explanation(floor, serving, order)) : Optional.empty();
  }
}
