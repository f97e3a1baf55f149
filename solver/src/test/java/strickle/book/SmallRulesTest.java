package strickle.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The rules of the smaller records that are more than the bounds of one number. */
class SmallRulesTest {

  @ParameterizedTest
  @CsvSource({"6, 5, 11, .likely", "2, 12, 11, .high", "2, 1, 11, .likely", "2, 5, 4, .high"})
  void demandRisesFromLowToLikelyToHigh(int low, int likely, int high, String path) {
    assertEquals(
        path, Faults.only(() -> new Demand("a", low, likely, high, Optional.empty())).path());
  }

  @ParameterizedTest
  @CsvSource({"-1, 5, 11, .low", "2, 5, 100001, .high"})
  void demandIsCountedFromZeroToAHundredThousand(int low, int likely, int high, String path) {
    assertEquals(
        path, Faults.only(() -> new Demand("a", low, likely, high, Optional.empty())).path());
  }

  @Test
  void demandMayBeCertain() {
    assertEquals(0, new Demand("a", 0, 0, 0, Optional.empty()).high());
    assertEquals(100_000, new Demand("a", 100_000, 100_000, 100_000, Optional.empty()).low());
  }

  @Test
  void aStepOfNoMinutesIsLeftOut() {
    Step onlySetup = Altered.of(SampleBook.sandTheRim(), "minutesEach", 0);

    assertEquals(
        new Fault(
            ".minutesEach",
            "a step of no minutes",
            "at least 1 minute in setupMinutes or minutesEach, or leave the step out"),
        Faults.only(() -> Altered.of(onlySetup, "setupMinutes", 0)));
    assertEquals(1, Altered.of(onlySetup, "setupMinutes", 1).setupMinutes());
  }

  @Test
  void whoMayDoAStepIsNamedById() {
    assertEquals(
        List.of(".by[1]"),
        Faults.paths(() -> Altered.of(SampleBook.firstSealCoat(), "by", List.of("ana", " bo"))));
  }

  @Test
  void aWaitIsNoLongerAtMostThanAtLeast() {
    assertEquals(
        new Fault(".atMostHours", "3.5", "a number from 4 to 8760"),
        Faults.only(() -> new After(WaitKind.DRY, 4, OptionalDouble.of(3.5))));
  }

  @Test
  void aFaultyLeastWaitIsToldOnce() {
    assertEquals(
        List.of(".hours"),
        Faults.paths(() -> new After(WaitKind.DRY, Double.NaN, OptionalDouble.of(3))));
    assertEquals(
        List.of(".hours"), Faults.paths(() -> new After(WaitKind.DRY, 9000, OptionalDouble.of(3))));
  }

  @Test
  void waterIsNoMaterialOfTheBooks() {
    Fault fault = Faults.only(() -> Altered.of(SampleBook.whiteBlend(), "id", "water"));

    assertEquals(new Fault(".id", "\"water\"", "another id: water is in every mix already"), fault);
    assertEquals("rain-water", Altered.of(SampleBook.whiteBlend(), "id", "rain-water").id());
  }

  @ParameterizedTest
  @ValueSource(strings = {"demould", "Pour", "pour ", ""})
  void onlyAPourCanBePinned(String kind) {
    assertEquals(
        new Fault(".kind", Show.text(kind), "\"pour\""),
        Faults.only(() -> Altered.of(AllRecords.PIN, "kind", kind)));
  }

  @Test
  void theClimateGoesForwardInTime() {
    Climate monday = AllRecords.CLIMATE;
    Climate tuesday = Altered.of(monday, "from", monday.from().plusDays(1));

    assertEquals(
        new Fault(
            ".climate[1].from",
            "2027-04-05T00:00",
            "a time after that of the entry before, 2027-04-06T00:00"),
        Faults.only(() -> Altered.of(SampleBook.studio(), "climate", List.of(tuesday, monday))));
    assertEquals(
        List.of(".climate[1].from", ".climate[2].from"),
        Faults.paths(
            () -> Altered.of(SampleBook.studio(), "climate", List.of(monday, monday, monday))));
    assertEquals(
        2, Altered.of(SampleBook.studio(), "climate", List.of(monday, tuesday)).climate().size());
  }

  @Test
  void anOrderHasALine() {
    assertEquals(
        new Fault(".lines", "an empty list", "at least one line"),
        Faults.only(() -> Altered.of(SampleBook.gardenShop(), "lines", List.of())));
  }

  @Test
  void anOrderMayNameThePieceTwiceAndNoBuyer() {
    Order order = SampleBook.gardenShop();
    Line line = order.lines().get(0);

    assertEquals(2, Altered.of(order, "lines", List.of(line, line)).lines().size());
    assertEquals("", Altered.of(order, "buyer", "").buyer());
    assertEquals(".for", Faults.only(() -> Altered.of(order, "buyer", "b".repeat(201))).path());
    assertEquals(".kind", Faults.only(() -> Altered.of(order, "kind", "a\nb")).path());
  }

  @Test
  void aFairExpectsDemandForAPieceOnce() {
    Fault fault =
        Faults.only(
            () ->
                Altered.of(
                    SampleBook.springFair(),
                    "demand",
                    List.of(AllRecords.DEMAND, AllRecords.DEMAND)));

    assertEquals(
        new Fault(
            ".demand[1].piece",
            "\"planter-slate\"",
            "one that is not in this list already, at [0]"),
        fault);
  }

  @Test
  void allFaultsOfAPieceAreToldAtOnce() {
    assertEquals(
        List.of(
            ".id",
            ".name",
            ".mould",
            ".mix",
            ".goodPercent",
            ".onHand",
            ".typicalRun",
            ".route[0]",
            ".finalDryHours",
            ".packing",
            ".price",
            ".leftoverValue"),
        Faults.paths(
            () ->
                new Piece(
                    "",
                    " ",
                    null,
                    "a/b",
                    0,
                    -1,
                    0,
                    Collections.singletonList(null),
                    -1,
                    null,
                    Optional.of(SampleBook.decimal("-1")),
                    null)));
  }

  @Test
  void faultsArePutUnderThePathOfWhateverHoldsTheRecord() {
    Fault fault = Faults.only(() -> Altered.of(SampleBook.planterDeep(), "cavities", 0));

    assertEquals(
        "$.moulds[0].cavities: found 0; right would be a whole number from 1 to 1000",
        fault.under("$.moulds[0]").toString());
  }

  @Test
  void theMessageHoldsEveryFault() {
    Faulty faulty =
        assertThrows(
            Faulty.class,
            () -> new Climate(LocalDateTime.MAX, 1000, OptionalDouble.of(Double.NaN)));

    assertEquals(3, faulty.getMessage().lines().count());
    assertTrue(
        faulty
            .getMessage()
            .endsWith(
                ".humidityPercent: found not a number; right would be a number from 0 to 100"));
    assertThrows(UnsupportedOperationException.class, () -> faulty.faults().clear());
  }
}
