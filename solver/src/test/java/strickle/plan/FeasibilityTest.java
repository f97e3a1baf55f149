package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.plan.Studios.mix;
import static strickle.plan.Studios.mould;
import static strickle.plan.Studios.order;
import static strickle.plan.Studios.piece;
import static strickle.plan.Studios.step;
import static strickle.plan.Studios.tiles;
import static strickle.plan.Studios.weekdays;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strickle.book.After;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Draft;
import strickle.book.Fault;
import strickle.book.Mould;
import strickle.book.Person;
import strickle.book.Piece;
import strickle.book.SampleBook;
import strickle.book.SpecialDay;
import strickle.book.Step;
import strickle.book.WaitKind;

class FeasibilityTest {

  private static final String DUE = "2027-04-30T12:00";
  private static final Pattern SUGGESTED = Pattern.compile("about ([0-9.]+) h with .*");
  private static final Pattern STEP = Pattern.compile(".*route\\[([0-9]+)].*");

  private static Book book() {
    return tiles(order("A", 2, DUE));
  }

  private static List<Fault> faults(Book book) {
    return Planning.faults(book, Studios.FROM);
  }

  private static Fault only(Book book) {
    List<Fault> faults = faults(book);
    assertEquals(1, faults.size(), faults::toString);
    return faults.get(0);
  }

  private static List<String> paths(Book book) {
    return faults(book).stream().map(Fault::path).toList();
  }

  private static double suggested(Fault fault) {
    Matcher matcher = SUGGESTED.matcher(fault.right());
    assertTrue(matcher.matches(), fault::toString);
    return Double.parseDouble(matcher.group(1));
  }

  /** The book with what every fault suggests in the place it names. */
  private static Book repaired(Book book) {
    Book repaired = book;
    for (Fault fault : faults(book)) {
      repaired = with(repaired, fault.path(), OptionalDouble.of(suggested(fault)));
    }
    return repaired;
  }

  private static Book with(Book book, String path, OptionalDouble atMost) {
    if (path.equals("$.moulds[0].setAtMostHours")) {
      return mould(book, "setAtMostHours", atMost);
    }
    Matcher matcher = STEP.matcher(path);
    assertTrue(matcher.matches() && path.startsWith("$.pieces[0].route["), path);
    List<Step> route = new ArrayList<>(book.pieces().get(0).route());
    int at = Integer.parseInt(matcher.group(1));
    assertEquals("$.pieces[0].route[" + at + "].after.atMostHours", path);
    After after = Altered.of(route.get(at).after(), "atMostHours", atMost);
    route.set(at, Altered.of(route.get(at), "after", after));
    return piece(book, "route", route);
  }

  /** The set of that many hours, at most so many. */
  private static Book set(double hours, double atMost) {
    Book book = mould(book(), "setHours", hours);
    return mould(book, "setAtMostHours", OptionalDouble.of(atMost));
  }

  private static Person on(String id, DayOfWeek... days) {
    return SampleBook.person(id, List.of(SampleBook.hours(9, 17)), days);
  }

  @Test
  void aBookThatCanBeMadeHasNoFault() {
    assertEquals(List.of(), faults(book()));
    assertEquals(List.of(), faults(SampleBook.example()));
  }

  @ParameterizedTest
  @CsvSource({
    // Poured to 17:00 at the latest, setting from 16:52; open again 16 h 8 min later, at 9:00.
    "9, 16.13, false",
    "9, 16.14, true",
    // From the earliest pour, which sets from 9:27, to the last minute of the day: 7 h 32 min.
    "7.53, 7.54, true",
    "7.54, 16.13, false",
    // From a Friday to a Monday they are 64 h 8 min, but for the night of a clock change.
    "65, 65, true",
    "64.13, 64.14, true",
    "64, 64.12, false"
  })
  void aMostWaitIsMetOrNotToTheMinute(double hours, double atMost, boolean met) {
    assertEquals(met, faults(set(hours, atMost)).isEmpty());
  }

  @Test
  void aSetThatNoHoursCanMeetIsNamedWithAValueThatWorks() {
    Book book = set(9, 12);
    Fault fault = only(book);
    assertEquals("$.moulds[0].setAtMostHours", fault.path());
    assertEquals("12 h, which no opening hours can meet for tile", fault.found());
    assertEquals(List.of(), faults(repaired(book)));
    Planned.of(repaired(book));
  }

  @Test
  void aStepThatComesTooLateIsNamedWithAValueThatWorks() {
    // Ben, who alone may do the second step, is there on Wednesdays; tiles come out at 13:33.
    Step sand = step(5, 0, OptionalDouble.empty());
    Step seal = Altered.of(step(5, 20, OptionalDouble.of(22.5)), "by", List.of("ben"));
    Book book =
        Draft.of(book())
            .people(on("ana", DayOfWeek.MONDAY, DayOfWeek.THURSDAY), on("ben", DayOfWeek.WEDNESDAY))
            .pieces(Altered.of(piece("tile", "slab"), "route", List.of(sand, seal)))
            .book();
    Fault fault = only(book);
    assertEquals("$.pieces[0].route[1].after.atMostHours", fault.path());
    assertEquals("22.5 h, which no opening hours can meet for tile", fault.found());
    assertEquals(List.of(), faults(repaired(book)));
    Planned.of(repaired(book));
  }

  @Test
  void mostWaitsThatStandInTheWayTogetherAreAllNamedAndNoOthers() {
    Step atOnce = step(5, 0, OptionalDouble.of(8));
    Step nextDay = step(5, 9, OptionalDouble.of(10));
    Book book = piece(set(9, 12), "route", List.of(atOnce, nextDay));
    assertEquals(
        List.of("$.moulds[0].setAtMostHours", "$.pieces[0].route[1].after.atMostHours"),
        paths(book));
    assertEquals(List.of(), faults(repaired(book)));
    Planned.of(repaired(book));
  }

  @Test
  void ofTwoPiecesInOneMouldTheSuggestionIsEnoughForBoth() {
    // Grey takes 5 h to mix and so sets late in the day; white 6 h to wash up, and sets early.
    Piece grey = Altered.of(piece("tile", "slab"), "mix", "grey");
    Piece white = Altered.of(piece("white", "slab"), "mix", "white");
    for (List<Piece> pieces : List.of(List.of(grey, white), List.of(white, grey))) {
      Book book =
          Draft.of(set(9, 12))
              .mixes(
                  Altered.of(mix("grey"), "mixMinutes", 300),
                  Altered.of(mix("white"), "washMinutes", 360))
              .pieces(pieces.toArray(Piece[]::new))
              .book();
      Fault fault = only(book);
      assertEquals("$.moulds[0].setAtMostHours", fault.path());
      assertEquals(24, suggested(fault));
      assertEquals(List.of(), faults(repaired(book)));
    }
  }

  @Test
  void piecesAreTriedOrderedOrNotAndMouldsNamedByTheirOwnPlace() {
    Mould slow = Altered.of(mould("slow", "tray"), "setHours", 9.0);
    Book book =
        Draft.of(book())
            .moulds(mould("slab", "tray"), Altered.of(slow, "setAtMostHours", OptionalDouble.of(9)))
            .pieces(piece("tile", "slab"), piece("slow", "slow"))
            .book();
    assertEquals(List.of("$.moulds[1].setAtMostHours"), paths(book));
  }

  @Test
  void everythingIsToldAtOnce() {
    Mould heavy = Altered.of(mould("heavy", "tray"), "volumeMl", OptionalDouble.of(99_000));
    Mould slow = Altered.of(mould("slow", "tray"), "setHours", 9.0);
    Step tooSoon = step(5, 9, OptionalDouble.of(9));
    Book book =
        Draft.of(book())
            .moulds(heavy, Altered.of(slow, "setAtMostHours", OptionalDouble.of(9)))
            .pieces(
                piece("tile", "slow"),
                piece("block", "heavy"),
                Altered.of(piece("b", "heavy"), "route", List.of(tooSoon)))
            .book();
    assertEquals(
        List.of(
            "$.pieces[1].mould",
            "$.pieces[2].mould",
            "$.moulds[1].setAtMostHours",
            "$.pieces[2].route[0].after.atMostHours"),
        paths(book));
  }

  @Test
  void hoursThatDoNotComeAgainAreNamed() {
    SpecialDay once =
        new SpecialDay(LocalDate.parse("2027-04-06"), List.of(SampleBook.hours(9, 13)));
    Book book = BookWith.people(book(), new Person("ana", "Ana", Map.of(), List.of(once)));
    Fault fault = only(book);
    assertEquals("$.pieces[0].route", fault.path());
    assertEquals(
        "no opening hours in the coming year that are long enough for every task", fault.found());
  }

  @Test
  void aCureLongerThanAYearIsNoFault() {
    Step late =
        Altered.of(
            step(5, 0, OptionalDouble.empty()),
            "after",
            new After(WaitKind.CURE, 8760, OptionalDouble.empty()));
    Book book = piece(book(), "route", List.of(late, late, late));
    assertEquals(List.of(), faults(book));
    Book cold = BookWith.studio(book, SampleBook.studio());
    assertEquals(List.of(), faults(cold));
    Planned.of(cold);
  }

  @Test
  void moreThan64PeopleAreTooMany() {
    Person[] people = new Person[65];
    for (int i = 0; i < people.length; i++) {
      people[i] = weekdays("p" + i);
    }
    Fault fault = only(BookWith.people(book(), people));
    assertEquals("$.people", fault.path());
    assertEquals("65 people", fault.found());
    Person[] most = Arrays.copyOf(people, 64);
    Planned.of(BookWith.people(book(), most));
  }

  @Test
  @Tag("slow")
  void whatIsSuggestedWorksForAnyHoursAndWaits() {
    Random random = new Random(5);
    int refused = 0;
    for (int i = 0; i < 150; i++) {
      Book book = drawn(random);
      refused += faults(book).isEmpty() ? 0 : 1;
      Book repaired = repaired(book);
      assertEquals(List.of(), faults(repaired), book::toString);
      Planned.of(repaired, Studios.FROM, 3, 0);
    }
    assertTrue(refused > 30 && refused < 120, refused + " refused");
  }

  private static Book drawn(Random random) {
    double setHours = random.nextInt(60);
    Book book = BookWith.orders(set(setHours, setHours + random.nextInt(60)), order("A", 1, DUE));
    List<Step> route = new ArrayList<>();
    for (int i = random.nextInt(4); i > 0; i--) {
      double hours = random.nextInt(30);
      OptionalDouble atMost =
          random.nextBoolean()
              ? OptionalDouble.empty()
              : OptionalDouble.of(hours + random.nextInt(30));
      Step step = step(1 + random.nextInt(200), hours, atMost);
      route.add(random.nextInt(3) > 0 ? step : Altered.of(step, "by", List.of("ben")));
    }
    DayOfWeek[] days = DayOfWeek.values();
    Person ana =
        on("ana", days[random.nextInt(7)], days[random.nextInt(7)], days[random.nextInt(7)]);
    Person ben = on("ben", days[random.nextInt(7)]);
    Piece piece = Altered.of(piece("tile", "slab"), "route", route);
    return Draft.of(book).people(ana, ben).pieces(piece).book();
  }
}
