package strickle.cli;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Order;
import strickle.cli.Table.Column;
import strickle.plan.Bounds;
import strickle.plan.Bounds.OrderBound;
import strickle.plan.Plan;

/** What no plan can beat, as a page of text. */
final class BoundText {

  private static final String DONE = "nothing more to win by planning longer";

  private BoundText() {}

  /**
   * The page, with a newline behind each line.
   *
   * @param alone when each order is ready in a plan of nothing else, in the order of the bounds
   * @param plan a plan of this book to hold against them
   */
  static String of(Book book, Bounds bounds, List<OffsetDateTime> alone, Optional<Plan> plan) {
    List<String> lines = new ArrayList<>();
    String from = Moments.full(bounds.from());
    String heading = book.studio().name() + ": what no plan from " + from + " can beat";
    lines.addAll(Lines.wrap(heading + ", times in " + book.studio().timeZone(), Lines.WIDEST));
    if (!bounds.orders().isEmpty()) {
      lines.addAll(List.of("", "Orders, at the earliest"));
      lines.addAll(orders(book, bounds, alone));
    }
    lines.addAll(List.of("", "In all, at the least"));
    Table table = new Table("  ", Column.left(12), Column.left(80));
    table.row("late hours", late(bounds, plan));
    table.row("handwork", handwork(bounds, plan));
    lines.addAll(table.lines());
    return String.join("\n", lines) + "\n";
  }

  private static List<String> orders(Book book, Bounds bounds, List<OffsetDateTime> alone) {
    Table table =
        new Table(
            "  ",
            Column.left(11),
            Column.left(21),
            Column.left(21),
            Column.left(16),
            Column.left(21));
    table.row("order", "due", "alone", "planned alone", "in its turn");
    for (int i = 0; i < bounds.orders().size(); i++) {
      OrderBound bound = bounds.orders().get(i);
      Order order = book.order(bound.order());
      long later = Duration.between(bound.alone(), alone.get(i)).toMinutes();
      table.row(
          order.id(),
          Moments.full(order.due()),
          Moments.full(bound.alone()),
          later == 0 ? "then" : Words.span(later) + " later",
          Moments.full(bound.served()));
    }
    return table.lines();
  }

  private static String late(Bounds bounds, Optional<Plan> plan) {
    BigDecimal least = bounds.weightedLateHours();
    return least.toPlainString()
        + plan.map(one -> "; " + late(least, one.totals().weightedLateHours())).orElse("");
  }

  private static String late(BigDecimal least, BigDecimal planned) {
    String has = "the plan has " + planned.toPlainString();
    return planned.compareTo(least) == 0
        ? has + ": " + DONE
        : has + ", " + planned.subtract(least).toPlainString() + " above: planning longer may help";
  }

  private static String handwork(Bounds bounds, Optional<Plan> plan) {
    long least = bounds.attendedMinutes();
    return Words.work(least)
        + plan.map(one -> "; " + handwork(least, one.totals().attendedMinutes())).orElse("");
  }

  private static String handwork(long least, long planned) {
    String has = "the plan has " + Words.work(planned);
    if (planned == least) {
      return has + ": " + DONE;
    }
    double percent = 100.0 * (planned - least) / Math.max(1, least);
    String above = String.format(Locale.ROOT, " (%.1f %%) above", percent);
    return has + ", " + Words.work(planned - least) + above + ": planning longer may help";
  }
}
