package strickle.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the numbers of a price are measured in, as a reader reads them. */
@FunctionTest
class MeasureTest {

  private static final String SHOW =
      """
      async ({load, wear}, {unit, low, high, locale, units}) => {
        await wear({locale, units, currency: 'CAD'});
        const {showMeasure, showMeasures} = await load('rooms/prices/measure.js');
        return [showMeasure(unit, low), showMeasures(unit, low, high)];
      }
      """;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "castings | 1 | 4 | en-CA | metric | 1 casting | 1 … 4 castings",
        "castings | 0.9 | 1 | en-CA | metric | 0.9 castings | 0.9 … 1 casting",
        "CAD/kg | 0.89 | 1.2 | en-CA | metric | $0.89/kg | $0.89 … $1.20/kg",
        "CAD/kg | 0.89 | 1.2 | en-US | us | CA$0.40/lb | CA$0.40 … CA$0.54/lb",
        "CAD/h | 20 | 24 | en-CA | metric | $20.00 an hour | $20.00 … $24.00 an hour",
        "CAD/month | 400 | 440 | en-CA | metric | $400.00 a month | $400.00 … $440.00 a month",
        "CAD | 3 | 5.5 | en-CA | metric | $3.00 | $3.00 … $5.50",
        "kg | 0.5 | 12 | en-CA | metric | 500 g | 500 g … 12 kg",
        "kg | 0.5 | 12 | en-US | us | 17.64 oz | 17.64 oz … 26.46 lb",
        "% | 3 | 9.5 | en-CA | metric | 3% | 3% … 9.5%",
        "min | 6 | 7 | en-CA | metric | 6 min | 6 … 7 min",
        "min a good piece | 6 | 7.5 | en-CA | metric | 6 min a good piece | 6 … 7.5 min a good piece",
        "h/month | 100 | 120 | en-CA | metric | 100 h a month | 100 … 120 h a month",
        "furlongs | 2 | 3 | en-CA | metric | 2 furlongs | 2 … 3 furlongs"
      })
  void aNumberHasTheReadersUnitsAndTheStudiosMoney(
      String unit, double low, double high, String locale, String units, String one, String both) {
    Object asked = Map.of("unit", unit, "low", low, "high", high, "locale", locale, "units", units);
    List<?> shown = Functions.list(SHOW, asked);
    assertEquals(List.of(one, both), shown.stream().map(MeasureTest::spaced).toList());
  }

  private static String spaced(Object text) {
    return text.toString().replace('\u00a0', ' ');
  }
}
