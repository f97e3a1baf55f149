package strickle.plan.audit;

import static strickle.plan.audit.Reading.BOOK;
import static strickle.plan.audit.Reading.assertBreaks;
import static strickle.plan.audit.Reading.assertValid;
import static strickle.plan.audit.Reading.sample;

import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Pin;

/** Rule 9. */
class PinsRuleTest {

  @Test
  void aPinIsKeptByALotPouredThenByThatPerson() {
    assertValid(pinned(BOOK, 1, "2027-04-06T09:08", "ana"), sample());
  }

  @Test
  void aPinIsNotKeptByAPourAtAnotherTime() {
    assertBreaks(9, pinned(BOOK, 1, "2027-04-06T09:09", "ana"), sample());
  }

  @Test
  void aPinIsNotKeptByAnotherPerson() {
    assertBreaks(9, pinned(Books.withBen(), 1, "2027-04-06T09:08", "ben"), sample());
  }

  @Test
  void aPinIsNotKeptByFewerCastings() {
    assertBreaks(9, pinned(BOOK, 2, "2027-04-06T09:08", "ana"), sample());
  }

  @Test
  void aPinIsNotKeptByMoreCastings() {
    Book book = Books.withTwoTubs();
    assertValid(pinned(book, 2, "2027-04-05T09:00", "ana"), TwoAtOnce.asOneRun());
    assertBreaks(9, pinned(book, 1, "2027-04-05T09:00", "ana"), TwoAtOnce.asOneRun());
  }

  private static Book pinned(Book book, int castings, String start, String person) {
    LocalDateTime at = LocalDateTime.parse(start);
    return BookWith.pins(book, new Pin(Pin.POUR, "planter-slate", castings, at, person));
  }
}
