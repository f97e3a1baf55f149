package strickle.plan.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Climate;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Person;
import strickle.book.SampleBook;
import strickle.book.Window;

/**
 * What each change makes of the example: Ana is there from 9 to 12 and from 13 to 17 on Mondays,
 * from 10 to 13 on Saturdays, and not on Thursday 8 April; an hour is 22 dollars.
 */
class ChangeTest {

  private static final Book EXAMPLE = SampleBook.example();
  private static final LocalDate MONDAY = LocalDate.parse("2027-04-05");
  private static final LocalDate THURSDAY_OFF = LocalDate.parse("2027-04-08");
  private static final LocalDate SATURDAY = LocalDate.parse("2027-04-10");

  private static Change read(String text) {
    return ChangeText.read(text);
  }

  private static Fault fault(Book book, String text) {
    Change change = read(text);
    List<Fault> faults = change.faults(book);
    assertEquals(1, faults.size(), faults.toString());
    assertEquals(faults, assertThrows(Faulty.class, () -> change.on(book)).faults());
    return faults.get(0);
  }

  private static void assertCost(String expected, Cost cost) {
    assertEquals(0, new BigDecimal(expected).compareTo(cost.amount().orElseThrow()), cost::how);
  }

  private static List<String> hours(Book book, String person, LocalDate day) {
    return book.person(person).hoursOn(day).stream().map(Window::toString).toList();
  }

  @Test
  void aFormMoreIsOneMoreOfItAndNothingElse() {
    Book changed = read("form:tub-a+1").on(EXAMPLE);
    assertEquals(2, changed.form("tub-a").count());
    Book back =
        BookWith.forms(changed, Altered.of(changed.form("tub-a"), "count", 1), SampleBook.tubB());
    assertEquals(EXAMPLE, back);
    assertEquals("one more deep tub", read("form:tub-a+1").words(EXAMPLE));
    assertEquals("2 more of the form “deep tub”", read("form:tub-a+2").words(EXAMPLE));
  }

  @Test
  void aFormCostsWhatOneCostAndFallsOnTheCastingsOfItsLife() {
    // 14.50 for 150 castings: 0.09667 each.
    Cost one = read("form:tub-a+1").cost(EXAMPLE);
    assertCost("14.50", one);
    assertEquals(Optional.of(new BigDecimal("0.0967")), one.eachCasting());
    assertCost("43.50", read("form:tub-a+3").cost(EXAMPLE));
  }

  @Test
  void aSetOfFormsCostsBothAndCountsOnce() {
    Change set = Together.of(new MoreForms("tub-a", 1), new MoreForms("tub-b", 1));
    // 14.50 + 12.00; 0.0967 + 12/150 = 0.08.
    assertCost("26.50", set.cost(EXAMPLE));
    assertEquals(Optional.of(new BigDecimal("0.1767")), set.cost(EXAMPLE).eachCasting());
    assertEquals("bought once", set.cost(EXAMPLE).how());
    assertEquals("one more deep tub and one more mid tub", set.words(EXAMPLE));
    assertEquals(2, set.on(EXAMPLE).form("tub-b").count());
  }

  @Test
  void placesAreMoreAndTheirCostIsNotKnown() {
    Change places = read("places:rack+4");
    assertEquals(28, places.on(EXAMPLE).station("rack").places());
    assertEquals("4 more places at the drying rack", places.words(EXAMPLE));
    assertEquals("one more place at the drying rack", read("places:rack+1").words(EXAMPLE));
    assertTrue(places.cost(EXAMPLE).amount().isEmpty());
    assertTrue(places.cost(EXAMPLE).how().startsWith("not known: "));
  }

  @Test
  void hoursThatTouchAWindowBecomeOneWithItOnThatDateOnly() {
    Book changed = read("hours:ana:2027-04-10T13:00-15:30").on(EXAMPLE);
    assertEquals(List.of("10:00-15:30"), hours(changed, "ana", SATURDAY));
    assertEquals(List.of("10:00-13:00"), hours(changed, "ana", SATURDAY.plusDays(7)));
    assertEquals(List.of(), hours(changed, "ana", THURSDAY_OFF));
    Book between = read("hours:ana:2027-04-05T12:00-13:00").on(EXAMPLE);
    assertEquals(List.of("09:00-17:00"), hours(between, "ana", MONDAY));
    Book apart = read("hours:ana:2027-04-10T07:00-08:00").on(EXAMPLE);
    assertEquals(List.of("07:00-08:00", "10:00-13:00"), hours(apart, "ana", SATURDAY));
    Book off = read("hours:ana:2027-04-08T09:00-10:00").on(EXAMPLE);
    assertEquals(List.of("09:00-10:00"), hours(off, "ana", THURSDAY_OFF));
  }

  @Test
  void windowsThatOnlyTouchEachOtherStayTwo() {
    Window morning = SampleBook.hours(9, 12);
    Window noon = SampleBook.hours(12, 14);
    Person ben = SampleBook.person("ben", List.of(morning, noon), DayOfWeek.MONDAY);
    Book book = BookWith.people(EXAMPLE, SampleBook.ana(), ben);
    Book changed = read("hours:ben:2027-04-05T15:00-16:00").on(book);
    assertEquals(
        List.of("09:00-12:00", "12:00-14:00", "15:00-16:00"), hours(changed, "ben", MONDAY));
  }

  @Test
  void hoursCostTheWageForWhatWasNotOpenBefore() {
    // 2.5 h at 22.
    assertCost("55", read("hours:ana:2027-04-10T13:00-15:30").cost(EXAMPLE));
    // Open until 13 already: one hour more.
    Cost overlapping = read("hours:ana:2027-04-10T12:00-14:00").cost(EXAMPLE);
    assertCost("22", overlapping);
    assertEquals("the wage for 1 h", overlapping.how());
  }

  @Test
  void aHelperIsThereWheneverSomebodyIsAndOnNoOtherDay() {
    Book changed = read("helper:2027-04-05").on(EXAMPLE);
    assertEquals(2, changed.people().size());
    assertEquals(List.of("09:00-12:00", "13:00-17:00"), hours(changed, "helper", MONDAY));
    assertEquals(List.of(), hours(changed, "helper", MONDAY.plusDays(7)));
    // 7 h at 22.
    assertCost("154", read("helper:2027-04-05").cost(EXAMPLE));
    assertEquals(
        "a helper Mon 5 Apr 2027 09:00-12:00, 13:00-17:00",
        read("helper:2027-04-05").words(EXAMPLE));
  }

  @Test
  void aHelperOnADayOffIsThereFromNineToFive() {
    assertEquals(
        List.of("09:00-17:00"),
        hours(read("helper:2027-04-08").on(EXAMPLE), "helper", THURSDAY_OFF));
    // 8 h at 22.
    assertCost("176", read("helper:2027-04-08").cost(EXAMPLE));
    Change half = read("helper:2027-04-08T09:30-11:00");
    assertEquals(List.of("09:30-11:00"), hours(half.on(EXAMPLE), "helper", THURSDAY_OFF));
    assertCost("33", half.cost(EXAMPLE));
  }

  @Test
  void aHelperTakesAnIdThatNobodyHas() {
    Person other = Altered.of(SampleBook.ana(), "id", "helper");
    Book book = BookWith.people(EXAMPLE, SampleBook.ana(), other);
    List<String> ids =
        read("helper:2027-04-05").on(book).people().stream().map(Person::id).toList();
    assertEquals(List.of("ana", "helper", "helper-2"), ids);
  }

  @Test
  void theRoomIsWarmerByDegreesOrNeverCoolerThanSome() {
    assertEquals(List.of(20.5), temperatures(read("room:+2.5").on(EXAMPLE)));
    assertEquals(List.of(20.0), temperatures(read("room:20").on(EXAMPLE)));
    assertEquals("a room warmer by 2.5 °C", read("room:+2.5").words(EXAMPLE));
    assertEquals("a room never cooler than 20 °C", read("room:20").words(EXAMPLE));
    assertTrue(read("room:20").cost(EXAMPLE).amount().isEmpty());
  }

  private static List<Double> temperatures(Book book) {
    return book.studio().climate().stream().map(Climate::temperatureC).toList();
  }

  @Test
  void theBatchLimitIsTheOneGiven() {
    assertEquals(12000, read("batch:12000").on(EXAMPLE).studio().batchLimitGrams());
    assertEquals("a batch limit of 12000 g in place of 9000", read("batch:12000").words(EXAMPLE));
  }

  @Test
  void severalAreMadeOneAfterTheOther() {
    Change twice = Together.of(new MoreForms("tub-a", 1), new MoreForms("tub-a", 1));
    assertEquals(3, twice.on(EXAMPLE).form("tub-a").count());
    Change same = Together.of(read("helper:2027-04-05"), read("helper:2027-04-05"));
    assertEquals(3, same.on(EXAMPLE).people().size());
    Change hours =
        Together.of(
            read("hours:ana:2027-04-10T13:00-14:00"), read("hours:ana:2027-04-10T13:30-15:00"));
    // From 13 to 14 and from 14 to 15.
    assertCost("44", hours.cost(EXAMPLE));
    Change unknown = Together.of(read("form:tub-a+1"), read("room:20"));
    assertTrue(unknown.cost(EXAMPLE).amount().isEmpty());
  }

  @Test
  void allThatIsWrongWithSeveralIsTold() {
    Change wrong = Together.of(read("form:tub-x+1"), read("batch:9000"), read("form:tub-a+1"));
    assertEquals(2, wrong.faults(EXAMPLE).size());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "form:tub-c+1 | maybe \"tub-a\"",
        "form:zzzzzz+1 | tub-a, tub-b",
        "places:rak+1 | maybe \"rack\"",
        "hours:anna:2027-04-10T09:00-10:00 | maybe \"ana\"",
        "hours:ana:2027-04-05T09:30-11:00 | a time outside of 09:00-12:00, 13:00-17:00",
        "room:18 | more than 18 °C",
        "room:+50 | at most 60 °C",
        "batch:9000 | more than the present 9000 g",
      })
  void aChangeThatCannotBeMadeSaysWhatCould(String text, String right) {
    assertTrue(fault(EXAMPLE, text).right().contains(right), fault(EXAMPLE, text).toString());
  }

  @Test
  void aRoomWithoutAClimateCannotBeMadeWarmer() {
    Book book = BookWith.studio(EXAMPLE, Altered.of(SampleBook.studio(), "climate", List.of()));
    assertTrue(fault(book, "room:+2").found().contains("20 °C"));
    assertTrue(fault(book, "room:25").found().contains("20 °C"));
  }

  @Test
  void moreFormsThanABookTakesAreRefused() {
    Book many =
        BookWith.forms(EXAMPLE, Altered.of(SampleBook.tubA(), "count", 900), SampleBook.tubB());
    assertTrue(fault(many, "form:tub-a+101").right().contains("1000"));
  }
}
