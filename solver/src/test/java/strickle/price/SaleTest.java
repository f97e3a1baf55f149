package strickle.price;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strickle.book.Channel;

/** Selling, held against published and derived figures on cost, markup, margin and keystone. */
class SaleTest {

  private static final Sale NOTHING_TAKEN = sale("0", "0", "0");
  private static final Sale HALF_TAKEN = sale("0", "0", "50");

  private static Sale sale(String percentFee, String fixedFee, String discountPercent) {
    return new Sale(
        new Channel(
            "c",
            "a channel",
            new BigDecimal(percentFee),
            new BigDecimal(fixedFee),
            new BigDecimal(discountPercent)));
  }

  /** A piece of an hour that costs nothing but material. */
  private static UnitCost cost(String material) {
    ExactLine line = new ExactLine("m", CostKind.MATERIAL, new BigDecimal(material));
    return new UnitCost(new BigDecimal(60), List.of(line));
  }

  private static void assertClose(String expected, BigDecimal actual) {
    BigDecimal figure = new BigDecimal(expected);
    assertEquals(figure, actual.setScale(figure.scale(), RoundingMode.HALF_UP));
  }

  // Derived, exact: margin = markup / (1 + markup); 100 % <-> 50 %, 66.67 % <-> 40 %.
  @ParameterizedTest
  @CsvSource({"40,66.67", "50,100.00", "20,25.00", "0,0.00"})
  void aMarginOnThePriceIsABiggerMarkupOnTheCost(String margin, String markupPercent) {
    BigDecimal price = NOTHING_TAKEN.priceForMargin(cost("100"), new BigDecimal(margin));

    assertClose(markupPercent, price.subtract(new BigDecimal(100)));
  }

  // Source: OpenStax, Principles of Accounting 2, m68079: 20 % on a cost of 8 is 9.60, of 9 is
  // 10.80. As a margin that is 0.2/1.2 = 16.67 % (derived).
  @ParameterizedTest
  @CsvSource({"8,9.60", "9,10.80"})
  void aFifthOnTheCostIsASixthOfThePrice(String cost, String price) {
    assertClose("16.6667", NOTHING_TAKEN.marginPercent(new BigDecimal(price), cost(cost)));
  }

  // Source: keystone markup, retail = 2 x cost, 10 -> 20 (Monash University, marketing dictionary,
  // "keystone markup"); 37.50 -> 75.00 (quia.com/quiz/2083034, a course quiz).
  @ParameterizedTest
  @CsvSource({"10,20", "37.50,75"})
  void keystoneIsTheBreakEvenOfAShopThatTakesHalf(String cost, String retail) {
    assertClose(retail, HALF_TAKEN.breakEven(cost(cost)));
    assertClose(cost, HALF_TAKEN.net(new BigDecimal(retail)));
  }

  // Source: OpenStax, Principles of Accounting 2, m68086: contribution 185 in 1 h, 55 in half an
  // hour and 48 in a quarter is 185, 110 and 192 for each limiting hour.
  // Source: Accounting for Managers, ch. 10.5 (flatworldknowledge.lardbucket.org): of a product of
  // 4
  // h and one of 1 h, contributions of 100 and 150 for each labour hour.
  @ParameterizedTest
  @CsvSource({"185,60,185", "55,30,110", "48,15,192", "400,240,100", "150,60,150"})
  void whatIsEarnedCountsByTheHourItTakes(String earned, String minutes, String perHour) {
    UnitCost cost =
        new UnitCost(
            new BigDecimal(minutes),
            List.of(
                new ExactLine("m", CostKind.MATERIAL, new BigDecimal("70")),
                new ExactLine("labour", CostKind.LABOUR, new BigDecimal("20")),
                new ExactLine("w", CostKind.WEAR, new BigDecimal("7")),
                new ExactLine("overhead", CostKind.OVERHEAD, new BigDecimal("23"))));
    BigDecimal price = new BigDecimal(earned).add(new BigDecimal("100"));

    assertClose(perHour, NOTHING_TAKEN.earnedPerHour(price, cost));
  }

  @Test
  void theDiscountComesOffFirstThenThePercentFeeThenTheFixedFee() {
    // 100 less 40 % is 60; less 5 % of 60 is 57; less 2 is 55.
    Sale sale = sale("5", "2", "40");

    assertClose("60.0000", sale.revenue(new BigDecimal("100")));
    assertClose("55.0000", sale.net(new BigDecimal("100")));
    assertClose("15.0000", sale.profit(new BigDecimal("100"), cost("40")));
    assertClose("25.0000", sale.marginPercent(new BigDecimal("100"), cost("40")));
  }

  @ParameterizedTest
  @CsvSource({"2.9,0.3,0,30", "0,0,50,12.5", "8,1.25,35,0", "15,0,0,84.9"})
  void thePriceForAMarginHasThatMargin(
      String percentFee, String fixedFee, String discountPercent, String margin) {
    Sale sale = sale(percentFee, fixedFee, discountPercent);
    BigDecimal price = sale.priceForMargin(cost("29.18"), new BigDecimal(margin));

    BigDecimal asked = new BigDecimal(margin).setScale(20);
    assertClose(asked.toPlainString(), sale.marginPercent(price, cost("29.18")));
  }

  @Test
  void theBreakEvenPriceLeavesNoProfit() {
    Sale sale = sale("2.9", "0.3", "35");

    assertClose("0E-20", sale.profit(sale.breakEven(cost("29.18")), cost("29.18")));
  }

  // Source: OpenStax, Principles of Accounting 2, m68079: 20 % on a cost of 8 is 9.60, of 9 is
  // 10.80.
  @ParameterizedTest
  @CsvSource({"8,20,9.60", "9,20,10.80", "10,100,20.00"})
  void aMarkupIsPutOnTheCost(String cost, String markupPercent, String price) {
    assertClose(price, NOTHING_TAKEN.priceForMarkup(cost(cost), new BigDecimal(markupPercent)));
  }

  @Test
  void aMarkupIsWhatIsLeftWhenTheChannelHasTakenItsPart() {
    // (9.60 + 2) / (0.6 x 0.95)
    BigDecimal price = sale("5", "2", "40").priceForMarkup(cost("8"), new BigDecimal("20"));
    assertClose("20.3509", price);
    assertClose("9.6000", sale("5", "2", "40").net(price));
  }

  @ParameterizedTest
  @CsvSource({"2.9,0.3,0,25", "0,0,50,18", "8,1.25,35,0"})
  void thePriceForAnHourlyWageEarnsIt(
      String percentFee, String fixedFee, String discountPercent, String hourly) {
    UnitCost cost =
        new UnitCost(
            new BigDecimal("52.7"),
            List.of(
                new ExactLine("m", CostKind.MATERIAL, new BigDecimal("5.77")),
                new ExactLine("labour", CostKind.LABOUR, new BigDecimal("19.33"))));
    Sale sale = sale(percentFee, fixedFee, discountPercent);
    BigDecimal wanted = new BigDecimal(hourly);
    BigDecimal asked = sale.priceForHourly(cost, wanted);

    assertClose(wanted.setScale(20).toPlainString(), sale.earnedPerHour(asked, cost));
  }

  // Derived, exact: m = g/(1 - g), g = m/(1 + m); keystone is 100 % on cost and 50 % of the price.
  @ParameterizedTest
  @CsvSource({"50,100.0000", "40,66.6667", "20,25.0000", "0,0.0000"})
  void marginAndMarkupAreTheSameProfitSeenFromTwoSides(String margin, String markup) {
    assertEquals(new BigDecimal(markup), Markup.ofMargin(new BigDecimal(margin)));
    assertClose(margin, Markup.toMargin(new BigDecimal(markup)));
  }

  // 100 less 10 % is 90. Profit falls from 60 to 50: a fifth more has to be sold.
  @Test
  void aDiscountSaysHowMuchMoreHasToBeSold() {
    Discounted tenOff =
        Discounted.of(BigDecimal.TEN, new BigDecimal("100"), NOTHING_TAKEN, cost("40"));

    assertClose("90.0000", tenOff.price());
    assertClose("50.0000", tenOff.profit());
    assertClose("55.5556", tenOff.marginPercent());
    assertClose("20.0000", tenOff.morePercent().orElseThrow());
  }

  @Test
  void noNumberOfSalesMakesUpForADiscountBelowTheCost() {
    Discounted half =
        Discounted.of(new BigDecimal("70"), new BigDecimal("100"), NOTHING_TAKEN, cost("40"));

    assertClose("-10.0000", half.profit());
    assertEquals(Optional.empty(), half.morePercent());
  }
}
