package strickle.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TimeZone;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strickle.book.Book;
import strickle.book.Faulty;
import strickle.book.Feasible;
import strickle.book.Mould;
import strickle.book.Order;
import strickle.book.Piece;
import strickle.book.Step;

class GeneratorTest {

  @Test
  void booksOfOneCastingTo300AreValidPlannableAndOfTheSizeAskedFor() {
    for (int castings = 1; castings <= 300; castings++) {
      for (long seed : List.of(0L, 1L, 1000L + castings, -castings * 7919L)) {
        Book book = Generator.book(castings, seed);
        assertEquals(List.of(), Feasible.faults(book), book.studio().name());
        assertEquals(castings, Needed.castings(book), book.studio().name());
      }
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {500, 999, 2000})
  void largeBooksAreTooAndHaveTwelveMouldsAtMost(int castings) {
    for (long seed = 0; seed < 3; seed++) {
      Book book = Generator.book(castings, seed);
      assertEquals(List.of(), Feasible.faults(book), book.studio().name());
      assertEquals(castings, Needed.castings(book), book.studio().name());
      assertTrue(book.moulds().size() <= 12);
      assertTrue(book.people().size() >= 2);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0, -1, 2001})
  void castingsOutOfRangeAreRefusedWithTheRange(int castings) {
    Faulty refused = assertThrows(Faulty.class, () -> Generator.book(castings, 0));
    assertEquals("a whole number from 1 to 2000", refused.faults().getFirst().right());
  }

  @Test
  void everyPieceGetsThroughFromAnyDayAndFitsOneLot() {
    for (long seed = 0; seed < 40; seed++) {
      Book book = Generator.book(3 + (int) seed * 2, seed);
      LoneCastings.getThroughFromAnyDay(book, Generator.start(book));
      LoneCastings.fitTheBatchLimit(book);
    }
  }

  @Test
  void theSameCastingsAndSeedGiveTheSameBookWhateverTheMachinesZoneAndLanguage() {
    Book here = Generator.book(60, 5);
    TimeZone zone = TimeZone.getDefault();
    Locale locale = Locale.getDefault();
    try {
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertEquals(here, Generator.book(60, 5));
    } finally {
      TimeZone.setDefault(zone);
      Locale.setDefault(locale);
    }
  }

  @Test
  void anotherSeedGivesAnotherBook() {
    assertNotEquals(Generator.book(60, 5), Generator.book(60, 6));
  }

  @Test
  void theStartIsTheSameMondayMidnightWhereverTheStudioIs() {
    Book book = Generator.book(10, 3);
    assertEquals("2027-03-01T00:00", Generator.start(book).toLocalDateTime().toString());
    assertEquals(
        book.studio().timeZone().getRules().getOffset(Generator.start(book).toInstant()),
        Generator.start(book).getOffset());
  }

  @Test
  void theClocksOfEveryStudioChangeWithinSixWeeks() {
    for (Book book : sample()) {
      var rules = book.studio().timeZone().getRules();
      var start = Generator.start(book);
      assertNotEquals(
          rules.getOffset(start.toInstant()), rules.getOffset(start.plusWeeks(6).toInstant()));
    }
  }

  @Test
  void peopleMixesRoutesAndCavitiesVaryOverTheirWholeRange() {
    assertEquals(range(1, 3), all(b -> Stream.of(b.people().size())));
    assertEquals(range(1, 5), all(b -> Stream.of(b.mixes().size())));
    assertEquals(range(0, 2), all(b -> Stream.of(b.stations().size())));
    assertEquals(range(0, 6), all(b -> b.pieces().stream().map(p -> p.route().size())));
    assertEquals(Set.of(1, 2, 3, 4, 6), all(b -> b.moulds().stream().map(Mould::cavities)));
    assertEquals(Set.of("custom", "fair"), all(b -> b.orders().stream().map(Order::kind)));
    assertTrue(all(b -> Stream.of(b.studio().timeZone())).size() >= 5);
  }

  @Test
  void mouldsGrowSlowlyWithTheCastings() {
    assertTrue(Generator.book(1, 0).moulds().size() <= 2);
    double few = moulds(8);
    double more = moulds(64);
    double many = moulds(512);
    assertTrue(few < more && more < many && many < 12.5, few + " " + more + " " + many);
  }

  private static double moulds(int castings) {
    return LongStream.range(0, 20)
        .mapToInt(seed -> Generator.book(castings, seed).moulds().size())
        .average()
        .orElseThrow();
  }

  @Test
  void formsAreSharedNestedAndNeededInPairs() {
    assertEquals(Set.of(1, 2), all(b -> b.moulds().stream().map(m -> m.forms().size())));
    assertTrue(all(b -> b.moulds().stream().map(m -> m.forms().getFirst().count())).contains(2));
    assertTrue(sample().stream().anyMatch(GeneratorTest::hasACoreThatIsAnOuterToo));
    assertTrue(sample().stream().anyMatch(b -> usersOf("board", b) >= 2));
  }

  private static boolean hasACoreThatIsAnOuterToo(Book book) {
    return book.moulds().stream()
        .map(m -> m.forms().getLast().form())
        .anyMatch(f -> f.startsWith("core-") && usersOf(f, book) == 2);
  }

  private static long usersOf(String form, Book book) {
    return book.moulds().stream()
        .filter(m -> m.forms().stream().anyMatch(use -> use.form().equals(form)))
        .count();
  }

  @Test
  void lotsOfOneCastingToSixCanBePoured() {
    assertEquals(
        range(1, 6),
        all(
            b ->
                b.pieces().stream()
                    .map(p -> b.mix(p.mix()).workingMinutes() / pourMinutes(b, p))
                    .map(most -> Math.min(6, most))));
  }

  private static int pourMinutes(Book book, Piece piece) {
    return book.mould(piece.mould()).pourMinutes();
  }

  @Test
  void mostWaitsAndLimitsOfWhoMayComeNowAndThen() {
    double steps = count(s -> true);
    assertEquals(0.25, count(s -> s.after().atMostHours().isPresent()) / steps, 0.1);
    assertEquals(0.15, count(s -> !s.by().isEmpty()) / steps, 0.1);
    assertEquals(0.25, count(s -> s.restsOn().isPresent()) / steps, 0.12);
  }

  private static long count(Predicate<Step> wanted) {
    return sample().stream()
        .map(Book::pieces)
        .flatMap(Collection::stream)
        .map(Piece::route)
        .flatMap(Collection::stream)
        .filter(wanted)
        .count();
  }

  @Test
  void noOrderIsDueBeforeTheStart() {
    for (Book book : sample()) {
      for (Order order : book.orders()) {
        assertTrue(
            order.due().isAfter(Generator.start(book).toLocalDateTime()),
            book.studio().name() + " " + order.id());
      }
    }
  }

  private static List<Book> sample() {
    return IntStream.range(0, 60).mapToObj(i -> Generator.book(2 + i * 3, i)).toList();
  }

  private static <T> Set<T> all(Function<Book, Stream<T>> of) {
    return sample().stream().flatMap(of).collect(Collectors.toSet());
  }

  private static Set<Integer> range(int lowest, int highest) {
    return IntStream.rangeClosed(lowest, highest).boxed().collect(Collectors.toSet());
  }
}
