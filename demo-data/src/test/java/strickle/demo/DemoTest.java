package strickle.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import strickle.book.Basis;
import strickle.book.Book;
import strickle.book.Climate;
import strickle.book.Dose;
import strickle.book.Feasible;
import strickle.book.FormUse;
import strickle.book.Mix;
import strickle.book.Mould;
import strickle.book.Order;
import strickle.book.Person;
import strickle.book.Piece;
import strickle.book.Station;
import strickle.book.Step;
import strickle.book.WaitKind;

class DemoTest {

  private final Book book = Demo.book(Size.MEDIUM);

  @ParameterizedTest
  @EnumSource(Size.class)
  void aSizeNeedsTheCastingsItPromisesWithinTenPercent(Size size) {
    assertEquals(size.castings(), Needed.castings(Demo.book(size)), size.castings() / 10.0);
  }

  @ParameterizedTest
  @EnumSource(Size.class)
  void nothingStandsAgainstPlanningAnySize(Size size) {
    assertEquals(List.of(), Feasible.faults(Demo.book(size)));
  }

  @Test
  void nothingStandsAgainstPlanningTheLateBook() {
    assertEquals(List.of(), Feasible.faults(Demo.lateBook()));
  }

  @Test
  void everyPieceGetsThroughFromAnyDayAndFitsOneLot() {
    LoneCastings.getThroughFromAnyDay(book, Demo.start());
    LoneCastings.fitTheBatchLimit(book);
  }

  @ParameterizedTest
  @EnumSource(Size.class)
  void noOrderIsDueBeforeALoneCastingOfEachOfItsPiecesCanBeReady(Size size) {
    Book sized = Demo.book(size);
    for (Order order : sized.orders()) {
      assertTrue(hoursToSpare(sized, order) > 0, order.id());
    }
  }

  @Test
  void theLateOrderIsDueBeforeALoneCastingCanBeReadyAndTheOthersAreNot() {
    Book late = Demo.lateBook();
    assertTrue(hoursToSpare(late, late.order("LATE-1")) < 0);
    assertTrue(hoursToSpare(late, late.order("LATE-2")) > 0);
    assertTrue(hoursToSpare(late, late.order("LATE-3")) > 0);
  }

  @Test
  void theWaitsOfTheLateOrdersRouteAloneAreLongerThanTheTimeToItsDueDate() {
    Book late = Demo.lateBook();
    Order order = late.order("LATE-1");
    Piece piece = late.piece(order.lines().getFirst().piece());
    double waits = piece.route().stream().mapToDouble(s -> s.after().hours()).sum();
    Instant due = order.due().atZone(late.studio().timeZone()).toInstant();
    long hours = Duration.between(Demo.start().toInstant(), due).toHours();
    assertTrue(waits + piece.finalDryHours() > hours);
    assertEquals(0, piece.onHand());
  }

  /** Hours between the earliest that one casting of the slowest piece can be ready, and due. */
  private static long hoursToSpare(Book book, Order order) {
    Instant due = order.due().atZone(book.studio().timeZone()).toInstant();
    LoneCasting casting = new LoneCasting(book, Demo.start());
    return order.lines().stream()
        .map(line -> casting.ready(book.piece(line.piece()), Demo.start().toInstant()))
        .mapToLong(ready -> Duration.between(ready, due).toHours())
        .min()
        .orElseThrow();
  }

  @Test
  void plansBeginAtMidnightOfTheFirstMondayOfMarch() {
    assertEquals("2027-03-01T00:00-04:00", Demo.start().toString());
    assertEquals(DayOfWeek.MONDAY, Demo.start().getDayOfWeek());
  }

  @ParameterizedTest
  @EnumSource(Size.class)
  void theClocksChangeBeforeTheLastOrderIsDue(Size size) {
    LocalDateTime last =
        Demo.book(size).orders().stream().map(Order::due).max(LocalDateTime::compareTo).get();
    var rules = book.studio().timeZone().getRules();
    assertNotEquals(Demo.start().getOffset(), rules.getOffset(last));
  }

  @Test
  void twoPeopleWorkEveningsAndSaturdaysWithExceptions() {
    assertEquals(2, book.people().size());
    int evening = LocalTime.of(18, 0).toSecondOfDay() / 60;
    for (Person person : book.people()) {
      assertTrue(person.hours().containsKey(DayOfWeek.SATURDAY), person.id());
      assertTrue(
          person.hours().values().stream()
              .flatMap(Collection::stream)
              .anyMatch(w -> w.startMinute() >= evening),
          person.id());
      assertFalse(person.exceptions().isEmpty(), person.id());
    }
  }

  @Test
  void theMiddleDrumIsTheCoreOfOneMouldAndTheOuterOfTheNext() {
    assertEquals(Set.of("drum-a", "drum-b"), formsOf(book.mould("lantern-tall")));
    assertEquals(Set.of("drum-b", "drum-c"), formsOf(book.mould("lantern-low")));
    assertEquals(1, book.form("drum-b").count());
  }

  private static Set<String> formsOf(Mould mould) {
    return mould.forms().stream().map(FormUse::form).collect(Collectors.toSet());
  }

  @Test
  void oneCoreFloatsInEveryMixItIsCastFrom() {
    List<Mould> floating = book.moulds().stream().filter(m -> m.core().isPresent()).toList();
    assertEquals(1, floating.size());
    var core = floating.getFirst().core().get();
    double lightestMix = 1.9; // g/ml, below every mix here
    assertTrue(core.displacedMl() * lightestMix > core.massGrams());
  }

  @Test
  void threeMixesTakePigmentOfDryOfCementAndNone() {
    assertEquals(3, book.mixes().size());
    assertEquals(Set.of(Basis.DRY, Basis.CEMENT), pigmentBases());
    assertEquals(1, book.mixes().stream().filter(m -> m.pigment().isEmpty()).count());
    assertEquals(1, book.mixes().stream().filter(m -> m.wetDensityKgPerM3().isPresent()).count());
  }

  private Set<Basis> pigmentBases() {
    return book.mixes().stream()
        .map(Mix::pigment)
        .flatMap(Collection::stream)
        .map(Dose::of)
        .collect(Collectors.toSet());
  }

  @Test
  void everyKindOfWaitSomeMostWaitsAndSomeLimitsOfWhoMayAreThere() {
    assertEquals(
        EnumSet.allOf(WaitKind.class),
        steps().map(s -> s.after().kind()).collect(Collectors.toSet()));
    assertTrue(steps().anyMatch(s -> s.after().atMostHours().isPresent()));
    assertTrue(book.moulds().stream().anyMatch(m -> m.setAtMostHours().isPresent()));
    assertEquals(
        Set.of(List.of(), List.of("maren"), List.of("tobias")),
        steps().map(Step::by).collect(Collectors.toSet()));
  }

  private Stream<Step> steps() {
    return book.pieces().stream().map(Piece::route).flatMap(Collection::stream);
  }

  @Test
  void piecesRestOnTheRackAndOnTheShelf() {
    Set<String> used =
        steps()
            .flatMap(s -> s.restsOn().stream())
            .map(r -> r.station())
            .collect(Collectors.toSet());
    assertEquals(Set.of("rack", "curing-shelf"), used);
    assertEquals(used, book.stations().stream().map(Station::id).collect(Collectors.toSet()));
  }

  @Test
  void theRoomHasSeveralWeeksOfClimateWithAColdSpell() {
    List<Climate> climate = book.studio().climate();
    assertTrue(climate.getFirst().from().plusWeeks(4).isBefore(climate.getLast().from()));
    double coldest = climate.stream().mapToDouble(Climate::temperatureC).min().orElseThrow();
    assertTrue(coldest < 10);
    assertTrue(climate.getFirst().temperatureC() > coldest + 5);
    assertTrue(climate.getLast().temperatureC() > coldest + 5);
  }

  @Test
  void someMouldsGiveSeveralPiecesSomePiecesFailAndSomeStandOnTheShelf() {
    assertTrue(book.moulds().stream().anyMatch(m -> m.cavities() > 1));
    assertTrue(book.pieces().stream().anyMatch(p -> p.goodPercent() < 100));
    assertTrue(book.pieces().stream().anyMatch(p -> p.onHand() > 0));
  }

  @ParameterizedTest
  @EnumSource(Size.class)
  void thereAreCustomOrdersAndStockForAFair(Size size) {
    List<Order> orders = Demo.book(size).orders();
    assertTrue(orders.stream().anyMatch(o -> o.kind().equals("custom")));
    assertTrue(orders.stream().anyMatch(o -> o.kind().equals("fair")));
    assertEquals(2, book.fairs().size());
  }

  @Test
  void theyCanSellAtTheirTableByCardAndAtHalfPriceOnAShelf() {
    assertEquals(0, book.channel("own-table").percentFee().signum());
    assertTrue(book.channel("card").percentFee().signum() > 0);
    assertEquals(50, book.channel("shop-shelf").discountPercent().intValueExact());
  }

  @Test
  void theSameSizeGivesTheSameBook() {
    assertEquals(book, Demo.book(Size.MEDIUM));
  }
}
