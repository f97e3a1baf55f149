package strickle.price.fair;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strickle.book.Book;
import strickle.book.Fair;
import strickle.book.Piece;
import strickle.plan.Lot;
import strickle.plan.OrderOutcome;
import strickle.plan.Plan;
import strickle.plan.Ready;
import strickle.plan.Run;

/**
 * A build that was planned.
 *
 * @param fair the fair
 * @param build how many of each piece are brought
 * @param book the book with the build as orders
 * @param plan its plan
 * @param lateAnyway weighted late hours of the other orders without the fair
 * @param missing ids of materials that tasks of the plan begin too early for
 */
record Trial(
    Fair fair,
    Map<String, Integer> build,
    Book book,
    Plan plan,
    BigDecimal lateAnyway,
    Set<String> missing) {

  private static final double TOLERANCE = 1e-9;

  /**
   * Whether all of it is ready by the opening and no other order pays for it. A build of nothing is
   * the book without the fair, whatever luck its search had.
   */
  boolean isOnTime() {
    return build.values().stream().allMatch(pieces -> pieces == 0)
        || (missing.isEmpty()
            && late().isEmpty()
            && plan.totals().weightedLateHours().compareTo(lateAnyway) <= 0);
  }

  /** When the last of it is ready; empty when nothing is brought. */
  Optional<OffsetDateTime> ready() {
    return plan.orders().stream()
        .filter(order -> FairOrders.piece(book, fair, order.order()).isPresent())
        .map(OrderOutcome::ready)
        .max(Comparator.naturalOrder());
  }

  /** What is asked for less of next: what is late itself, or else the piece given. */
  List<Tightened> tightened(Optional<String> leastWorth) {
    List<Tightened> found = new ArrayList<>();
    for (OrderOutcome order : late()) {
      String piece = FairOrders.piece(book, fair, order.order()).orElseThrow();
      int asked = build.get(piece);
      int atMost = Math.max(0, Math.min(asked - 1, supported(book.piece(piece))));
      found.add(new Tightened(piece, asked, atMost, order.because()));
    }
    if (found.isEmpty()) {
      leastWorth.ifPresent(piece -> found.add(leftOut(piece)));
    }
    return found;
  }

  private Tightened leftOut(String piece) {
    int asked = build.get(piece);
    int step = (int) Math.max(1, Math.round(goodEach(book.piece(piece))));
    return new Tightened(piece, asked, Math.max(0, asked - step), becauseOfOthers());
  }

  private List<String> becauseOfOthers() {
    List<String> because = new ArrayList<>();
    for (String id : missing) {
      because.add("something settled would begin before " + book.material(id).name() + " is there");
    }
    plan.orders().stream()
        .filter(order -> order.lateMinutes() > 0)
        .map(order -> order.order() + " would be later than without the fair")
        .forEach(because::add);
    return because;
  }

  private List<OrderOutcome> late() {
    return plan.orders().stream()
        .filter(order -> order.lateMinutes() > 0)
        .filter(order -> FairOrders.piece(book, fair, order.order()).isPresent())
        .toList();
  }

  private double goodEach(Piece piece) {
    return book.mould(piece.mould()).cavities() * piece.goodPercent() / 100;
  }

  /** Pieces that could be brought with the castings that are ready by the opening. */
  private int supported(Piece piece) {
    Set<String> inTime = new HashSet<>();
    OffsetDateTime opens = fair.opens().atZone(book.studio().timeZone()).toOffsetDateTime();
    for (Ready ready : plan.ready()) {
      if (!ready.at().isAfter(opens)) {
        inTime.add(ready.run());
      }
    }
    int castings = 0;
    for (Lot lot : plan.lots()) {
      for (Run run : lot.runs()) {
        boolean counts = run.piece().equals(piece.id()) && inTime.contains(run.id());
        castings += counts ? run.castings() : 0;
      }
    }
    Book others = FairOrders.without(book, fair);
    long asked = Wares.askedBefore(others, fair, piece.id());
    return (int) Math.floor(castings * goodEach(piece) + piece.onHand() - asked + TOLERANCE);
  }
}
