package strickle.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.NumberFormat;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Money by the currency's own minor units, as java.util.Currency and java.text know them. */
@FunctionTest
class MoneyTest {

  private static final String SHOW =
      """
      async ({load, wear}, [locale, currency, amounts]) => {
        const {showMoney} = await load('app/money.js');
        await wear({locale, currency});
        return amounts.map(text => showMoney(Number(text)));
      }
      """;

  @ParameterizedTest(name = "{1} in {0}")
  @CsvSource({
    "en-US, USD", "en-US, JPY", "en-US, KWD", "en-GB, GBP", "en-GB, EUR", "de-DE, EUR",
    "de-CH, CHF", "fr-FR, EUR", "sv-SE, SEK", "ja-JP, JPY", "pt-BR, BRL", "nl-NL, EUR",
  })
  void anAmountIsWrittenAsJavaWritesItsDecimal(String locale, String currency) {
    List<String> amounts = amounts();
    NumberFormat format = NumberFormat.getCurrencyInstance(Locale.forLanguageTag(locale));
    format.setCurrency(Currency.getInstance(currency));
    int digits = Currency.getInstance(currency).getDefaultFractionDigits();
    format.setMinimumFractionDigits(digits);
    format.setMaximumFractionDigits(digits);
    format.setRoundingMode(RoundingMode.HALF_UP);
    List<String> expected =
        amounts.stream().map(text -> plain(format.format(new BigDecimal(text)))).toList();
    List<?> shown = Functions.list(SHOW, List.of(locale, currency, amounts));
    assertEquals(expected, shown.stream().map(text -> plain(text.toString())).toList());
  }

  /** Halves too, which a binary fraction misses: a price list must round as its reader would. */
  private static List<String> amounts() {
    List<String> amounts =
        new ArrayList<>(List.of("0", "0.005", "1.005", "2.675", "8.5", "-4.2", "1234567.891"));
    Random random = new Random(5);
    for (int i = 0; i < 60; i++) {
      amounts.add(BigDecimal.valueOf(random.nextInt(90_000_000), 3).toPlainString());
    }
    return amounts;
  }

  /** Which space, minus or apostrophe stands there depends on the edition of the locale's data. */
  private static String plain(String text) {
    return text.replaceAll("[\\s\u00a0\u202f]", "").replace('\u2212', '-').replace('\u2019', '\'');
  }

  @Test
  void everyCurrencyOnOfferHasTheMinorDigitsOfIso4217() {
    Map<?, ?> digits =
        (Map<?, ?>)
            Functions.call(
                """
                async ({load, wear}) => {
                  const {minorDigits} = await load('app/money.js');
                  await wear({locale: 'en-US'});
                  const codes = ['USD', 'EUR', 'GBP', 'CAD', 'AUD', 'NZD', 'CHF', 'SEK', 'NOK', 'DKK',
                    'PLN', 'CZK', 'JPY', 'INR', 'ZAR', 'BRL', 'MXN', 'KWD', 'TND', 'KRW', 'CLP'];
                  return Object.fromEntries(codes.map(code => [code, minorDigits(code)]));
                }
                """,
                null);
    digits.forEach(
        (code, count) ->
            assertEquals(
                Currency.getInstance(code.toString()).getDefaultFractionDigits(),
                count,
                "" + code));
    assertEquals(21, digits.size());
  }

  @Test
  void whatIsGainedHasASignAndWhatIsNoAmountIsADash() {
    assertEquals(
        List.of("+$1.50", "-$1.50", "$0.00", "–", "–"),
        Functions.list(
            """
            async ({load, wear}) => {
              const {showMoney} = await load('app/money.js');
              await wear({locale: 'en-US', currency: 'USD'});
              return [...[1.5, -1.5, 0].map(amount => showMoney(amount, {sign: true})),
                showMoney(NaN), showMoney(undefined)];
            }
            """,
            null));
  }

  @Test
  void aBoxForMoneyKeepsTheCentsThatWereTyped() {
    assertEquals(
        List.of("12.50", "12", "12.345", "1250", "12,50"),
        Functions.list(
            """
            async ({load, wear}) => {
              const {KIND} = await load('parts/field-kinds.js');
              await wear({locale: 'en-US', currency: 'USD'});
              const dollars = [12.5, 12, 12.345].map(value => KIND.money.write(value, {}));
              await wear({locale: 'ja-JP', currency: 'JPY'});
              const yen = KIND.money.write(1250, {});
              await wear({locale: 'de-DE', currency: 'EUR'});
              return [...dollars, yen, KIND.money.write(12.5, {})];
            }
            """,
            null));
  }

  @Test
  void whatASaleLeavesIsWorkedOutAsTheServiceDoes() {
    assertEquals(List.of(), Functions.list(SALES, null));
  }

  /**
   * Every piece through every channel at the price the service suggests leaves the margin asked.
   */
  private static final String SALES =
      """
      async ({load}) => {
        const {breakEven, priceFor, sale} = await load('rooms/prices/sale.js');
        const book = await (await fetch('/api/book')).json();
        const prices = await (await fetch('/api/prices?margin=30&ending=0')).json();
        const near = (one, other) => Math.abs(one - other) < 0.006;
        const wrong = [];
        for (const cost of prices.pieces) for (const told of cost.channels) {
          const channel = book.channels.find(({id}) => id === told.channel);
          const {marginPercent} = sale(cost, channel, priceFor(cost, channel, 30));
          const {profit} = sale(cost, channel, breakEven(cost, channel));
          if (!near(marginPercent, 30) || !near(profit, 0)
            || !near(breakEven(cost, channel), told.breakEven)) {
            wrong.push(`${cost.piece} by ${told.channel}: ${marginPercent}, ${profit}, ${JSON.stringify(told)}`);
          }
        }
        return prices.pieces.length > 0 ? wrong : ['no prices'];
      }
      """;
}
