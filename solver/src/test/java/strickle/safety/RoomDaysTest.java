package strickle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import strickle.book.Book;
import strickle.book.Climate;
import strickle.book.Draft;
import strickle.book.SampleBook;
import strickle.book.Studio;
import strickle.cure.CoatingAir;
import strickle.cure.DewPoint;
import strickle.cure.Evaporation;
import strickle.plan.Effort;
import strickle.plan.Plan;
import strickle.plan.PlanRequest;
import strickle.plan.Planning;

class RoomDaysTest {

  private static final OffsetDateTime FROM = OffsetDateTime.parse("2027-04-05T00:00-05:00");

  @Test
  void everyClimateOfTheBookIsLookedAt() {
    List<RoomDay> days =
        RoomDays.of(
            book(climate("2027-04-05T00:00", 22, 45), climate("2027-04-08T12:00", 12, 90)),
            RoomAssumption.usual());
    assertEquals(2, days.size());
    assertFalse(days.get(0).dampensCoats());
    assertTrue(days.get(1).dampensCoats());
    assertEquals(LocalDateTime.parse("2027-04-08T12:00"), days.get(1).from());
  }

  @Test
  void windAndAWarmMixAreTheOnesAssumed() {
    // Computed from Uno's formula: mix 24 °C, air 22 °C, 45 %, 10 km/h gives .481.
    RoomAssumption fan = new RoomAssumption(10, OptionalDouble.of(24), OptionalDouble.empty());
    RoomDay day = RoomDays.of(book(climate("2027-04-05T00:00", 22, 45)), fan).get(0);
    assertEquals(.481, day.evaporation().orElseThrow().kgPerM2Hour(), 6e-4);
    assertEquals(Evaporation.Level.NEAR, day.evaporation().orElseThrow().level());
    assertTrue(day.driesPours());
  }

  @Test
  void aPieceKeepsTheColdOfTheRoomForHalfADay() {
    List<RoomDay> days =
        RoomDays.of(
            book(climate("2027-04-05T00:00", 8, 50), climate("2027-04-08T12:00", 18, 60)),
            RoomAssumption.usual());
    CoatingAir air = days.get(1).air().orElseThrow();
    assertEquals(8, air.surfaceC());
    assertEquals(DewPoint.c(18, 60), air.dewPointC());
    assertFalse(air.isWarmEnough());
  }

  @Test
  void aMeasuredSurfaceGoesBeforeTheAssumedOne() {
    RoomAssumption measured = new RoomAssumption(0, OptionalDouble.empty(), OptionalDouble.of(15));
    RoomDay day = RoomDays.of(book(climate("2027-04-05T00:00", 20, 50)), measured).get(0);
    assertEquals(15 - DewPoint.c(20, 50), day.air().orElseThrow().marginC(), 1e-12);
  }

  @Test
  void withoutAHumidityNothingIsSaid() {
    Climate unknown =
        new Climate(LocalDateTime.parse("2027-04-05T00:00"), 20, OptionalDouble.empty());
    RoomDay day = RoomDays.of(book(unknown), RoomAssumption.usual()).get(0);
    assertTrue(day.isUnknown());
    assertFalse(day.driesPours() || day.dampensCoats());
  }

  @Test
  void inFrostTheEvaporationIsUnknownAndTheDewPointIsNot() {
    RoomDay day =
        RoomDays.of(book(climate("2027-04-05T00:00", -5, 0)), RoomAssumption.usual()).get(0);
    assertTrue(day.evaporation().isEmpty());
    assertTrue(day.air().isPresent());
  }

  @Test
  void aPlanIsLookedAtOnTheDaysItPoursOrCoats() {
    Plan plan = plan(SampleBook.example());
    List<RoomDay> days = RoomDays.of(SampleBook.example(), plan, RoomAssumption.usual());
    long pourDays =
        plan.tasks().stream()
            .filter(task -> task.run().isEmpty())
            .map(task -> task.start().toLocalDate())
            .distinct()
            .count();
    assertEquals(pourDays, days.stream().filter(RoomDay::pours).count());
    assertTrue(days.stream().anyMatch(RoomDay::coats));
    assertTrue(days.stream().allMatch(day -> day.pours() || day.coats()));
  }

  @Test
  void aDayOnWhichTheRoomChangesUnderATaskStandsThereTwice() {
    Plan plan = plan(SampleBook.example());
    OffsetDateTime pour =
        plan.tasks().stream()
            .filter(task -> task.run().isEmpty())
            .findFirst()
            .orElseThrow()
            .start();
    Book changing =
        book(
            climate("2027-04-05T00:00", 18, 55),
            climate(pour.toLocalDateTime().plusMinutes(5).toString(), 19, 55));
    List<RoomDay> days = RoomDays.of(changing, plan, RoomAssumption.usual());
    assertEquals(
        2,
        days.stream()
            .filter(day -> day.from().toLocalDate().equals(pour.toLocalDate()))
            .filter(RoomDay::pours)
            .count());
  }

  @Test
  void daysBeforeTheFirstClimateAreNamedAndNotJudged() {
    Plan plan = plan(SampleBook.example());
    LocalDate first = plan.tasks().get(0).start().toLocalDate();
    assertEquals(List.of(), RoomDays.unknown(book(climate("2027-04-05T00:00", 18, 55)), plan));
    Book late = book(climate(first.plusDays(1) + "T00:00", 18, 55));
    assertEquals(List.of(first), RoomDays.unknown(late, plan));
    assertTrue(
        RoomDays.of(late, plan, RoomAssumption.usual()).stream()
            .allMatch(day -> day.from().toLocalDate().isAfter(first)));
  }

  @Test
  void theSameAirGivesTheSameEvaporationAsTheFormula() {
    // Computed from Uno's formula, ACI Materials Journal 95-M34 as quoted: 1.1517.
    RoomAssumption wind = new RoomAssumption(19, OptionalDouble.of(31), OptionalDouble.empty());
    RoomDay day = RoomDays.of(book(climate("2027-04-05T00:00", 27, 50)), wind).get(0);
    assertEquals(1.1517, day.evaporation().orElseThrow().kgPerM2Hour(), 1e-4);
  }

  @Test
  void whatNoStudioHasIsRefused() {
    OptionalDouble none = OptionalDouble.empty();
    assertThrows(IllegalArgumentException.class, () -> new RoomAssumption(-1, none, none));
    assertThrows(
        IllegalArgumentException.class, () -> new RoomAssumption(0, OptionalDouble.of(61), none));
    assertThrows(
        IllegalArgumentException.class,
        () -> new RoomAssumption(0, none, OptionalDouble.of(Double.NaN)));
  }

  private static Plan plan(Book book) {
    PlanRequest request = new PlanRequest(FROM, Effort.ofSchedules(1), 0);
    return Planning.of(book, request, progress -> {}).run();
  }

  private static Climate climate(String from, double c, double humidity) {
    return new Climate(LocalDateTime.parse(from), c, OptionalDouble.of(humidity));
  }

  private static Book book(Climate... climate) {
    Studio s = SampleBook.studio();
    Studio studio =
        new Studio(
            s.name(),
            s.currency(),
            s.timeZone(),
            s.wagePerHour(),
            s.overheadPerMonth(),
            s.productiveHoursPerMonth(),
            s.batchLimitGrams(),
            List.of(climate));
    return Draft.of(SampleBook.example()).studio(studio).book();
  }
}
