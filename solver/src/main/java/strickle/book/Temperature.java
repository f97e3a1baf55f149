package strickle.book;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads temperatures: one number, above or below zero, in degrees Celsius or Fahrenheit. */
final class Temperature {

  /** What a person may write. */
  static final String EXAMPLES = "18, 18 C or 65 F";

  private static final double ABSOLUTE_ZERO_C = -273.15;
  private static final double MOST_C = 10_000;
  private static final Pattern TEXT =
      Pattern.compile("\\s*([+-]?[0-9]{1,6}(?:[.][0-9]{1,12})?)\\s*°?\\s*([cCfF]?)\\s*");

  private Temperature() {}

  /**
   * Degrees Celsius; (F − 32) x 5/9, exact by definition.
   *
   * @throws Faulty with one fault, its path empty
   */
  static double read(String text) {
    Matcher matcher = TEXT.matcher(text == null ? "" : text);
    if (!matcher.matches()) {
      throw refused(text, Quantity.TEMPERATURE.right());
    }
    double number = Double.parseDouble(matcher.group(1));
    boolean fahrenheit = matcher.group(2).equalsIgnoreCase("f");
    double celsius = fahrenheit ? (number - 32) * 5 / 9 : number;
    if (!(ABSOLUTE_ZERO_C <= celsius && celsius <= MOST_C)) {
      throw refused(text, "a temperature from -273.15 C (absolute zero) to 10000 C");
    }
    return celsius;
  }

  private static Faulty refused(String text, String right) {
    return new Faulty(List.of(new Fault("", Show.text(text), right)));
  }
}
