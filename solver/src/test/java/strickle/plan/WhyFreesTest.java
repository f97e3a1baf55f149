package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.plan.LateBooks.FRIDAY_AFTERNOON;
import static strickle.plan.LateBooks.ana;
import static strickle.plan.LateBooks.day;
import static strickle.plan.LateBooks.oneRackPlace;
import static strickle.plan.LateBooks.oneTray;
import static strickle.plan.LateBooks.outcome;
import static strickle.plan.LateBooks.overTheWeekend;
import static strickle.plan.LateBooks.sampleDue;
import static strickle.plan.LateBooks.shortMostWait;
import static strickle.plan.LateBooks.tiles;
import static strickle.plan.LateBooks.vaseAndTile;
import static strickle.plan.Studios.FRIDAY;
import static strickle.plan.Studios.MONDAY;

import java.util.List;
import org.junit.jupiter.api.Test;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Draft;
import strickle.book.SampleBook;
import strickle.book.SpecialDay;
import strickle.book.Station;

/** What the last sentence says would free an order is granted, and the book planned again. */
class WhyFreesTest {

  @Test
  void theSecondFormThatIsSaidToFreeItDoes() {
    Book book = Draft.of(oneTray()).forms(Studios.form("tray", 2)).book();
    assertEquals(0, outcome(book, "O-2").lateMinutes());
  }

  @Test
  void thePairOfHandsAndTheHoursThatAreSaidToFreeItBothDo() {
    Book book = vaseAndTile();
    SpecialDay helping = day("2027-04-05", "09:00-09:45");
    SpecialDay early = day("2027-04-05", "06:00-06:45", "09:00-17:00");
    Book helped =
        BookWith.people(
            book,
            Studios.weekdays("ana"),
            Altered.of(SampleBook.person("ben", List.of()), "exceptions", List.of(helping)));
    Book begunEarly = BookWith.people(book, ana(early));
    assertEquals(0, outcome(helped, "O-2").lateMinutes());
    assertEquals(0, outcome(begunEarly, "O-2").lateMinutes());
  }

  @Test
  void theHoursThatAreSaidToFreeItDo() {
    SpecialDay longer = day("2027-04-09", "09:00-17:00", "18:30-18:45");
    Book book = BookWith.people(overTheWeekend(), ana(longer));
    OrderOutcome freed = outcome(book, FRIDAY_AFTERNOON, "O-1");
    assertEquals(0, freed.lateMinutes());
    assertEquals(Studios.at(FRIDAY + "18:36"), freed.ready());
  }

  @Test
  void thePlaceThatIsSaidToFreeItDoes() {
    Book book = BookWith.stations(oneRackPlace(), new Station("rack", "drying rack", 2));
    assertEquals(0, outcome(book, "O-2").lateMinutes());
  }

  @Test
  void theEarlierStartOrLaterDateThatIsSaidToHelpDoes() {
    Book book = tiles(Studios.order("O-1", 1, MONDAY + "03:00"));
    Book later = tiles(Studios.order("O-1", 1, MONDAY + "13:33"));
    assertEquals(0, outcome(book, Studios.at("2027-04-02T00:00"), "O-1").lateMinutes());
    assertEquals(0, outcome(later, "O-1").lateMinutes());
  }

  @Test
  void nobodyIsToBlameWhileSomebodyElseIsFree() {
    Book book = BookWith.people(vaseAndTile(), Studios.weekdays("ana"), Studios.weekdays("ben"));
    assertEquals(0, outcome(book, "O-2").lateMinutes());
  }

  @Test
  void theHoursForTheLaterTaskThatAMostWaitAsksForFreeTheOrder() {
    Book book = shortMostWait();
    Book longer = BookWith.people(book, ana(day("2027-04-09", "09:00-17:00", "19:30-19:45")));
    String last = last(outcome(book, Studios.at(FRIDAY + "00:00"), "O-1"));
    assertTrue(last.startsWith("hours for Ana between Fri 9 Apr 19:30 and 19:45"), last);
    assertEquals(0, outcome(longer, Studios.at(FRIDAY + "00:00"), "O-1").lateMinutes());
  }

  @Test
  void bothFormsThatAreSaidToFreeItDoTogetherButNotOneAlone() {
    Book book = sampleDue("2027-04-16T17:00");
    String last = last(outcome(book, "O-104"));
    assertTrue(last.startsWith("a second deep tub and a second mid tub would free it"), last);
    Book deepOnly = withTubs(book, 2, 1);
    Book both = withTubs(book, 2, 2);
    assertEquals(outcome(book, "O-104").lateMinutes(), outcome(deepOnly, "O-104").lateMinutes());
    assertEquals(0, outcome(both, "O-104").lateMinutes());
  }

  private static Book withTubs(Book book, int deep, int mid) {
    return Draft.of(book)
        .forms(
            Altered.of(SampleBook.tubA(), "count", deep),
            Altered.of(SampleBook.tubB(), "count", mid))
        .book();
  }

  private static String last(OrderOutcome outcome) {
    return outcome.because().get(outcome.because().size() - 1);
  }
}
