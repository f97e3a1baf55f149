package strickle.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Amounts in the reader's units. The pound, the inch and the US gallon are exact by definition, and
 * the others follow from them; what NIST Special Publication 811 (2008), B.8, prints is a value
 * from memory.
 */
@FunctionTest
class UnitsTest {

  private static final BigDecimal POUND_GRAMS = new BigDecimal("453.59237");
  private static final BigDecimal INCH_MM = new BigDecimal("25.4");
  private static final BigDecimal GALLON_ML = new BigDecimal("3785.411784");
  private static final BigDecimal FOOT_M = INCH_MM.multiply(new BigDecimal("0.012"));
  private static final BigDecimal POUND_KG = POUND_GRAMS.movePointLeft(3);

  /** Units of the page's own measures are one by these names; a double holds some 16 digits. */
  private static final double AS_EXACT_AS_A_DOUBLE = 4e-16;

  /** Seven digits are printed. */
  private static final double AS_PRINTED = 5e-7;

  static Stream<Arguments> units() {
    BigDecimal one = BigDecimal.ONE;
    return Stream.of(
        arguments("mass", "metric", "g", one, 1),
        arguments("mass", "metric", "kg", new BigDecimal(1000), 1000),
        arguments("mass", "us", "lb", POUND_GRAMS, 453.5924),
        arguments("mass", "us", "oz", POUND_GRAMS.divide(new BigDecimal(16)), 28.34952),
        arguments("volume", "metric", "ml", one, 1),
        arguments("volume", "metric", "l", new BigDecimal(1000), 1000),
        arguments("volume", "us", "gal", GALLON_ML, 3785.412),
        arguments("volume", "us", "fl oz", GALLON_ML.divide(new BigDecimal(128)), 29.57353),
        arguments("length", "metric", "mm", one, 1),
        arguments("length", "us", "in", INCH_MM, 25.4),
        arguments("area", "metric", "m²", one, 1),
        arguments("area", "us", "ft²", FOOT_M.pow(2), 0.09290304),
        arguments("density", "metric", "kg/m³", one, 1),
        arguments("density", "us", "lb/ft³", over(POUND_KG, FOOT_M.pow(3)), 16.01846),
        arguments("loss", "metric", "kg/m²/h", one, 1),
        arguments("loss", "us", "lb/ft²/h", over(POUND_KG, FOOT_M.pow(2)), 4.882428),
        arguments("temperature", "metric", "°C", one, 1),
        arguments(
            "temperature", "us", "°F", over(new BigDecimal(5), new BigDecimal(9)), 0.5555556));
  }

  private static BigDecimal over(BigDecimal one, BigDecimal other) {
    return one.divide(other, MathContext.DECIMAL64);
  }

  @ParameterizedTest(name = "{2}")
  @MethodSource("units")
  void aUnitIsAsManyOfTheBaseAsItIsDefined(
      String kind, String system, String name, BigDecimal exact, double printed) {
    Map<?, ?> unit = (Map<?, ?>) Functions.call(UNIT, List.of(kind, system, name));
    double many = ((Number) unit.get("many")).doubleValue();
    assertEquals(exact.doubleValue(), many, exact.doubleValue() * AS_EXACT_AS_A_DOUBLE);
    assertEquals(printed, many, printed * AS_PRINTED);
  }

  /** The unit of a kind and system that has a name, at whatever size it is used. */
  private static final String UNIT =
      """
      async ({load}, [kind, system, name]) => {
        const {unitFor} = await load('app/units.js');
        const sizes = [0, 1, 100, 3000, 5000, 20000];
        return sizes.map(size => unitFor(kind, size, system)).find(unit => unit.name === name);
      }
      """;

  @Test
  void temperaturesOfTheScalesMeetWhereTheyAreKnownTo() {
    List<?> read =
        Functions.list(
            """
            async ({load}) => {
              const {fromUnit, toUnit, unitFor} = await load('app/units.js');
              const unit = unitFor('temperature', 0, 'us');
              return [fromUnit(-40, unit), fromUnit(32, unit), fromUnit(212, unit), toUnit(20, unit)];
            }
            """,
            null);
    List<Double> expected = List.of(-40.0, 0.0, 100.0, 68.0);
    for (int i = 0; i < expected.size(); i++) {
      assertEquals(expected.get(i), ((Number) read.get(i)).doubleValue(), 1e-12);
    }
  }

  @Test
  void anAmountIsShownInTheUnitThatFitsItsSize() {
    assertEquals(
        List.of(
            "0 g",
            "12.5 g",
            "9,999 g",
            "10 kg",
            "12.35 kg",
            "850 ml",
            "12 l",
            "40 oz",
            "5 lb",
            "1 in",
            "68 °F",
            "–"),
        shown());
  }

  private static List<String> shown() {
    List<?> texts =
        Functions.list(
            """
            async ({load, wear}) => {
              const {showAmount} = await load('app/units.js');
              await wear({locale: 'en-CA'});
              const metric = [['mass', 0], ['mass', 12.5], ['mass', 9999], ['mass', 10000],
                ['mass', 12345.6], ['volume', 850], ['volume', 12000]];
              const told = metric.map(([kind, value]) => showAmount(kind, value));
              await wear({locale: 'en-US', units: 'us'});
              const us = [['mass', 1133.980925], ['mass', 2267.96185], ['length', 25.4],
                ['temperature', 20], ['mass', NaN]];
              return [...told, ...us.map(([kind, value]) => showAmount(kind, value))];
            }
            """,
            null);
    return texts.stream().map(text -> text.toString().replace('\u00a0', ' ')).toList();
  }

  @Test
  void whatIsTypedInAnyUnitIsShownAgainAsItWasTyped() {
    List<String> typed = new ArrayList<>();
    Random random = new Random(11);
    for (int i = 0; i < 400; i++) {
      BigDecimal number = BigDecimal.valueOf(1 + random.nextInt(9_999_999), 1 + random.nextInt(4));
      typed.add(number.stripTrailingZeros().toPlainString());
    }
    assertEquals(List.of(), Functions.list(TYPED_AND_SHOWN, typed));
  }

  private static final String TYPED_AND_SHOWN =
      """
      async ({load, wear}, typed) => {
        const {KIND} = await load('parts/field-kinds.js');
        const {KINDS} = await load('app/units.js');
        const others = [];
        for (const units of ['metric', 'us']) {
          await wear({locale: 'en-US', units});
          for (const kind of KINDS) for (const size of [0, 50000]) for (const text of typed) {
            const again = KIND[kind].write(KIND[kind].read(text, {size}), {size});
            if (again !== text) others.push(`${text} ${kind} ${units} became ${again}`);
          }
        }
        return others;
      }
      """;

  @Test
  void whatIsTypedInUsUnitsIsKeptAsTheExactMetricAmount() {
    Map<?, ?> kept =
        (Map<?, ?>)
            Functions.call(
                """
                async ({load, wear}) => {
                  const {KIND} = await load('parts/field-kinds.js');
                  await wear({locale: 'en-US', units: 'us'});
                  return {
                    pounds: KIND.mass.read('2.5', {size: 5000}), ounces: KIND.mass.read('8', {}),
                    gallons: KIND.volume.read('1.25', {size: 5000}),
                    inches: KIND.length.read('1.5', {}), degrees: KIND.temperature.read('68', {}),
                  };
                }
                """,
                null);
    Map<String, Double> exact =
        Map.of(
            "pounds", 1133.980925,
            "ounces", 226.796185,
            "gallons", 4731.76473,
            "inches", 38.1,
            "degrees", 20.0);
    exact.forEach((name, value) -> assertEquals(value, ((Number) kept.get(name)).doubleValue()));
  }

  @Test
  void whatWasKeptInOtherUnitsFillsNoBoxWithDigitsThatNobodyMeasured() {
    Object shown =
        Functions.call(
            """
            async ({load, wear}) => {
              const {KIND} = await load('parts/field-kinds.js');
              await wear({locale: 'en-US', units: 'us'});
              const us = [KIND.mass.write(8500, {size: 8500}), KIND.mass.write(0.1, {}), KIND.mass.write(453.59237, {})];
              await wear({locale: 'en-US', units: 'metric'});
              return [...us, KIND.mass.write(12345.678, {size: 12345}), KIND.mass.write(null, {})];
            }
            """,
            null);
    // 8500 g / 453.59237 g and 0.1 g / 28.349523125 g
    assertEquals(List.of("18.7393", "0.0035", "16", "12.345678", ""), shown);
  }
}
