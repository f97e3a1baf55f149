package strickle.json;

import java.util.Arrays;

/** The ways in which a text can fail to be JSON. The last one fits where no other does. */
enum Slip {
  OPEN_TEXT("closing quote", "a double quote at the end of every text"),
  LINE_IN_TEXT(
      "unquoted character", "a text on one line; \\n stands for a line break, \\t for a tab"),
  ESCAPE("escape", "one of \" \\ / b f n r t after a \\, or u and four digits 0-9 a-f"),
  NO_NAME("double-quote to start", "a field name in double quotes, and no comma before a }"),
  NO_COLON("colon", "a colon (:) between a field's name and its value"),
  NO_COMMA_IN_OBJECT("comma to separate Object", "a comma or }"),
  NO_COMMA_IN_LIST("comma to separate Array", "a comma or ]"),
  OPEN_OBJECT("expected '}'", "a } first, for the object that is still open"),
  OPEN_LIST("expected ']'", "a ] first, for the list that is still open"),
  NUMBER("numeric value", "a number such as 12, 0.5 or -3"),
  COMMENT("comment", "no comments, as JSON has none"),
  NO_VALUE("", "a value: a text in double quotes, a number, true, false, null, { or [");

  private final String sign;
  private final String right;

  Slip(String sign, String right) {
    this.sign = sign;
    this.right = right;
  }

  /** The slip that a message of the parser is about. */
  static Slip of(String message) {
    return Arrays.stream(values())
        .filter(slip -> message.contains(slip.sign))
        .findFirst()
        .orElseThrow();
  }

  /** What would be right, as a clause. */
  String right() {
    return right;
  }

  /** Whether the parser may only have noticed at the character after the word to blame. */
  boolean noticedLate() {
    return this == NUMBER || this == NO_VALUE;
  }

  /** Whether it is inside a text in quotes, where a single character is to blame. */
  boolean insideText() {
    return this == LINE_IN_TEXT || this == ESCAPE;
  }
}
