package strickle.json;

import java.math.BigDecimal;
import java.util.function.Function;
import tools.jackson.databind.JsonNode;

/**
 * Reads numbers: whole ones, measures as {@code double}, amounts as {@link BigDecimal}.
 *
 * @param <T> the kind of number
 */
final class NumberReader<T extends Number> implements ValueReader<T> {

  // Amounts stay far below this, and a number of more digits would only cost time.
  private static final int MOST_DIGITS = 30;

  private final String right;
  private final Function<JsonNode, T> narrow;

  private NumberReader(String right, Function<JsonNode, T> narrow) {
    this.right = right;
    this.narrow = narrow;
  }

  /** Whole numbers that fit an {@code int}; 3.0 is whole, 2.5 is not. */
  static NumberReader<Integer> ofInt() {
    return new NumberReader<>(
        "a whole number", node -> (int) whole(node, Integer.MIN_VALUE, Integer.MAX_VALUE));
  }

  /** Whole numbers that fit a {@code long}. */
  static NumberReader<Long> ofLong() {
    return new NumberReader<>(
        "a whole number", node -> whole(node, Long.MIN_VALUE, Long.MAX_VALUE));
  }

  /** Measures; a number too large for a {@code double} is refused. */
  static NumberReader<Double> ofDouble() {
    return new NumberReader<>("a number", NumberReader::measure);
  }

  /** Amounts, exact and without an exponent; the decimals written are kept. */
  static NumberReader<BigDecimal> ofDecimal() {
    return new NumberReader<>("a number", NumberReader::amount);
  }

  @Override
  public T read(JsonNode node) {
    if (!node.isNumber()) {
      throw Findings.refusal(Shown.of(node), right);
    }
    return narrow.apply(node);
  }

  @Override
  public String right() {
    return right;
  }

  private static long whole(JsonNode node, long least, long most) {
    BigDecimal value = node.decimalValue();
    boolean huge = digitsBeforePoint(value) > MOST_DIGITS;
    if (!huge && value.stripTrailingZeros().scale() > 0) {
      throw Findings.refusal(Shown.of(node), "a whole number");
    }
    if (huge
        || value.compareTo(BigDecimal.valueOf(least)) < 0
        || value.compareTo(BigDecimal.valueOf(most)) > 0) {
      throw Findings.refusal(Shown.of(node), "a whole number from " + least + " to " + most);
    }
    return value.signum() == 0 ? 0 : value.longValueExact();
  }

  private static double measure(JsonNode node) {
    double value = node.decimalValue().doubleValue();
    if (!Double.isFinite(value)) {
      throw Findings.refusal(Shown.of(node), "a number of an ordinary size");
    }
    return value + 0.0; // -0.0 becomes 0.0, as JSON readers do not agree on a negative zero
  }

  private static BigDecimal amount(JsonNode node) {
    BigDecimal value = node.decimalValue();
    if (value.signum() == 0) {
      return BigDecimal.ZERO.setScale(Math.clamp(value.scale(), 0, MOST_DIGITS));
    }
    if (digitsBeforePoint(value) > MOST_DIGITS || value.scale() > MOST_DIGITS) {
      throw Findings.refusal(
          Shown.of(node), "a number with at most 30 digits before and after the point");
    }
    return value.scale() < 0 ? value.setScale(0) : value;
  }

  // Looks at the exponent only: writing out 1e999999999 would take all memory.
  private static long digitsBeforePoint(BigDecimal value) {
    return value.signum() == 0 ? 0 : (long) value.precision() - value.scale();
  }
}
