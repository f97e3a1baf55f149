package strickle.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;

/** The example book as a file has it, whole or with one thing changed. */
final class ExampleBook {

  /** A folder without any mesh. */
  static final Path NOWHERE = Path.of("no-such-folder");

  private ExampleBook() {}

  /** The whole file. */
  static String json() {
    try (InputStream in = ExampleBook.class.getResourceAsStream("/example-book.json")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** The file with one part replaced by another; the part must stand there exactly once. */
  static String with(String part, String other) {
    String json = json();
    int first = json.indexOf(part);
    assertNotEquals(-1, first, part);
    assertEquals(first, json.lastIndexOf(part), "twice: " + part);
    return json.replace(part, other);
  }

  /** The book that a text holds. */
  static Book parse(String json) {
    return BookFile.parse(json, Meshes.in(NOWHERE));
  }

  /** All faults of a text, which must have some. */
  static List<Fault> faults(String json) {
    return assertThrows(Faulty.class, () -> parse(json)).faults();
  }

  /** The only fault of a text, as a person reads it. */
  static String fault(String json) {
    List<Fault> faults = faults(json);
    assertEquals(1, faults.size(), faults.toString());
    return faults.get(0).toString();
  }

  /** The only fault of the file with one part replaced by another, as a person reads it. */
  static String fault(String part, String other) {
    return fault(with(part, other));
  }

  /** The path of the only fault of the file with one part replaced by another. */
  static String path(String part, String other) {
    List<Fault> faults = faults(with(part, other));
    assertEquals(1, faults.size(), faults.toString());
    return faults.get(0).path();
  }
}
