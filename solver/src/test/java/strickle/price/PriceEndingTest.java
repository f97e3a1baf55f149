package strickle.price;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PriceEndingTest {

  private static BigDecimal up(String currency, String ending, String price) {
    return new PriceEnding(new BigDecimal(ending), CurrencyUnit.of(currency))
        .upFrom(new BigDecimal(price));
  }

  @ParameterizedTest
  @CsvSource({
    "0,43.9345,44.00",
    "0,44,44.00",
    "0,44.0001,45.00",
    "0,0,0.00",
    "0.99,43.9345,43.99",
    "0.99,43.99,43.99",
    "0.99,43.9901,44.99",
    "0.99,44,44.99",
    "0.99,0.2,0.99",
    "0.50,43.9345,44.50",
    "0.50,44.00,44.50",
    "0.50,44.50,44.50",
    "0.50,44.51,45.50"
  })
  void aPriceGoesUpToTheNextWithTheEnding(String ending, String price, String expected) {
    assertEquals(new BigDecimal(expected), up("USD", ending, price));
  }

  @ParameterizedTest
  @CsvSource({"JPY,0,4393.45,4394", "KWD,0.995,43.9345,43.995", "KWD,0.250,43.9345,44.250"})
  void aPriceHasTheDigitsOfItsCurrency(
      String currency, String ending, String price, String expected) {
    assertEquals(new BigDecimal(expected), up(currency, ending, price));
  }

  @Test
  void theNoiseOfBinaryArithmeticCostsTheBuyerNothing() {
    assertEquals(new BigDecimal("44.00"), up("USD", "0", "44.00000000000001"));
    assertEquals(new BigDecimal("44.99"), up("USD", "0.99", "44.99000000000002"));
  }

  @Test
  void whatIsMoreThanNoiseIsRoundedUp() {
    assertEquals(new BigDecimal("45.00"), up("USD", "0", "44.000000001"));
  }

  @ParameterizedTest
  @CsvSource({
    "USD,9,10,43.9345,49.00",
    "USD,9,10,49,49.00",
    "USD,9,10,49.01,59.00",
    "USD,4.99,5,44.98,44.99",
    "USD,4.99,5,45,49.99",
    "JPY,80,100,4380.5,4480",
    "KWD,0.250,0.5,1.251,1.750",
    "USD,9,10,0,9.00"
  })
  void pricesMayLieFurtherApart(
      String currency, String ending, String every, String price, String expected) {
    PriceEnding one =
        new PriceEnding(new BigDecimal(ending), new BigDecimal(every), CurrencyUnit.of(currency));
    assertEquals(new BigDecimal(expected), one.upFrom(new BigDecimal(price)));
  }
}
