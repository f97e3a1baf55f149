package strickle.plan.audit;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.util.Collection;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.Draft;
import strickle.book.Pin;
import strickle.book.SampleBook;
import strickle.plan.Plan;
import strickle.plan.SamplePlan;

/** The audit tells what is wrong with any plan whatever; it never throws. */
class NonsenseTest {

  private static final int PLANS = 2000;

  /** The sample book with one place on the rack and one pour pinned; the sample plan fits it. */
  private static final Book BOOK =
      Draft.of(SampleBook.example())
          .stations(Altered.of(SampleBook.rack(), "places", 1))
          .pins(
              new Pin(Pin.POUR, "planter-slate", 1, LocalDateTime.parse("2027-04-05T09:00"), "ana"))
          .book();

  private static final Plan PLAN = SamplePlan.example();

  @Test
  void whatIsNotSpoiltIsValid() {
    assertEquals(List.of(), Audit.of(BOOK, PLAN));
  }

  @Test
  void whateverIsSpoiltIsToldAndNotThrown() {
    long told =
        IntStream.range(0, PLANS)
            .mapToObj(number -> assertDoesNotThrow(() -> audit(number), "plan " + number))
            .filter(findings -> !findings.isEmpty())
            .count();
    assertTrue(told > PLANS / 2, "only " + told + " plans were found wrong");
  }

  @Test
  void everyRuleIsBrokenByOneOfThemOrAnother() {
    List<Integer> broken =
        IntStream.range(0, PLANS / 2)
            .mapToObj(NonsenseTest::audit)
            .flatMap(Collection::stream)
            .map(Finding::rule)
            .distinct()
            .sorted()
            .toList();
    assertEquals(List.of(0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10), broken);
  }

  @Test
  void aFindingNamesARuleThatExists() {
    Finding finding = new Finding(4, "person ana", "two at once");
    assertEquals("rule 4, person ana: two at once", finding.toString());
    assertThrows(IllegalArgumentException.class, () -> new Finding(11, "", ""));
    assertThrows(IllegalArgumentException.class, () -> new Finding(-1, "", ""));
  }

  /** The findings on a plan with one to seven things spoilt. */
  private static List<Finding> audit(int number) {
    return Audit.of(BOOK, new Mangle(number).of(PLAN, 1 + number % 7));
  }
}
