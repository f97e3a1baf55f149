package strickle.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Amounts in metric and US customary units. 1 in = 25.4 mm: 16 CFR 500.19, read. Pound, ounce, US
 * fluid ounce and pint: a table citing NIST, second-hand; the gallon of 231 in³ likewise. Others
 * follow from these.
 */
class AmountTest {

  @Test
  void massesAreGrams() {
    assertEquals(250, Amount.mass("250"));
    assertEquals(1500, Amount.mass("1.5 kg"));
    assertEquals(453.59237, Amount.mass("1 lb"));
    assertEquals(28.349523125, Amount.mass("1oz"));
    assertEquals(2 * 453.59237 + 3 * 28.349523125, Amount.mass("2 lb 3 oz"), 1e-9);
    assertEquals(Amount.mass("1 lb"), Amount.mass("16 oz"), 1e-12);
    assertEquals(Amount.mass("3 pounds"), Amount.mass("3 lbs"));
  }

  @Test
  void volumesAreMillilitres() {
    assertEquals(750, Amount.volume("750"));
    assertEquals(1200, Amount.volume("1.2 l"));
    assertEquals(29.5735295625, Amount.volume("1 fl oz"));
    assertEquals(29.5735295625, Amount.volume("1 Fl. Oz."));
    assertEquals(29.5735295625, Amount.volume("1floz"));
    assertEquals(29.5735295625, Amount.volume("1 fluid ounce"));
    assertEquals(473.176473, Amount.volume("1 pt"));
    assertEquals(3785.411784, Amount.volume("1 gal"));
    assertEquals(3785.411784, Amount.volume("231 in3"), 1e-9);
    assertEquals(Amount.volume("1 gal"), Amount.volume("128 fl oz"), 1e-9);
    assertEquals(Amount.volume("1 yd3"), Amount.volume("27 ft³"), 1e-6);
  }

  @Test
  void lengthsAreMillimetres() {
    assertEquals(80, Amount.length("80"));
    assertEquals(80, Amount.length("8 cm"));
    assertEquals(25.4, Amount.length("1 in"));
    assertEquals(88.9, Amount.length("3 1/2 in"), 1e-12);
    assertEquals(12.7, Amount.length("1/2 in"), 1e-12);
    assertEquals(5 * 304.8 + 25.4, Amount.length("5 ft 1 in"), 1e-9);
    assertEquals(0.125, Amount.length("125 µm"), 1e-12);
    assertEquals(0.127, Amount.length("5 mil"), 1e-12);
  }

  @Test
  void areasAreSquareMetres() {
    assertEquals(0.5, Amount.area("0.5"));
    assertEquals(0.05, Amount.area("500 cm2"), 1e-15);
    assertEquals(Amount.area("1 ft2"), Amount.area("144 in²"), 1e-15);
    assertEquals(0.3048 * 0.3048, Amount.area("1 ft2"), 1e-15);
  }

  @Test
  void densitiesAreKilogramsPerCubicMetre() {
    assertEquals(2150, Amount.density("2150"));
    assertEquals(2150, Amount.density("2.15 g/ml"));
    assertEquals(
        145 * 0.45359237 / Math.pow(0.3048, 3), Amount.density("145 lb/ft3"), 1e-9 * 2322.7);
  }

  @Test
  void temperaturesAreDegreesCelsius() {
    assertEquals(18, Amount.temperature("18"));
    assertEquals(-4.5, Amount.temperature("-4.5 C"));
    assertEquals(0, Amount.temperature("32 F"), 1e-12);
    assertEquals(100, Amount.temperature("212°F"), 1e-12);
    assertEquals(-40, Amount.temperature("-40 °F"), 1e-12);
  }

  @Test
  void aFluidOunceIsNeverAnOunce() {
    Fault volume = fault(Amount::mass, "12 fl oz");
    assertEquals("\"12 fl oz\", which is a volume", volume.found());
    assertTrue(volume.right().startsWith("a mass such as "), volume.right());
    Fault mass = fault(Amount::volume, "12 oz");
    assertEquals("\"12 oz\", which is a mass", mass.found());
    assertTrue(mass.right().contains("fl oz"), mass.right());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "g",
        "-1 g",
        "2,5 kg",
        "1e3 g",
        "2 kg 3",
        "3 2 kg",
        "3 oz 2 lb",
        "2 lb 2 lb",
        "1 / 2 kg",
        "1/0 kg",
        "1.5 1/2 kg",
        "5 stone",
        "10 C",
        "99999999999999 kg",
        "1 g x",
        "1 0 g",
        "\u0663 g"
      })
  void whatIsNoMassIsRefused(String text) {
    Fault fault = fault(Amount::mass, text);
    assertEquals("", fault.path());
    assertTrue(fault.found().startsWith("\"" + text + "\""), fault.found());
    assertTrue(fault.right().contains("2 lb 3 oz"), fault.right());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "warm", "20 K", "20 g", "-300", "-500 F", "1000000", "20 C 3 F"})
  void whatIsNoTemperatureIsRefused(String text) {
    fault(Amount::temperature, text);
  }

  @Test
  void nothingAndAVeryLongTextAreRefused() {
    fault(Amount::mass, null);
    fault(Amount::mass, "1".repeat(100_000));
    fault(Amount::temperature, "1".repeat(100_000));
  }

  @Test
  void anAmountIsTheSumOfItsParts() {
    Random random = new Random(4);
    for (int i = 0; i < 200; i++) {
      int large = random.nextInt(100);
      double small = random.nextInt(1600) / 100.0;
      double apart = Amount.mass(large + " lb") + Amount.mass(small + " oz");
      assertEquals(apart, Amount.mass(large + "lb" + small + "oz"), 1e-9);
    }
  }

  private static Fault fault(ToDoubleFunction<String> reading, String text) {
    List<Fault> faults = assertThrows(Faulty.class, () -> reading.applyAsDouble(text)).faults();
    assertEquals(1, faults.size());
    return faults.get(0);
  }
}
