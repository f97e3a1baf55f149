package strickle.plan.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static strickle.plan.audit.Reading.assertBreaks;
import static strickle.plan.audit.Reading.assertValid;

import org.junit.jupiter.api.Test;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Order;
import strickle.book.SampleBook;

/** 920 pieces owed beyond the stock, at 92 % good: 1000 castings, over fourteen years. */
class LargePlanTest {

  private static final String DUE = "2045-04-24T17:00";

  @Test
  void aThousandCastingsAreReadLikeFour() {
    Order order = SampleBook.order("O-104", "planter-slate", 921, DUE);
    Book book =
        BookWith.orders(SampleBook.example(), Altered.of(order, "weight", SampleBook.decimal("3")));
    PlanDraft draft = Repeated.times(250).settled(Follow.SAMPLE.withDue(DUE));
    assertEquals(1000, draft.plan().lots().size());
    assertValid(book, draft);
    assertBreaks(4, "task w177L3-1/step-3", book, draft.person("w177L3-1/step-3", "zoe"));
  }
}
