package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strickle.book.After;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.Draft;
import strickle.book.FormUse;
import strickle.book.Piece;
import strickle.book.RestsOn;
import strickle.book.SampleBook;
import strickle.book.Station;
import strickle.book.Step;
import strickle.book.WaitKind;
import strickle.shop.Activity;
import strickle.shop.Hold;
import strickle.shop.Wait;

class ChainsTest {

  private static final int TUB_A = 0;
  private static final int TUB_B = 1;
  private static final int SHELF = 2;
  private static final int RACK = 3;

  /** The sample with two people, two stations and three cavities to the mould. */
  private static Book book(Step... route) {
    Piece piece = Altered.of(SampleBook.planterSlate(), "route", List.of(route));
    return Draft.of(SampleBook.example())
        .people(Studios.weekdays("ben"), SampleBook.ana())
        .stations(new Station("shelf", "shelf", 99), SampleBook.rack())
        .moulds(Altered.of(SampleBook.planterDeep(), "cavities", 3))
        .pieces(piece)
        .book();
  }

  private static List<Activity> chain(Book book) {
    return new Chains(book).of(book.pieces().get(0));
  }

  private static Step step(WaitKind kind, double hours, OptionalDouble atMost) {
    Step step = Altered.of(SampleBook.sandTheRim(), "after", new After(kind, hours, atMost));
    return Altered.of(step, "restsOn", Optional.of(new RestsOn("rack", 2)));
  }

  @Test
  void thePourTakesItsPrepAndPourForEachCastingWithoutAPauseByAnybody() {
    Activity pour = chain(book()).get(0);
    assertEquals(0, pour.fixedMinutes());
    assertEquals(6 + 5, pour.eachMinutes());
    assertEquals(false, pour.pauses());
    assertEquals(List.of(0, 1), pour.workers());
    assertEquals(Wait.NONE, pour.before());
  }

  @Test
  void theFormsAreHeldFromThePourToTheEndOfTheDemould() {
    assertEquals(
        List.of(new Hold(TUB_A, 1, 1, Hold.Until.END), new Hold(TUB_B, 1, 1, Hold.Until.END)),
        chain(book()).get(0).holds());
  }

  @Test
  void aFormListedTwiceIsHeldOnceWithTheSum() {
    List<FormUse> forms =
        List.of(new FormUse("tub-b", 2), new FormUse("tub-a", 1), new FormUse("tub-b", 3));
    Book book =
        Draft.of(book()).moulds(Altered.of(SampleBook.planterDeep(), "forms", forms)).book();
    assertEquals(
        List.of(new Hold(TUB_A, 1, 1, Hold.Until.END), new Hold(TUB_B, 5, 1, Hold.Until.END)),
        chain(book).get(0).holds());
  }

  @Test
  void theDemouldWaitsOnTheRoomsClockAndItsMostWaitOnTheWall() {
    Activity demould = chain(book()).get(1);
    assertEquals(0, demould.fixedMinutes());
    assertEquals(8, demould.eachMinutes());
    assertEquals(true, demould.pauses());
    assertEquals(List.of(0, 1), demould.workers());
    assertEquals(new Wait(Chains.ROOM, 20, OptionalInt.of(120 * 60)), demould.before());
    assertEquals(List.of(), demould.holds());
  }

  @Test
  void aMouldWithoutAMostWaitHasNone() {
    Book book =
        Draft.of(book())
            .moulds(Altered.of(SampleBook.planterDeep(), "setAtMostHours", OptionalDouble.empty()))
            .book();
    assertEquals(OptionalInt.empty(), chain(book).get(1).before().atMostMinutes());
  }

  @Test
  void aStepTakesItsSetupOnceAndItsMinutesForEachPiece() {
    Activity sand = chain(book(SampleBook.sandTheRim())).get(2);
    assertEquals("wet sand the rim", sand.name());
    assertEquals(3, sand.fixedMinutes());
    assertEquals(5 * 3, sand.eachMinutes());
    assertEquals(true, sand.pauses());
  }

  @Test
  void aStepMayBeDoneByWhomItNamesAndElseByAnybody() {
    Step twice = Altered.of(SampleBook.sandTheRim(), "by", List.of("ana", "ana"));
    Step both = Altered.of(SampleBook.sandTheRim(), "by", List.of("ana", "ben"));
    List<Activity> chain = chain(book(SampleBook.sandTheRim(), twice, both));
    assertEquals(List.of(0, 1), chain.get(2).workers());
    assertEquals(List.of(1), chain.get(3).workers());
    assertEquals(List.of(1, 0), chain.get(4).workers());
  }

  @Test
  void aCureWaitsOnTheRoomsClockADryAndARestOnTheWall() {
    OptionalDouble none = OptionalDouble.empty();
    List<Activity> chain =
        chain(
            book(
                step(WaitKind.CURE, 120.5, OptionalDouble.of(200)),
                step(WaitKind.DRY, 4, none),
                step(WaitKind.REST, 0.25, OptionalDouble.of(0.25))));
    assertEquals(new Wait(Chains.ROOM, 120.5, OptionalInt.of(12000)), chain.get(2).before());
    assertEquals(new Wait(Chains.WALL, 4, OptionalInt.empty()), chain.get(3).before());
    assertEquals(new Wait(Chains.WALL, 0.25, OptionalInt.of(15)), chain.get(4).before());
  }

  @Test
  void aRestIsHeldUntilTheNextStepStartsAndAfterTheLastUntilReady() {
    OptionalDouble none = OptionalDouble.empty();
    Step onTheShelf =
        Altered.of(step(WaitKind.DRY, 0, none), "restsOn", Optional.of(new RestsOn("shelf", 1)));
    List<Activity> chain =
        chain(book(step(WaitKind.DRY, 0, none), SampleBook.sandTheRim(), onTheShelf));
    assertEquals(List.of(new Hold(RACK, 2 * 3, 3, Hold.Until.START)), chain.get(2).holds());
    assertEquals(List.of(), chain.get(3).holds());
    assertEquals(List.of(new Hold(SHELF, 3, 4, Hold.Until.DONE)), chain.get(4).holds());
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0, 0",
    "1, 60, 60",
    "0.1, 6, 6",
    // 20 minutes and a little more; 20 minutes and a little less
    "0.3334, 21, 20",
    "0.3333, 20, 19",
    // a third of an hour as a double is less than 20 minutes by rounding only
    "0.3333333333333333, 20, 20",
    "8760, 525600, 525600"
  })
  void hoursAreWholeMinutesThatAreEnoughOrNotTooMany(double hours, int atLeast, int atMost) {
    assertEquals(atLeast, Chains.minutesOfAtLeast(hours));
    assertEquals(OptionalInt.of(atMost), Chains.minutesOfAtMost(OptionalDouble.of(hours)));
  }
}
