package strickle.json;

import java.util.Arrays;

/** The limits that the parser keeps, in words. The last one fits where no other does. */
enum Excess {
  DEPTH("depth", "nesting of { and [", Limits.DEPTH, "levels"),
  NAME("Name length", "a field name", Limits.NAME_LENGTH, "characters"),
  NUMBER("Number value length", "a number", Limits.NUMBER_LENGTH, "digits"),
  TEXT("String value length", "a text or number", Limits.TEXT_LENGTH, "characters"),
  TOKENS("", "a file", Limits.TOKENS, "names, values and brackets");

  private final String sign;
  private final String thing;
  private final int limit;
  private final String unit;

  Excess(String sign, String thing, int limit, String unit) {
    this.sign = sign;
    this.thing = thing;
    this.limit = limit;
    this.unit = unit;
  }

  /** The limit that a message of the parser is about. */
  static Excess of(String message) {
    return Arrays.stream(values())
        .filter(excess -> message.contains(excess.sign))
        .findFirst()
        .orElseThrow();
  }

  /** What was found. */
  String found() {
    return thing + " of more than " + limit + " " + unit;
  }

  /** What would be right, as a clause. */
  String right() {
    return "at most " + limit + " " + unit;
  }
}
