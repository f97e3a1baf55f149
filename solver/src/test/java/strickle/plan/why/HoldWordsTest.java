package strickle.plan.why;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Order;
import strickle.book.SampleBook;
import strickle.plan.Cover;

/** The sentences for what rarely holds a run; the others are seen whole in WhyTest. */
class HoldWordsTest {

  private static final int MONDAY_NINE = 9 * 60;
  private static final int MONDAY_TEN = 10 * 60;
  private static final Thing TUB = Thing.form("tub-a");

  private final Book book = SampleBook.example();
  private final Order order = SampleBook.gardenShop();
  private final Moments moments =
      new Moments(
          MomentsTest.at("2027-04-05T00:00").atZone(book.studio().timeZone()).toOffsetDateTime(),
          book.studio().timeZone());
  private final Floor floor = Floor.of(book, Cover.AVERAGE, moments, Map.of(), List.of());
  private final Names names = new Names(floor, Serving.of(floor), order);
  private final Course course = Runs.course("L1-1", List.of(task(9, 31), task(40, 8), task(41, 8)));
  private final Course other = Runs.course("L2-1", List.of());
  private final HoldWords words = new HoldWords(names, moments, course, floor::usage);

  private static Placed task(int hour, int minutes) {
    return new Placed("ana", hour * 60, hour * 60 + minutes, minutes);
  }

  private void assertSaid(String sentence, Hold hold) {
    assertEquals(sentence, words.say(hold));
  }

  @Test
  void runsOfOneLotAreNamed() {
    assertSaid(
        "the pour waits until Mon 5 Apr 10:00 to be one lot with L2-1 (deep planter, slate)",
        new Hold.Together(0, MONDAY_NINE, MONDAY_TEN, List.of(other)));
  }

  @Test
  void whatCouldBeginIsNotBlamedOnAnything() {
    assertSaid(
        "the pour could begin Mon 5 Apr 09:00 as things stand;"
            + " the plan has it begin Mon 5 Apr 10:00",
        new Hold.Nothing(0, MONDAY_NINE, MONDAY_TEN));
  }

  @Test
  void aFormThatIsWantedSoonIsNamedWithWhoWantsIt() {
    assertSaid(
        "the pour waits until Mon 5 Apr 10:00: begun before,"
            + " the deep tub would not be back in time for L2-1 (deep planter, slate)",
        new Hold.WantedSoon(0, MONDAY_NINE, MONDAY_TEN, TUB, 1, List.of(other)));
  }

  @Test
  void severalThingsAheadAreToldInGeneral() {
    assertSaid(
        "“wet sand the rim” waits until Mon 5 Apr 10:00: begun before, what follows it would find"
            + " no place",
        new Hold.NoPlaceAfter(2, MONDAY_NINE, MONDAY_TEN));
  }

  @Test
  void hoursTooShortForAPourAreToldWithItsMinutes() {
    assertSaid(
        "the pour waits: nobody is open for 31 min on end before Mon 5 Apr 10:00",
        new Hold.TooShort(0, MONDAY_NINE, MONDAY_TEN));
  }

  @Test
  void aTaskThatWouldOnlyBeBrokenOffIsToldSo() {
    assertSaid(
        "the demoulding waits: begun before Mon 5 Apr 10:00 it would be broken off at closing"
            + " and done no sooner",
        new Hold.TooShort(1, MONDAY_NINE, MONDAY_TEN));
  }

  @Test
  void aMostWaitFurtherOnNamesBothTasks() {
    assertSaid(
        "the pour begins later, Mon 5 Apr 10:00, so that “wet sand the rim” can follow"
            + " the demoulding within 48 h",
        new Hold.MostWait(0, MONDAY_NINE, MONDAY_TEN, 2, List.of()));
  }

  @Test
  void ofManyPeopleTheFirstToBeFreeIsTold() {
    Book three =
        BookWith.people(
            book,
            SampleBook.ana(),
            SampleBook.person("ben", List.of()),
            SampleBook.person("cleo", List.of()));
    Floor crowded = Floor.of(three, Cover.AVERAGE, moments, Map.of(), List.of());
    Names people = new Names(crowded, Serving.of(crowded), order);
    List<Errand> errands =
        List.of(errand("ana", 660), errand("ben", MONDAY_TEN), errand("cleo", 700));
    assertEquals(
        "the pour waits: Ana, ben and cleo are all busy; ben is busy until Mon 5 Apr 10:00"
            + " with the demoulding of L2-1 (deep planter, slate)",
        new HoldWords(people, moments, course, crowded::usage)
            .say(new Hold.Busy(0, MONDAY_NINE, MONDAY_TEN, errands)));
  }

  private Errand errand(String person, int end) {
    return new Errand(other, 1, new Placed(person, MONDAY_NINE, end, end - MONDAY_NINE));
  }
}
