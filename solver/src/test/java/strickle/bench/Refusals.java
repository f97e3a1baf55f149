package strickle.bench;

import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.Consumer;
import strickle.book.Faulty;

/** Asserts that texts are refused once something in them has been changed. */
final class Refusals {

  private Refusals() {}

  /** A line break is written as a semicolon in what is replaced and in what comes instead. */
  static void assertRefused(
      String message, String text, String right, String wrong, Consumer<String> reader) {
    String changed = text.replace(right.replace(';', '\n'), wrong.replace(';', '\n'));
    assertNotEquals(text, changed);
    Faulty refused = assertThrows(Faulty.class, () -> reader.accept(changed));
    assertTrue(refused.getMessage().contains(message), refused::getMessage);
  }
}
