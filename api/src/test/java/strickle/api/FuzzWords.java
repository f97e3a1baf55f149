package strickle.api;

import java.util.List;
import java.util.Random;

/** What requests are spoilt with. */
final class FuzzWords {

  private static final List<String> IDS =
      List.of(
          "rack",
          "rack-9",
          "1",
          "2",
          "0",
          "none",
          "%00",
          "..",
          "%2e%2e",
          "%c3%a4",
          "a%20b",
          "",
          "x".repeat(300),
          "%ff",
          "'",
          "%22",
          ";",
          "*");

  private static final List<String> SHARDS =
      List.of(
          "{",
          "}",
          "[",
          "]",
          "null",
          "-1",
          "1e999",
          "\"",
          "\\u0000",
          "true",
          ",",
          ":",
          "99999999999999999999",
          "0.1",
          "\"\"",
          "{}",
          "[]",
          "\ud83d");

  private static final List<String> METHODS =
      List.of("HEAD", "OPTIONS", "PATCH", "TRACE", "get", "FOO");

  private static final int LONGEST_LIST = 5000;

  private final Random random;

  FuzzWords(Random random) {
    this.random = random;
  }

  /** A part of a path, as it is written there. */
  String id() {
    return oneOf(IDS);
  }

  /** A method that is not the right one. */
  String method() {
    return oneOf(METHODS);
  }

  /** Something after the question mark. */
  String query() {
    return "?" + oneOf(List.of("limit", "after", "x", "begin", "plan")) + "=" + id();
  }

  /** Header lines, some of which make sense. */
  String headers() {
    return switch (random.nextInt(9)) {
      case 0 -> "If-Match: *\r\n";
      case 1 -> "If-Match: \"r" + random.nextInt(50) + "\"\r\n";
      case 2 -> "Idempotency-Key: k" + random.nextInt(5) + "\r\nIf-Match: *\r\n";
      case 3 -> "Content-Type: text/" + oneOf(SHARDS).replace("\ud83d", "x") + "\r\n";
      case 4 -> "Cookie: strickle-session=" + random.nextLong() + "\r\nIf-Match: *\r\n";
      case 5 -> "If-None-Match: *\r\n";
      case 6 -> "Accept: text/html\r\nRange: bytes=0-1\r\nExpect: nothing\r\n";
      case 7 -> "Accept-Encoding: br\r\nIf-Match: W/\"x\", *\r\n";
      default -> "If-Match: *\r\nStrickle-Who: " + "m".repeat(random.nextInt(300)) + "\r\n";
    };
  }

  /** A body with a few places spoilt. */
  String spoilt(String body) {
    StringBuilder text = new StringBuilder(body);
    for (int i = random.nextInt(4); i >= 0 && !text.isEmpty(); i--) {
      spoil(text, random.nextInt(text.length()));
    }
    return text.toString();
  }

  private void spoil(StringBuilder text, int at) {
    switch (random.nextInt(5)) {
      case 0 -> text.insert(at, oneOf(SHARDS));
      case 1 -> text.deleteCharAt(at);
      case 2 -> text.setLength(at);
      case 3 -> text.replace(at, Math.min(text.length(), at + 3), oneOf(SHARDS));
      default -> {
        if (random.nextInt(200) == 0) {
          text.insert(at, "[0" + ",0".repeat(random.nextInt(LONGEST_LIST)) + "]");
        }
      }
    }
  }

  /** One of some. */
  <T> T oneOf(List<T> all) {
    return all.get(random.nextInt(all.size()));
  }
}
