package strickle.book;

import java.util.Locale;
import java.util.Map;

/** The ways one unit may be written, brought down to one. */
final class UnitNames {

  private static final Map<String, String> OTHER_NAMES =
      Map.ofEntries(
          Map.entry("gram", "g"),
          Map.entry("grams", "g"),
          Map.entry("kilogram", "kg"),
          Map.entry("kilograms", "kg"),
          Map.entry("ounce", "oz"),
          Map.entry("ounces", "oz"),
          Map.entry("lbs", "lb"),
          Map.entry("pound", "lb"),
          Map.entry("pounds", "lb"),
          Map.entry("litre", "l"),
          Map.entry("litres", "l"),
          Map.entry("liter", "l"),
          Map.entry("liters", "l"),
          Map.entry("gallon", "gal"),
          Map.entry("gallons", "gal"),
          Map.entry("pint", "pt"),
          Map.entry("quart", "qt"),
          Map.entry("fluidounce", "floz"),
          Map.entry("fluidounces", "floz"),
          Map.entry("inch", "in"),
          Map.entry("inches", "in"),
          Map.entry("foot", "ft"),
          Map.entry("feet", "ft"),
          Map.entry("mils", "mil"));

  private UnitNames() {}

  /** "Fl. oz" and "fluid ounces" are "floz", "µm" is "um", "m³" is "m3", "°F" is "f". */
  static String plain(String written) {
    String plain =
        written
            .toLowerCase(Locale.ROOT)
            .replaceAll("[\\s.°]", "")
            .replace('²', '2')
            .replace('³', '3')
            .replace('µ', 'u')
            .replace('μ', 'u');
    return OTHER_NAMES.getOrDefault(plain, plain);
  }
}
