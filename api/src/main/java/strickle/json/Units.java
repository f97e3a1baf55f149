package strickle.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;

/** Says in words the unit that the end of a field's name stands for. */
final class Units {

  private static final Map<String, String> BY_ENDING =
      Map.ofEntries(
          Map.entry("KgPerM3", "kilograms per cubic metre"),
          Map.entry("PerHour", "in the studio's currency per hour"),
          Map.entry("PerMonth", "in the studio's currency per month"),
          Map.entry("HoursPerMonth", "hours per month"),
          Map.entry("Grams", "grams"),
          Map.entry("GramsEach", "grams each"),
          Map.entry("Minutes", "minutes"),
          Map.entry("MinutesEach", "minutes each"),
          Map.entry("minutesEach", "minutes each"),
          Map.entry("Hours", "hours"),
          Map.entry("Days", "days"),
          Map.entry("Percent", "percent, 0 to 100"),
          Map.entry("Ml", "millilitres"),
          Map.entry("Mm", "millimetres"),
          Map.entry("Kg", "kilograms"),
          Map.entry("temperatureC", "degrees Celsius"),
          Map.entry("price", "in the studio's currency"),
          Map.entry("Cost", "in the studio's currency"),
          Map.entry("costEach", "in the studio's currency, each"),
          Map.entry("Fee", "in the studio's currency, or percent where the name says so"),
          Map.entry("minutes", "minutes"),
          Map.entry("hours", "hours"));

  /** Of fields whose names do not end in their unit. */
  private static final Map<String, String> BY_NAME = named();

  private Units() {}

  private static Map<String, String> named() {
    Map<String, String> named = new HashMap<>();
    for (String line : list().lines().toList()) {
      int colon = line.indexOf(": ");
      if (!line.startsWith("#") && colon > 0) {
        for (String field : line.substring(colon + 2).split(" ", -1)) {
          named.put(field, line.substring(0, colon));
        }
      }
    }
    return named;
  }

  private static String list() {
    try (InputStream list = Units.class.getResourceAsStream("units.txt")) {
      return new String(list.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** The unit of a field in words; empty when its name has none. */
  static String of(String field) {
    String longest = "";
    for (String ending : BY_ENDING.keySet()) {
      if (field.endsWith(ending) && ending.length() > longest.length()) {
        longest = ending;
      }
    }
    return BY_ENDING.getOrDefault(longest, "");
  }

  /** What a number is, in words: by its name, else by the end of its name; empty when neither. */
  static String ofNumber(String field) {
    return BY_NAME.getOrDefault(field, of(field));
  }
}
