package strickle.json;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Breaks JSON in random ways: cuts, inserts, swaps and changes bytes, and replaces values. */
final class Mutator {

  private static final Pattern VALUE =
      Pattern.compile("(?<=[:\\[,] ?)(\"[^\"]*\"(?!:)|-?[0-9.]+|null|\\[[^\\[\\]]*\\])");

  private static final List<String> VALUES =
      List.of(
          "0",
          "-1",
          "1e999",
          "-1e-999999999",
          "1e2147483648",
          "2147483648",
          "0.1",
          "1e15",
          "null",
          "true",
          "[]",
          "{}",
          "[[]]",
          "[null]",
          "{\"\": 0}",
          "\"\"",
          "\" \"",
          "\"\\u0000\"",
          "\"\\ud800\"",
          "\"ana\"",
          "\"slate\"",
          "\"..\"",
          "\"../book.json\"",
          "\"09:00-12:00\"",
          "\"2027-04-05T00:00\"",
          "\"9999-12-31T23:59\"",
          "\"CLP\"",
          "\"XXX\"",
          "\"Etc/UTC\"",
          "\"+05:00\"",
          "NaN",
          "\"" + "x".repeat(300) + "\"",
          "9".repeat(400),
          "'",
          ",",
          "");

  private static final List<String> PIECES =
      List.of("{", "}", "[", "]", ",", ":", "\"", "\\", "0", "-", "e", "\n", "/*", "\u0000", "é");

  private final Random random;

  /** A mutator that always makes the same of the same seed. */
  Mutator(long seed) {
    random = new Random(seed);
  }

  /** The bytes of a text with something done to it. */
  byte[] mutated(String whole) {
    if (random.nextInt(3) == 0) {
      return withAnotherValue(whole).getBytes(StandardCharsets.UTF_8);
    }
    byte[] bytes = whole.getBytes(StandardCharsets.UTF_8);
    for (int times = 1 + random.nextInt(3); times > 0; times--) {
      bytes = changed(bytes);
    }
    return bytes;
  }

  private byte[] changed(byte[] bytes) {
    int at = random.nextInt(bytes.length - 1);
    return switch (random.nextInt(4)) {
      case 0 -> replaced(bytes, at, random.nextInt(Math.min(40, bytes.length - at)), new byte[0]);
      case 1 -> replaced(bytes, at, 0, piece());
      case 2 -> replaced(bytes, at, 1, new byte[] {(byte) random.nextInt(256)});
      default -> replaced(bytes, at, 2, new byte[] {bytes[at + 1], bytes[at]});
    };
  }

  private byte[] piece() {
    return PIECES.get(random.nextInt(PIECES.size())).getBytes(StandardCharsets.UTF_8);
  }

  private static byte[] replaced(byte[] bytes, int at, int length, byte[] by) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(bytes, 0, at);
    out.writeBytes(by);
    out.write(bytes, at + length, bytes.length - at - length);
    return out.toByteArray();
  }

  private String withAnotherValue(String whole) {
    List<MatchResult> values = VALUE.matcher(whole).results().toList();
    MatchResult value = values.get(random.nextInt(values.size()));
    String other = VALUES.get(random.nextInt(VALUES.size()));
    return whole.substring(0, value.start()) + other + whole.substring(value.end());
  }
}
