package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.plan.Studios.FROM;
import static strickle.plan.Studios.MONDAY;
import static strickle.plan.Studios.TUESDAY;
import static strickle.plan.Studios.at;
import static strickle.plan.Studios.order;
import static strickle.plan.Studios.piece;
import static strickle.plan.Studios.tiles;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.SampleBook;

/**
 * Bounds that can be worked out by head: one tile is poured from 9:00 to 9:35 and out at 13:33; a
 * second one in the same tray is poured then, and out on Tuesday at 9:06.
 */
class BoundingTest {

  private static final String DUE = "2027-05-01T12:00";

  private static Bounds bounds(Book book) {
    return Bounding.of(book, FROM, Cover.AVERAGE);
  }

  private static OffsetDateTime alone(Book book) {
    return bounds(book).orders().get(0).alone();
  }

  @Test
  void aLoneCastingIsPlacedExactly() {
    assertEquals(at(MONDAY + "13:33"), alone(tiles(order("A", 1, DUE))));
  }

  @Test
  void castingsInOneFormTakeTurns() {
    assertEquals(at(TUESDAY + "09:06"), alone(tiles(order("A", 2, DUE))));
    // Poured at 9:06, to be taken out from 13:33 on.
    assertEquals(at(TUESDAY + "13:39"), alone(tiles(order("A", 3, DUE))));
  }

  @Test
  void castingsInFormsOfTheirOwnShareALotAndHands() {
    Book book = BookWith.forms(tiles(order("A", 2, DUE)), Studios.form("tray", 2));
    OffsetDateTime bound = alone(book);
    // Two are poured from 9:00 to 9:50 and out from 13:42 to 13:54, if in one run.
    assertTrue(!bound.isAfter(at(MONDAY + "13:54")) && bound.isAfter(at(MONDAY + "13:33")));
  }

  @Test
  void anOrderServedFromStockIsReadyAtOnce() {
    assertEquals(FROM, alone(piece(tiles(order("A", 2, DUE)), "onHand", 2)));
  }

  @Test
  void stockIsAnOrdersOwnAloneAndNotInItsTurn() {
    Book book = piece(tiles(order("A", 1, DUE), order("B", 1, "2027-05-02T12:00")), "onHand", 1);
    assertEquals(FROM, bounds(book).orders().get(1).alone());
    assertEquals(at(MONDAY + "13:33"), bounds(book).orders().get(1).served());
  }

  @Test
  void aCoverAsksForMoreCastings() {
    Book book = piece(tiles(order("A", 1, DUE)), "goodPercent", 90.0);
    Cover cover = Cover.of(OptionalDouble.of(90));
    assertEquals(at(TUESDAY + "09:06"), alone(book));
    assertEquals(at(MONDAY + "13:33"), Bounding.of(book, FROM, cover).orders().get(0).alone());
  }

  @Test
  void whatCannotBeOnTimeIsLateInEveryPlan() {
    // Ready at 13:33 at the earliest: two started hours after noon, and 22 for Tuesday at 9:06.
    Book book = tiles(order("A", 1, MONDAY + "12:00"), order("B", 1, MONDAY + "12:00"));
    assertEquals(new BigDecimal("24"), bounds(book).weightedLateHours());
    assertEquals(new BigDecimal("24"), Planned.of(book).totals().weightedLateHours());
  }

  @Test
  void ordersOfDifferentPiecesInOneFormGetIntoEachOthersWay() {
    // Slates are as tiles, in the same tray: whichever comes first, the other waits for Tuesday.
    Book two =
        BookWith.pieces(
            tiles(order("A", 1, MONDAY + "14:00")), piece("tile", "slab"), piece("slate", "slab"));
    Book book =
        BookWith.orders(
            two,
            order("A", 1, MONDAY + "14:00"),
            SampleBook.order("B", "slate", 1, MONDAY + "14:00"));
    // From 14:00 to 9:06: 20 started hours.
    assertEquals(new BigDecimal("20"), bounds(book).weightedLateHours());
  }

  @Test
  void handworkIsThatOfTheFewestLots() {
    // Two lots, as there is one tray: 2 x (12 + 8 + 10 + 5 + 6).
    Book book = tiles(order("A", 2, DUE));
    assertEquals(82, bounds(book).attendedMinutes());
    assertEquals(82, Planned.of(book).totals().attendedMinutes());
  }

  @Test
  void aBookWithoutOrdersHasNothingToDo() {
    Bounds none = bounds(tiles());
    assertEquals(List.of(), none.orders());
    assertEquals(0, none.attendedMinutes());
    assertEquals(BigDecimal.ZERO, none.weightedLateHours());
  }
}
