package strickle.plan.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static strickle.plan.SamplePlan.spell;
import static strickle.plan.audit.Reading.assertBreaks;
import static strickle.plan.audit.Reading.assertValid;
import static strickle.plan.audit.Reading.rulesBroken;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Draft;
import strickle.book.Line;
import strickle.book.Mould;
import strickle.book.Order;
import strickle.book.Piece;
import strickle.book.Pin;
import strickle.book.SampleBook;

/**
 * A second piece of the same mould and mix, always good: one casting of it and one of the first
 * share lot 1, as runs L1-1 (the first piece) and L1-2 (the second). There are two of each tub.
 */
class TwoPiecesTest {

  private static final String SECOND = "planter-flawless";

  @Test
  void runsOfTwoPiecesShareALotOfTheirMix() {
    assertValid(book(2), plan());
  }

  @Test
  void anOrderWaitsForBothItsPieces() {
    assertEquals(Set.of(8, 10), rulesBroken(book(3), plan().plan()));
  }

  @Test
  void aPinIsKeptByEitherRunOfTheLot() {
    assertValid(BookWith.pins(book(2), pin("planter-slate"), pin(SECOND)), plan());
  }

  @Test
  void theCastingsOfAPieceAreCountedForThatPiece() {
    PlanDraft swapped = plan().with("lots", swapped());
    assertEquals(Set.of(8, 10), rulesBroken(book(2), swapped.plan()));
  }

  @Test
  void eachRunDemouldsByItsOwnMould() {
    Book slower = BookWith.moulds(book(2), SampleBook.planterDeep(), slowMould());
    Piece second = Altered.of(slower.piece(SECOND), "mould", "slow");
    Book book = BookWith.pieces(slower, SampleBook.planterSlate(), second);
    assertBreaks(2, "task L1-2/demould", book, plan());
    PlanDraft longer = plan().spells("L1-2/demould", spell("04-06T09:08", 9));
    assertValid(book, longer.spells("L1-2/step-1", spell("04-06T09:17", 8)).settled());
  }

  private static PlanDraft plan() {
    return TwoAtOnce.asTwoRuns()
        .run("L1", run -> run.id().equals("L1-2") ? Altered.of(run, "piece", SECOND) : run);
  }

  private static List<?> swapped() {
    return plan().run("L3", run -> Altered.of(run, "piece", SECOND)).plan().lots();
  }

  private static Mould slowMould() {
    Mould slow = Altered.of(SampleBook.planterDeep(), "id", "slow");
    return Altered.of(slow, "demouldMinutes", 9);
  }

  /**
   * Three castings of the first piece are owed, and of the second so many less the one in stock.
   */
  private static Book book(int ofTheSecond) {
    Piece second = Altered.of(SampleBook.planterSlate(), "id", SECOND);
    Piece flawless = Altered.of(second, "goodPercent", 100.0);
    Line first = SampleBook.gardenShop().lines().get(0);
    List<Line> lines =
        List.of(
            Altered.of(first, "quantity", 3),
            Altered.of(Altered.of(first, "piece", SECOND), "quantity", ofTheSecond));
    Order order = Altered.of(SampleBook.gardenShop(), "lines", lines);
    return Draft.of(Books.withTwoTubs())
        .pieces(SampleBook.planterSlate(), flawless)
        .orders(order)
        .book();
  }

  private static Pin pin(String piece) {
    return new Pin(Pin.POUR, piece, 1, LocalDateTime.parse("2027-04-05T09:00"), "ana");
  }
}
