package strickle.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers are read as a person writes them, and written so that they can be read again. */
@FunctionTest
class NumbersTest {

  private static final String READ =
      """
      async ({load, wear}, [locale, text]) => {
        const {readNumber} = await load('app/numbers.js');
        await wear({locale});
        return readNumber(text);
      }
      """;

  @ParameterizedTest(name = "{1} in {0} is {2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "en-US | 1,500 | 1500",
        "en-US | 1,5 | 1.5",
        "en-US | 1.5 | 1.5",
        "en-US | 1,234,567.25 | 1234567.25",
        "en-US | 0,125 | 0.125",
        "en-US | .5 | 0.5",
        "en-US | 5. | 5",
        "en-US | +7 | 7",
        "en-US | −3.5 | -3.5",
        "en-US | -3.5 | -3.5",
        "en-US | 1 500 | 1500",
        "en-US | 1'500 | 1500",
        "en-IN | 1,50,000 | 150000",
        "en-IN | 1,500 | 1500",
        "en-IN | 12,34,567.5 | 1234567.5",
        "de-DE | 1.500 | 1500",
        "de-DE | 1,5 | 1.5",
        "de-DE | 1.5 | 1.5",
        "de-DE | 1.234.567,25 | 1234567.25",
        "de-CH | 1’500.5 | 1500.5",
        "fr-FR | 1 500,5 | 1500.5",
        "fr-FR | 1.5 | 1.5",
        "sv-SE | 12 345,678 | 12345.678",
        "pl-PL | 0,5 | 0.5",
      })
  void aNumberIsReadWithEitherMarkAndTheReadersGroups(String locale, String text, double value) {
    assertEquals(value, ((Number) Functions.call(READ, List.of(locale, text))).doubleValue());
  }

  @Test
  void spacesThatDoNotBreakPartGroupsToo() {
    for (String text : List.of("1\u00a0500", "1\u202f500", " 1500 ")) {
      Object read = Functions.call(READ, List.of("fr-FR", text));
      assertEquals(1500, ((Number) read).doubleValue(), text);
    }
  }

  @ParameterizedTest(name = "{1} in {0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "en-US | ''",
        "en-US | twelve",
        "en-US | 1.2.3",
        "en-US | 1,2,3",
        "en-US | 1e3",
        "en-US | 0x10",
        "en-US | 1,50,00",
        "en-US | --1",
        "en-US | 12 kg",
        "en-US | Infinity",
        "de-DE | 1,2,3",
        "de-DE | .",
      })
  void whatIsNoNumberIsNotTakenForOne(String locale, String text) {
    assertEquals(Double.NaN, ((Number) Functions.call(READ, List.of(locale, text))).doubleValue());
  }

  private static final String LOCALES =
      """
      async ({load, wear}, numbers) => {
        const {LOCALES} = await load('app/lists.js');
        const {readNumber, showNumber, writeNumber} = await load('app/numbers.js');
        const others = [];
        for (const locale of LOCALES) {
          await wear({locale});
          for (const text of numbers) {
            const value = Number(text);
            const again = [readNumber(writeNumber(value)), readNumber(showNumber(value, 6))];
            if (again.some(each => each !== value)) others.push(`${text} in ${locale}: ${again}`);
          }
        }
        return others;
      }
      """;

  @Test
  void whatIsWrittenOrShownIsReadAgainAsTheSameNumberInEveryLanguageOnOffer() {
    List<String> numbers = new ArrayList<>(List.of("0", "1000", "0.5", "-1234.5", "100000"));
    Random random = new Random(7);
    for (int i = 0; i < 300; i++) {
      // Of three digits after a single group nobody can tell which mark it is; so none ends so
      // here.
      BigDecimal number = BigDecimal.valueOf(random.nextInt(200_000_000) - 100_000_000, 2);
      numbers.add(number.toPlainString());
    }
    assertEquals(List.of(), Functions.list(LOCALES, numbers));
  }

  @Test
  void aBoxKeepsTwelveDigitsAndNoneThatAChangeOfUnitsLeftBehind() {
    assertEquals(
        List.of("0.3", "1133.980925", "123456789.012", "0.000000001", "", ""),
        Functions.list(
            """
            async ({load, wear}) => {
              const {writeNumber} = await load('app/numbers.js');
              await wear({locale: 'en-US'});
              const values = [0.1 + 0.2, 1133.9809249999998, 123456789.0123456, 1e-9, NaN, null];
              return values.map(writeNumber);
            }
            """,
            null));
  }
}
