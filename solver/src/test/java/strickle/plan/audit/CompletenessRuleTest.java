package strickle.plan.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static strickle.plan.SamplePlan.at;
import static strickle.plan.audit.Reading.BOOK;
import static strickle.plan.audit.Reading.assertBreaks;
import static strickle.plan.audit.Reading.assertValid;
import static strickle.plan.audit.Reading.rulesBroken;
import static strickle.plan.audit.Reading.sample;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Order;
import strickle.book.SampleBook;

/** Rule 10. */
class CompletenessRuleTest {

  @Test
  void noMoreIsCastThanIsOwed() {
    // Two owed beyond the stock need ceil(2 / 0.92) = 3 castings; the third run serves the order.
    PlanDraft draft = sample().order("ready", at("04-18T10:09"));
    assertBreaks(10, "piece planter-slate", owing(3), draft);
  }

  @Test
  void noLessIsCastThanIsOwed() {
    assertEquals(Set.of(8, 10), rulesBroken(owing(5), sample().plan()));
  }

  @Test
  void castingsAllowForThoseThatDoNotTurnOut() {
    // Three owed beyond the stock: 4 castings at 92 %, but 3 when all turn out.
    Book flawless = Books.piece("goodPercent", 100.0);
    assertBreaks(10, flawless, sample().order("ready", at("04-18T10:09")));
  }

  @Test
  void nothingIsCastForNobody() {
    Book book = BookWith.orders(BOOK);
    assertBreaks(10, book, sample().with("orders", List.of()));
  }

  @Test
  void anEmptyPlanServesAnEmptyOrderBook() {
    PlanDraft nothing = sample().with("lots", List.of()).with("tasks", List.of());
    assertValid(BookWith.orders(BOOK), nothing.settled().with("orders", List.of()));
  }

  @Test
  void aLateOrderSaysWhy() {
    Book book = Books.order("due", at("04-20T13:00").toLocalDateTime());
    PlanDraft late = sample().settled(Follow.SAMPLE.withDue("2027-04-20T13:00"));
    assertValid(book, late);
    assertBreaks(10, "order O-104", book, late.order("because", List.of(" ")));
    assertBreaks(10, "order O-104", book, late.order("because", List.of()));
  }

  @Test
  void anOrderOnTimeGivesNoReasons() {
    assertBreaks(10, "order O-104", BOOK, sample().order("because", List.of("it rained")));
  }

  private static Book owing(int quantity) {
    Order order = SampleBook.order("O-104", "planter-slate", quantity, "2027-04-24T17:00");
    return BookWith.orders(BOOK, Altered.of(order, "weight", SampleBook.decimal("3")));
  }
}
