package strickle.demo;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import strickle.book.Demand;
import strickle.book.Fair;
import strickle.book.Line;
import strickle.book.Order;
import strickle.book.Piece;

/** Draws orders and fairs, with due dates of which most can be met and some hardly. */
final class GeneratedOrders {

  private static final List<String> BUYERS =
      List.of("a cafe", "a neighbour", "a shop", "a wedding", "a school", "a garden", "a present");
  private static final List<String> WEIGHTS = List.of("1", "1", "1", "2", "3", "0.5", "0");
  private static final List<Integer> DUE_HOURS = List.of(12, 17, 18);
  private static final int HARD_PERCENT = 20;
  private static final int FAIR_PERCENT = 20;

  private final Dice dice;
  private final LocalDate from;
  private final List<Fair> fairs = new ArrayList<>();
  private final List<Order> orders = new ArrayList<>();

  private GeneratedOrders(Dice dice, LocalDate from) {
    this.dice = dice;
    this.from = from;
  }

  /** What was drawn. */
  record Drawn(List<Order> orders, List<Fair> fairs) {}

  static Drawn draw(
      Dice dice, LocalDate from, Workload workload, List<Piece> pieces, List<Line> lines) {
    GeneratedOrders drawn = new GeneratedOrders(dice, from);
    List<List<Line>> groups = drawn.groups(lines);
    List<Double> hours = groups.stream().map(workload::hoursUntilReady).toList();
    double last = hours.stream().mapToDouble(h -> h).max().orElse(0);
    drawn.addFairs(pieces, last);
    for (int i = 0; i < groups.size(); i++) {
      drawn.addOrder(groups.get(i), hours.get(i));
    }
    return new Drawn(drawn.orders, drawn.fairs);
  }

  /** One line to three an order, no piece twice in it. */
  private List<List<Line>> groups(List<Line> lines) {
    List<List<Line>> groups = new ArrayList<>();
    Set<String> inGroup = new HashSet<>();
    int size = 0;
    for (Line line : lines) {
      if (groups.isEmpty() || groups.getLast().size() == size || inGroup.contains(line.piece())) {
        groups.add(new ArrayList<>());
        inGroup.clear();
        size = dice.from(1, 3);
      }
      inGroup.add(line.piece());
      groups.getLast().add(line);
    }
    return groups;
  }

  private void addFairs(List<Piece> pieces, double lastHours) {
    int count = dice.from(0, 2);
    for (int i = 1; i <= count; i++) {
      LocalDate about = from.plusDays(Math.round(lastHours / 24 * i / count));
      LocalDate saturday = about.with(TemporalAdjusters.nextOrSame(DayOfWeek.SATURDAY));
      LocalDateTime opens = saturday.atTime(10, 0).plusWeeks(i - 1);
      fairs.add(
          new Fair(
              "fair-" + i,
              "fair " + i,
              opens,
              Entries.amount(Integer.toString(dice.from(20, 150))),
              dice.oneOf(List.of("own-table", "card")),
              demand(pieces)));
    }
  }

  private List<Demand> demand(List<Piece> pieces) {
    List<Piece> some = new ArrayList<>(pieces);
    dice.shuffle(some);
    return some.stream()
        .limit(dice.from(1, 5))
        .map(
            p -> {
              int low = dice.from(0, 4);
              int likely = low + dice.from(1, 6);
              String price = p.price().orElseThrow().toPlainString();
              return Entries.demand(p.id(), low, likely, likely + dice.from(1, 10), price);
            })
        .toList();
  }

  private void addOrder(List<Line> lines, double hoursUntilReady) {
    String id = String.format(Locale.ROOT, "G-%03d", orders.size() + 1);
    int percent = dice.chance(HARD_PERCENT) ? dice.from(35, 60) : dice.from(70, 130);
    LocalDateTime due = due(hoursUntilReady * percent / 100);
    OrderEntry order = OrderEntry.custom(id, dice.oneOf(BUYERS)).due(due);
    if (dice.chance(FAIR_PERCENT)) {
      order = forTheNextFair(order, id, due);
    }
    orders.add(order.matters(dice.oneOf(WEIGHTS)).lines(lines).build());
  }

  private LocalDateTime due(double hours) {
    LocalDate day = from.plusDays(1 + (long) (hours / 24));
    return day.atTime(dice.oneOf(DUE_HOURS), 0);
  }

  /** Stock for the first fair that is not too early for it, due the evening before. */
  private OrderEntry forTheNextFair(OrderEntry custom, String id, LocalDateTime notBefore) {
    return fairs.stream()
        .filter(fair -> fair.opens().isAfter(notBefore))
        .findFirst()
        .map(fair -> OrderEntry.fair(id, fair.name()).due(fair.opens().minusHours(14)))
        .orElse(custom);
  }
}
