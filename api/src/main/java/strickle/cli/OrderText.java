package strickle.cli;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import strickle.book.Order;
import strickle.cli.Table.Column;
import strickle.plan.OrderOutcome;
import strickle.plan.Plan;
import strickle.plan.Sureness;

/**
 * What becomes of each order, the earliest due first, and why the late ones are late. With a cover
 * also how sure each is.
 */
final class OrderText {

  private static final String BECAUSE = "          ";

  private final PlanView view;
  private final Map<String, Double> sure;
  private final Table table =
      new Table(
          "  ",
          Column.left(11),
          Column.left(19),
          Column.left(21),
          Column.left(21),
          Column.left(18));

  private OrderText(PlanView view) {
    this.view = view;
    this.sure =
        view.plan().coverPercent().isPresent() ? Sureness.of(view.book(), view.plan()) : Map.of();
  }

  /** The lines of it. */
  static List<String> lines(PlanView view) {
    OrderText text = new OrderText(view);
    text.table.row("order", "for", "due", "ready");
    List<OrderOutcome> outcomes = new ArrayList<>(view.plan().orders());
    outcomes.sort(Comparator.comparing(outcome -> view.book().order(outcome.order()).due()));
    outcomes.forEach(text::add);
    return text.table.lines();
  }

  private void add(OrderOutcome outcome) {
    Order order = view.book().order(outcome.order());
    String due = Moments.full(order.due());
    String when = when(order, outcome) + sure(order);
    table.row(order.id(), order.buyer(), due, Moments.full(outcome.ready()), when);
    for (String because : outcome.because()) {
      Lines.paragraph(BECAUSE, BECAUSE + "  ", because).forEach(table::heading);
    }
  }

  private String sure(Order order) {
    Double chance = sure.get(order.id());
    return chance == null ? "" : ", " + Words.sure(chance);
  }

  private String when(Order order, OrderOutcome outcome) {
    Plan plan = view.plan();
    if (outcome.lateMinutes() > 0) {
      return "late by " + Words.span(outcome.lateMinutes());
    }
    if (outcome.ready().isEqual(plan.from())) {
      return "from stock";
    }
    var due = order.due().atZone(view.book().studio().timeZone()).toOffsetDateTime();
    return Words.span(Duration.between(outcome.ready(), due).toMinutes()) + " spare";
  }
}
