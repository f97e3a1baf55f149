package strickle.book;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads amounts with units: one number and unit after the other, each unit smaller. */
final class AmountReader {

  private static final double MOST = 1e10;
  private static final int LONGEST = 60;

  /** A 2 or 3 behind a letter that does not begin the next part, as it does in "2lb3oz". */
  private static final String POWER = "(?:[²³]|[23](?![0-9.]|\\s*[a-z]))?";

  /** 3, 3.5, 3 1/2 or 1/2, and behind it a unit, which may be missing. */
  private static final Pattern PART =
      Pattern.compile(
          "\\s*(?:(?:(?<whole>[0-9]+)\\s+)?(?<over>[0-9]+)/(?<under>[0-9]+)"
              + "|(?<number>[0-9]+(?:[.][0-9]+)?))\\s*"
              + "(?<unit>fl[.]?\\s*oz[.]?|fluid\\s*ounces?"
              + "|[a-zµμ°]+POWER(?:/[a-z]+POWER)?[.]?)?\\s*".replace("POWER", POWER),
          Pattern.CASE_INSENSITIVE);

  private static final String BELOW_ZERO = "\\s*[-−–]\\s*[0-9].*";

  private final Quantity quantity;
  private final String text;

  private AmountReader(Quantity quantity, String text) {
    this.quantity = quantity;
    this.text = text;
  }

  /**
   * The amount in the quantity's own unit, 0 to 10¹⁰.
   *
   * @throws Faulty with one fault, its path empty
   */
  static double read(Quantity quantity, String text) {
    return new AmountReader(quantity, text).read();
  }

  private double read() {
    if (text == null || text.length() > LONGEST) {
      throw refused("");
    }
    Matcher part = PART.matcher(text);
    double sum = 0;
    double before = Double.POSITIVE_INFINITY;
    int at = 0;
    while (at < text.length() && part.region(at, text.length()).lookingAt()) {
      // Only one number may go without a unit, and then nothing else stands there.
      boolean bare = part.group("unit") == null;
      double factor = bare ? 1 : factor(part.group("unit"));
      if (factor >= before || (bare && (at > 0 || part.end() < text.length()))) {
        throw refused("");
      }
      sum += number(part) * factor;
      before = factor;
      at = part.end();
    }
    if (at == 0 || at < text.length()) {
      throw refused("");
    }
    if (!(sum <= MOST)) {
      throw refused("", quantity.right("smaller"));
    }
    return sum;
  }

  private double number(Matcher part) {
    if (part.group("number") != null) {
      return Double.parseDouble(part.group("number"));
    }
    double under = Double.parseDouble(part.group("under"));
    if (under == 0) {
      throw refused("");
    }
    String whole = part.group("whole");
    double fraction = Double.parseDouble(part.group("over")) / under;
    return whole == null ? fraction : Double.parseDouble(whole) + fraction;
  }

  private double factor(String written) {
    String unit = UnitNames.plain(written);
    return quantity.factor(unit).orElseThrow(() -> refused(whatItIs(unit)));
  }

  private static String whatItIs(String unit) {
    return Stream.of(Quantity.values())
        .filter(other -> other.factor(unit).isPresent())
        .findFirst()
        .map(other -> ", which is " + other.what())
        .orElse("");
  }

  private Faulty refused(String whatItIs) {
    boolean below = text != null && text.matches(BELOW_ZERO);
    return refused(whatItIs, below ? quantity.right("positive") : quantity.right());
  }

  private Faulty refused(String whatItIs, String right) {
    return new Faulty(List.of(new Fault("", Show.text(text) + whatItIs, right)));
  }
}
