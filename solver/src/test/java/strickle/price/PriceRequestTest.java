package strickle.price;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Channel;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.SampleBook;
import strickle.book.Studio;

class PriceRequestTest {

  private static PriceRequest request(String marginPercent, String ending) {
    return new PriceRequest(new BigDecimal(marginPercent), new BigDecimal(ending));
  }

  private static List<String> paths(Faulty faulty) {
    return faulty.faults().stream().map(Fault::path).toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"-0.0001", "100", "1000", "1E+1000000", "30.00001", "1E-1000000"})
  void aMarginThatNoPriceCanHaveIsRefused(String margin) {
    Faulty faulty = assertThrows(Faulty.class, () -> request(margin, "0"));

    assertEquals(List.of(".marginPercent"), paths(faulty));
  }

  @ParameterizedTest
  @ValueSource(strings = {"-0.01", "1", "1.99", "99", "1E+1000000"})
  void anEndingThatIsNotThePartBehindTheWholeUnitsIsRefused(String ending) {
    Faulty faulty = assertThrows(Faulty.class, () -> request("30", ending));

    assertEquals(List.of(".ending"), paths(faulty));
  }

  @Test
  void bothFaultsAreToldAtOnceWithTheValuesFound() {
    Faulty faulty = assertThrows(Faulty.class, () -> request("-5", "1.5"));

    assertEquals(List.of(".marginPercent", ".ending"), paths(faulty));
    assertEquals(List.of("-5", "1.5"), faulty.faults().stream().map(Fault::found).toList());
  }

  @Test
  void aMissingNumberIsToldAsNothing() {
    Faulty faulty = assertThrows(Faulty.class, () -> new PriceRequest(null, null));

    assertEquals(
        List.of("nothing", "nothing"), faulty.faults().stream().map(Fault::found).toList());
  }

  @ParameterizedTest
  @CsvSource({"0,0", "99.9999,0.99", "30.0,0.50", "33.3333,0.999"})
  void theRangesIncludeTheirLowerEndsAndNotTheirUpper(String margin, String ending) {
    PriceRequest request = request(margin, ending);

    assertEquals(new BigDecimal(margin), request.marginPercent());
    assertEquals(new BigDecimal(ending), request.ending());
  }

  private static Book feesOf(String... fees) {
    Channel[] channels = new Channel[fees.length];
    for (int i = 0; i < fees.length; i++) {
      BigDecimal fee = new BigDecimal(fees[i]);
      channels[i] = new Channel("c" + i, "channel " + i, fee, BigDecimal.ZERO, BigDecimal.ZERO);
    }
    return BookWith.channels(BookWith.fairs(SampleBook.example()), channels);
  }

  @Test
  void everyChannelWhoseFeeLeavesNoRoomForTheMarginIsNamed() {
    Book book = feesOf("40", "39.9", "75");

    Faulty faulty = assertThrows(Faulty.class, () -> Pricing.standard(book, request("60", "0")));

    String right = "a margin under %s percent, so that no price is all fee and margin";
    assertEquals(
        List.of(
            new Fault(
                ".marginPercent",
                "60 beside the fee of 40 percent in channel \"c0\"",
                right.formatted("60")),
            new Fault(
                ".marginPercent",
                "60 beside the fee of 75 percent in channel \"c2\"",
                right.formatted("25"))),
        faulty.faults());
  }

  @Test
  void aMarginThatJustFitsBesideTheFeeIsTaken() {
    Prices prices = Pricing.standard(feesOf("39.9"), request("60", "0"));

    // 29.180080 / 0.001 = 29180.0795
    assertEquals(
        new BigDecimal("29181.00"), prices.pieces().getFirst().channels().getFirst().suggested());
  }

  private static Book in(String currency) {
    Studio s = SampleBook.studio();
    Studio abroad =
        new Studio(
            s.name(),
            CurrencyUnit.of(currency),
            s.timeZone(),
            s.wagePerHour(),
            s.overheadPerMonth(),
            s.productiveHoursPerMonth(),
            s.batchLimitGrams(),
            s.climate());
    return BookWith.studio(SampleBook.example(), abroad);
  }

  @ParameterizedTest
  @CsvSource({"JPY,0.5", "USD,0.995", "KWD,0.9995"})
  void anEndingFinerThanTheCurrencyIsRefused(String currency, String ending) {
    Book book = in(currency);

    Faulty faulty = assertThrows(Faulty.class, () -> Pricing.standard(book, request("30", ending)));

    assertEquals(List.of(".ending"), paths(faulty));
    assertEquals(ending, faulty.faults().getFirst().found());
  }

  // The price for a margin of 30 % at the own table is 43.9345.
  @ParameterizedTest
  @CsvSource({"JPY,0,44", "JPY,0.00,44", "USD,0.990,43.99", "KWD,0.995,43.995"})
  void anEndingAsFineAsTheCurrencyIsTaken(String currency, String ending, String suggested) {
    Prices prices = Pricing.standard(in(currency), request("30", ending));

    assertEquals(
        new BigDecimal(suggested), prices.pieces().getFirst().channels().getFirst().suggested());
  }

  @Test
  void anEndingAndAMarginThatTheBookMakesImpossibleAreToldAtOnce() {
    Faulty faulty =
        assertThrows(Faulty.class, () -> Pricing.standard(feesOf("80"), request("20", "0.125")));

    assertEquals(List.of(".marginPercent", ".ending"), paths(faulty));
  }

  private static PriceRequest asking(
      String every, String ending, String markup, String hourly, String discount) {
    return new PriceRequest(
        BigDecimal.TEN,
        new BigDecimal(ending),
        new BigDecimal(every),
        Optional.of(new BigDecimal(markup)),
        Optional.of(new BigDecimal(hourly)),
        Optional.of(new BigDecimal(discount)));
  }

  @Test
  void everythingElseOutOfRangeIsToldAtOnce() {
    Faulty faulty = assertThrows(Faulty.class, () -> asking("0", "2", "-1", "-0.5", "100"));

    assertEquals(
        List.of(".every", ".ending", ".markupPercent", ".hourly", ".discountPercent"),
        paths(faulty));
    faulty = assertThrows(Faulty.class, () -> asking("10", "10", "100001", "0.00001", "0"));
    assertEquals(
        List.of(".ending", ".markupPercent", ".hourly", ".discountPercent"), paths(faulty));
  }

  @Test
  void pricesThatLieApartByLessThanTheCurrencyHasAreRefused() {
    PriceRequest request = asking("0.5", "0", "0", "0", "50");
    Faulty faulty = assertThrows(Faulty.class, () -> Pricing.standard(in("JPY"), request));

    assertEquals(List.of(".every"), paths(faulty));
  }
}
