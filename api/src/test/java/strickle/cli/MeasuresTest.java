package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import strickle.book.Amount;

class MeasuresTest {

  private static final Measures METRIC = new Measures(false);
  private static final Measures US = new Measures(true);

  @Test
  void metricMeasuresCarryTheirUnit() {
    assertEquals("1937.3 g", METRIC.mass(1937.31));
    assertEquals("22.700 kg", METRIC.mass(22700));
    assertEquals("750.0 ml", METRIC.volume(750));
    assertEquals("12.000 l", METRIC.volume(12000));
    assertEquals("12.5 mm", METRIC.length(12.5));
    assertEquals("0.0500 m²", METRIC.area(0.05));
    assertEquals("2150 kg/m³", METRIC.density(2150));
    assertEquals("18.0 °C", METRIC.temperature(18));
  }

  @Test
  void customaryMeasuresCarryTheirs() {
    assertEquals("8.00 oz", US.mass(8 * 28.349523125));
    assertEquals("2 lb 3.00 oz", US.mass(35 * 28.349523125));
    assertEquals("1 lb 0.00 oz", US.mass(453.59));
    assertEquals("12.00 fl oz", US.volume(12 * 29.5735295625));
    assertEquals("1.500 gal", US.volume(1.5 * 3785.411784));
    assertEquals("1.000 in", US.length(25.4));
    assertEquals("10.764 ft²", US.area(1));
    assertEquals("150.0 lb/ft³", US.density(150 * 16.018463374));
    assertEquals("64.4 °F", US.temperature(18));
  }

  @Test
  void aScaleIsShownWithEveryDecimalOfItsStep() {
    assertEquals("27.79 g", METRIC.weighed(27.79, 0.01));
    assertEquals("27.8 g", METRIC.weighed(27.8, 0.1));
    assertEquals("28.0 g", METRIC.weighed(28, 5));
    assertEquals("0.125 g", METRIC.weighed(0.125, 0.001));
    assertEquals("17.2065 kg", METRIC.weighed(17206.5, 0.1));
    assertEquals("0.011 oz", US.weighed(0.3, 0.1));
    assertEquals("1 lb 0.05 oz", US.weighed(16.05 * 28.349523125, 0.05 * 28.349523125));
    assertEquals("1 lb 0.000 oz", US.weighed(453.592, 0.1));
  }

  @Test
  void ofVeryLittleThreeFiguresAreShown() {
    // 1/6 mm³: octave.sourceforge.io/matgeom, tetrahedronVolume, read.
    assertEquals("0.000167 ml", METRIC.volume(1 / 6000.0));
    assertEquals("0.00000564 fl oz", US.volume(1 / 6000.0));
    assertEquals("0.0 ml", METRIC.volume(0));
    assertEquals("1.0 ml", METRIC.volume(1));
  }

  @Test
  void whatIsWrittenCanBeReadAgain() {
    Random random = new Random(3);
    for (int i = 0; i < 300; i++) {
      double value = Math.exp(random.nextDouble() * 10);
      for (Measures measures : new Measures[] {METRIC, US}) {
        String why = String.format(Locale.ROOT, "%s %s", measures, value);
        assertEquals(value, Amount.mass(measures.mass(value)), 0.6, why);
        assertEquals(value, Amount.volume(measures.volume(value)), 2.0, why);
        assertEquals(value, Amount.length(measures.length(value)), 0.06, why);
        assertEquals(value, Amount.density(measures.density(value)), 1, why);
      }
    }
  }
}
