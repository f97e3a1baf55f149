package strickle.price;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.SampleBook;
import strickle.price.Target.LargeLine;

/** Targets of the example planter; its costs are those of the formats page. */
class TargetCheckTest {

  private static TargetRequest request(String price, String channel, String margin) {
    return new TargetRequest(
        "planter-slate",
        channel,
        new BigDecimal(price),
        new BigDecimal(margin),
        Optional.of(new BigDecimal("389")));
  }

  private static Target target(String price, String channel, String margin) {
    return TargetCheck.of(SampleBook.example(), request(price, channel, margin), Optional.empty());
  }

  private static void assertAmount(String expected, BigDecimal actual) {
    assertEquals(new BigDecimal(expected), actual);
  }

  // 38 x 0.971 - 0.30 = 36.598; less 40 % of 38 = 15.20: may cost 21.398; costs 29.180080.
  @Test
  void aTargetThatDoesNotHoldSaysByHowMuch() {
    Target target = target("38", "own-table", "40");

    assertFalse(target.holds());
    assertAmount("36.5980", target.net());
    assertAmount("7.4179", target.profit());
    assertAmount("21.3980", target.mostCost());
    assertAmount("-7.7821", target.gap());
    assertAmount("19.5208", target.marginPercent());
  }

  @Test
  void aTargetThatHoldsSaysHowMuchRoomThereIs() {
    Target target = target("64", "own-table", "30");

    assertTrue(target.holds());
    // 61.844 - 19.2 - 29.180080
    assertAmount("13.4639", target.gap());
  }

  @Test
  void theThreeLargestLinesComeWithTheirShareOfTheCost() {
    List<LargeLine> largest = target("38", "own-table", "40").largest();

    assertEquals(
        List.of("labour", "overhead", "white blend"),
        largest.stream().map(LargeLine::what).toList());
    // 19.329710 / 29.180080
    assertAmount("66.2428", largest.getFirst().sharePercent());
  }

  private static Lever lever(Target target, LeverKind kind) {
    return target.levers().stream().filter(one -> one.kind() == kind).findFirst().orElseThrow();
  }

  // (21.398 - 5.767295 - 0.192029) / 0.440476 = 35.04997, rounded down
  @Test
  void theMinutesMayTakeWhatMaterialAndWearLeave() {
    Lever minutes = lever(target("38", "own-table", "40"), LeverKind.MINUTES);

    assertAmount("52.7174", minutes.present());
    assertAmount("35.0499", minutes.closing().orElseThrow());
  }

  @Test
  void aLeverThatCannotSaysWhatItWouldComeTo() {
    Target target = target("38", "own-table", "40");
    Lever good = lever(target, LeverKind.GOOD_SHARE);

    assertTrue(good.closing().isEmpty());
    assertAmount("100", good.limit().orElseThrow());
    // packing 0.84; (29.180080 - 0.84) x 0.92 + 0.84 = 26.912874; (36.598 - that) / 38
    assertAmount("25.4872", good.marginAtLimitPercent().orElseThrow());
    // A lot of three takes 7483 g of the 9000 g that can be mixed, a fourth is too much.
    assertAmount("3", lever(target, LeverKind.RUN_SIZE).limit().orElseThrow());
  }

  @Test
  void theMixMayCostMoreByTheKilogramUntilTheMarginJustHolds() {
    Lever mix = lever(target("64", "own-table", "30"), LeverKind.MIX_COST);

    // 1937.3 g of white blend at 31 / 22700 and 58.1 g of black at 15 / 1000 in 2494.3 g of mix
    assertEquals(1.41, mix.present().doubleValue(), 0.005);
    // 13.4639 more over 2.4943 kg / 0.92
    BigDecimal more = mix.closing().orElseThrow().subtract(mix.present());
    assertEquals(13.4639 / (2.4943 / 0.92), more.doubleValue(), 0.001);
    assertEquals("USD/kg", mix.unit());
  }

  @Test
  void aShopsShareIsALeverOnlyWhereThereIsOne() {
    // 1 - 29.180080 / (64 x 0.6) = 24.0102 %
    Lever share = lever(target("64", "shop-shelf", "40"), LeverKind.SHOP_SHARE);
    assertAmount("24.0102", share.closing().orElseThrow());
    assertTrue(
        target("64", "own-table", "40").levers().stream()
            .noneMatch(lever -> lever.kind() == LeverKind.SHOP_SHARE));
  }

  @Test
  void aLargerRunThanThereAreFormsForSaysWhatItTakes() {
    // One casting by itself costs 37.08; the margin at 43 is then 12.7 %, with two 28.4 %.
    Lever runs = lever(target("43", "own-table", "25"), LeverKind.RUN_SIZE);

    assertAmount("2", runs.closing().orElseThrow());
    assertEquals(
        "takes 2 of deep tub, there is 1; 2 of mid tub, there is 1", runs.note().orElseThrow());
  }

  @Test
  void twoLeversTogetherCoverEveryRunSizeThatALotTakes() {
    LeverTable table = target("38", "own-table", "40").table();

    assertEquals(List.of(1, 2, 3), table.rows().stream().map(LeverTable.Row::castings).toList());
    assertEquals(List.of(0, 10, 20, 30, 40, 50), table.minutesLessPercent());
    LeverTable.Cell now = table.rows().get(1).cells().getFirst();
    assertEquals(
        new LeverTable.Cell(new BigDecimal("52.7174"), new BigDecimal("19.5208"), false), now);
    // 40 % less: 31.6304 minutes, under the 35.0499 that close the gap.
    assertTrue(table.rows().get(1).cells().get(4).holds());
    assertFalse(table.rows().get(1).cells().get(3).holds());
  }

  // Common practice, no source: a maker held 20.75 of cost against a bought piece, 7.5 % of it.
  @ParameterizedTest
  @CsvSource({"276.67,7.5", "275,7.5", "278,7.5"})
  void aPieceIsHeldAgainstWhatIsBought(String bought, String percent) {
    ReferencePrice ratio =
        ReferencePrice.of(new BigDecimal(bought), new BigDecimal("20.75"), new BigDecimal("38"));

    assertEquals(Double.parseDouble(percent), ratio.costPercent().doubleValue(), 0.05);
  }

  @Test
  void theReferencePriceIsHeldAgainstCostAndPrice() {
    ReferencePrice reference = target("38", "own-table", "40").reference().orElseThrow();
    // 29.180080 and 38 of 389
    assertAmount("7.5013", reference.costPercent());
    assertAmount("9.7686", reference.pricePercent());
  }

  private static List<String> paths(Faulty faulty) {
    return faulty.faults().stream().map(Fault::path).toList();
  }

  @ParameterizedTest
  @CsvSource({"0,40,.price", "-1,40,.price", "38,100,.marginPercent", "38,-1,.marginPercent"})
  void absurdTargetsAreRefusedByTheirField(String price, String margin, String path) {
    Faulty faulty = assertThrows(Faulty.class, () -> request(price, "own-table", margin));

    assertEquals(List.of(path), paths(faulty));
  }

  @Test
  void aReferencePriceOfNothingIsRefused() {
    Optional<BigDecimal> nothing = Optional.of(BigDecimal.ZERO);
    BigDecimal ten = BigDecimal.TEN;
    Faulty faulty =
        assertThrows(Faulty.class, () -> new TargetRequest("p", "c", ten, ten, nothing));

    assertEquals(List.of(".referencePrice"), paths(faulty));
  }

  @Test
  void whatTheBookDoesNotHaveIsRefusedWithTheNearestThereIs() {
    TargetRequest wrong =
        new TargetRequest(
            "planter-slat", "own-tabel", new BigDecimal("3.999"), BigDecimal.TEN, Optional.empty());
    Faulty faulty =
        assertThrows(
            Faulty.class, () -> TargetCheck.of(SampleBook.example(), wrong, Optional.empty()));

    assertEquals(List.of(".piece", ".channel", ".price"), paths(faulty));
    assertEquals("maybe \"planter-slate\"", faulty.faults().getFirst().right());
  }

  @Test
  void aFeeThatLeavesNoRoomForTheMarginIsRefused() {
    TargetRequest request = request("38", "own-table", "97.1");
    Faulty faulty =
        assertThrows(
            Faulty.class, () -> TargetCheck.of(SampleBook.example(), request, Optional.empty()));

    assertEquals(List.of(".marginPercent"), paths(faulty));
  }

  // A book refuses them already: nothing is left to sell, or nothing is ever good.
  @Test
  void aFeeOfEverythingAndAGoodShareOfNothingAreRefusedByTheBook() {
    BigDecimal all = BigDecimal.valueOf(100);
    assertEquals(
        List.of(".percentFee"),
        paths(
            assertThrows(
                Faulty.class, () -> Altered.of(SampleBook.ownTable(), "percentFee", all))));
    assertEquals(
        List.of(".goodPercent"),
        paths(
            assertThrows(
                Faulty.class, () -> Altered.of(SampleBook.planterSlate(), "goodPercent", 0.0))));
  }

  @Test
  void minutesThatCostNothingMakeNoDifference() {
    Book book =
        BookWith.studio(
            SampleBook.example(),
            Altered.of(
                Altered.of(SampleBook.studio(), "wagePerHour", BigDecimal.ZERO),
                "overheadPerMonth",
                BigDecimal.ZERO));
    Target target = TargetCheck.of(book, request("38", "own-table", "40"), Optional.empty());

    assertTrue(target.holds());
    Lever minutes = lever(target, LeverKind.MINUTES);
    assertTrue(minutes.closing().isEmpty());
    assertEquals("minutes cost nothing", minutes.note().orElseThrow());
  }
}
