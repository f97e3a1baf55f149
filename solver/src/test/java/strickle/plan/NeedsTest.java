package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.plan.Studios.order;
import static strickle.plan.Studios.piece;
import static strickle.plan.Studios.tiles;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.Draft;
import strickle.book.Line;
import strickle.book.Order;
import strickle.book.SampleBook;

class NeedsTest {

  private static final String DUE = "2027-05-01T12:00";
  private static final String LATER = "2027-05-02T12:00";

  @Test
  void stockIsGivenOutFirst() {
    Book book = piece(tiles(order("A", 4, DUE)), "onHand", 1);
    assertEquals(3, Needs.of(book).castings("tile"));
    assertEquals(Map.of("tile", 3), Needs.of(book).of("A"));
  }

  @Test
  void anOrderServedFromStockWaitsForNothing() {
    Book book = piece(tiles(order("A", 4, DUE), order("B", 1, LATER)), "onHand", 4);
    assertEquals(Map.of(), Needs.of(book).of("A"));
    assertEquals(Map.of("tile", 1), Needs.of(book).of("B"));
    assertEquals(1, Needs.of(book).castings());
  }

  @Test
  void stockBeyondTheOrdersPlansNothing() {
    Book book = piece(tiles(order("A", 4, DUE)), "onHand", 100);
    assertEquals(0, Needs.of(book).castings("tile"));
  }

  @ParameterizedTest
  @CsvSource({
    // good pieces wanted, cavities, percent good, castings
    "46, 1, 92, 50",
    "47, 1, 92, 52",
    "45, 1, 92, 49",
    "7, 1, 100, 7",
    "7, 4, 90, 2",
    "8, 4, 90, 3",
    "9, 3, 100, 3",
    "29, 1, 58, 50",
    "57, 1, 57, 100",
    "1, 1, 0.1, 1000",
    "1, 1000, 0.1, 1",
    "1, 6, 99, 1",
    "100000, 1, 8, 1250000"
  })
  void castingsAreWhatTheGoodShareAsksForAndNotOneMore(
      int pieces, int cavities, double goodPercent, int castings) {
    Book book = piece(tiles(order("A", pieces, DUE)), "goodPercent", goodPercent);
    book = Studios.mould(book, "cavities", cavities);
    assertEquals(castings, Needs.of(book).castings("tile"));
  }

  @Test
  void fractionsOfGoodPiecesAreCarriedFromOrderToOrder() {
    // Two castings at 80 % are 1.6 good tiles: one for A, and 0.6 of the one for B.
    Book book = piece(tiles(order("A", 1, DUE), order("B", 1, LATER)), "goodPercent", 80.0);
    Needs needs = Needs.of(book);
    assertEquals(2, needs.of("A").get("tile"));
    assertEquals(3, needs.of("B").get("tile"));
    assertEquals(3, needs.castings());
  }

  @Test
  void ordersAreServedByDueThenLargerWeightThenId() {
    Book book =
        tiles(
            order("Z", 1, DUE),
            order("B", 1, LATER),
            weighing("C", "2.5"),
            order("A", 1, LATER),
            weighing("D", "2.50"),
            weighing("E", "10"));
    assertEquals(
        List.of("Z", "E", "C", "D", "A", "B"),
        Needs.serving(book).stream().map(Order::id).toList());
  }

  private static Order weighing(String id, String weight) {
    return Altered.of(order(id, 1, LATER), "weight", new BigDecimal(weight));
  }

  @Test
  void whoIsServedFirstGetsTheStockWhereverItStandsInTheBook() {
    Book book = piece(tiles(order("A", 2, LATER), order("B", 2, DUE)), "onHand", 2);
    assertEquals(Map.of(), Needs.of(book).of("B"));
    assertEquals(Map.of("tile", 2), Needs.of(book).of("A"));
  }

  @Test
  void linesOfOnePieceAddUp() {
    List<Line> lines =
        List.of(new Line("tile", 2, Optional.empty()), new Line("tile", 3, Optional.empty()));
    Book book = piece(tiles(Altered.of(order("A", 1, DUE), "lines", lines)), "onHand", 1);
    assertEquals(Map.of("tile", 4), Needs.of(book).of("A"));
  }

  @Test
  void piecesAreCountedEachForItself() {
    List<Line> lines =
        List.of(new Line("tile", 2, Optional.empty()), new Line("slate", 3, Optional.empty()));
    Book book =
        Draft.of(tiles())
            .pieces(Studios.piece("tile", "slab"), Studios.piece("slate", "slab"))
            .orders(Altered.of(order("A", 1, DUE), "lines", lines), order("B", 1, LATER))
            .book();
    Needs needs = Needs.of(book);
    assertEquals(Map.of("tile", 2, "slate", 3), needs.of("A"));
    assertEquals(Map.of("tile", 3), needs.of("B"));
    assertEquals(6, needs.castings());
  }

  @Test
  void aBookWithoutOrdersNeedsNothing() {
    assertEquals(0, Needs.of(tiles()).castings());
    assertEquals(0, Needs.of(tiles()).castings("tile"));
  }

  @Test
  void countsTooLargeForAnIntegerDoNotTurnNegative() {
    Book book =
        Draft.of(tiles())
            .pieces(
                Altered.of(Studios.piece("tile", "slab"), "goodPercent", 0.001),
                Altered.of(Studios.piece("slate", "slab"), "goodPercent", 0.001))
            .orders(order("A", 100_000, DUE), SampleBook.order("B", "slate", 100_000, DUE))
            .book();
    assertTrue(Needs.of(book).castings() > Integer.MAX_VALUE);
  }

  @Test
  void castingsAreTheLeastThatGiveEnoughByExactArithmetic() {
    Random random = new Random(11);
    for (int i = 0; i < 500; i++) {
      int pieces = 1 + random.nextInt(300);
      int onHand = random.nextInt(20);
      int cavities = 1 + random.nextInt(6);
      BigDecimal percent = BigDecimal.valueOf(1 + random.nextInt(1000), 1);
      Book book = piece(tiles(order("A", pieces, DUE)), "goodPercent", percent.doubleValue());
      book = Studios.mould(piece(book, "onHand", onHand), "cavities", cavities);
      BigDecimal demand = BigDecimal.valueOf(Math.max(0, pieces - onHand)).movePointRight(2);
      BigDecimal each = percent.multiply(BigDecimal.valueOf(cavities));
      int least = demand.divide(each, 0, RoundingMode.CEILING).intValueExact();
      assertEquals(least, Needs.of(book).castings("tile"), demand + " / " + each);
    }
  }
}
