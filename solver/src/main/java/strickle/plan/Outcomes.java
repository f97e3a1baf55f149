package strickle.plan;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Line;
import strickle.book.Order;

/** What the runs of a plan under way come to for the orders: lost pieces serve nobody. */
final class Outcomes {

  private static final long HOUR = 60;
  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);

  private record Bringing(Optional<Run> run, OffsetDateTime at) {}

  private final Book book;
  private final Goods goods;
  private final OffsetDateTime from;
  private final StudioTime time;
  private final int lots;
  private final Map<String, List<Bringing>> byPiece = new HashMap<>();
  private OffsetDateTime lastReady;

  /**
   * The runs of a plan.
   *
   * @param from where the plan begins
   * @param ready when those runs of which anything is left are ready
   */
  Outcomes(Book book, Goods goods, OffsetDateTime from, List<Lot> lots, List<Ready> ready) {
    this.book = book;
    this.goods = goods;
    this.from = from;
    this.time = new StudioTime(from.toInstant(), book.studio().timeZone());
    this.lots = lots.size();
    this.lastReady = from;
    Map<String, OffsetDateTime> at = new HashMap<>();
    ready.forEach(one -> at.put(one.run(), one.at()));
    for (Lot lot : lots) {
      for (Run run : lot.runs()) {
        if (at.containsKey(run.id())) {
          byPiece
              .computeIfAbsent(run.piece(), piece -> new ArrayList<>())
              .add(new Bringing(Optional.of(run), at.get(run.id())));
        }
      }
    }
    ready.forEach(one -> lastReady = one.at().isAfter(lastReady) ? one.at() : lastReady);
    byPiece.values().forEach(list -> list.sort(Comparator.comparing(one -> one.at().toInstant())));
  }

  /**
   * What becomes of each order, in the order of the book.
   *
   * @param history where it is known, late orders say what can be said without looking closer
   */
  List<OrderOutcome> orders(Optional<History> history) {
    Map<String, OrderOutcome> outcomes = new HashMap<>();
    Map<String, Long> asked = new HashMap<>();
    for (Order order : Needs.serving(book)) {
      Bringing last = new Bringing(Optional.empty(), from);
      for (Line line : order.lines()) {
        Bringing brought = brought(line, asked);
        last = brought.at().isAfter(last.at()) ? brought : last;
      }
      outcomes.put(order.id(), outcome(order, last, history));
    }
    return book.orders().stream().map(order -> outcomes.get(order.id())).toList();
  }

  private Bringing brought(Line line, Map<String, Long> asked) {
    long sum = asked.merge(line.piece(), (long) line.quantity(), Long::sum);
    double needed = goods.needed(book.piece(line.piece()), sum);
    List<Run> runs = new ArrayList<>();
    Bringing last = new Bringing(Optional.empty(), from);
    for (Bringing one : byPiece.getOrDefault(line.piece(), List.of())) {
      if (goods.suffice(runs, needed)) {
        break;
      }
      runs.add(one.run().orElseThrow());
      last = one.at().isAfter(last.at()) ? one : last;
    }
    return last;
  }

  private OrderOutcome outcome(Order order, Bringing last, Optional<History> history) {
    long late = Math.max(0, time.minute(last.at().toInstant()) - time.minute(order.due()));
    List<String> because =
        late == 0 ? List.of() : history.map(one -> because(order, last, one)).orElse(List.of());
    return new OrderOutcome(order.id(), last.at(), late, because);
  }

  private List<String> because(Order order, Bringing last, History history) {
    LocalDateTime due = order.due();
    if (last.run().isEmpty()) {
      return List.of(order.id() + " is served from stock, but was due " + MOMENT.format(due));
    }
    Run run = last.run().get();
    String name = book.piece(run.piece()).name();
    String first =
        "its last "
            + name
            + ", of run "
            + run.id()
            + ", is ready "
            + MOMENT.format(last.at())
            + "; it is due "
            + MOMENT.format(due);
    return List.of(
        first,
        "as things stood "
            + MOMENT.format(history.now())
            + ", no plan was found that is less late on the whole");
  }

  /** The totals of a plan of those orders and tasks. */
  Totals totals(List<OrderOutcome> orders, List<Task> tasks) {
    BigDecimal late = BigDecimal.ZERO;
    for (OrderOutcome outcome : orders) {
      long hours = Math.ceilDiv(outcome.lateMinutes(), HOUR);
      BigDecimal weight = book.order(outcome.order()).weight();
      late = late.add(weight.multiply(BigDecimal.valueOf(hours)));
    }
    int lateOrders = (int) orders.stream().filter(one -> one.lateMinutes() > 0).count();
    long attended = tasks.stream().mapToLong(Task::minutes).sum();
    return new Totals(late, lateOrders, attended, lots, lastReady);
  }
}
