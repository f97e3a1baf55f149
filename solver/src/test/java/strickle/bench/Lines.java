package strickle.bench;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import strickle.book.Fault;
import strickle.book.Faulty;

/** The lines of a text, read one after another; what is wrong is told with its line. */
final class Lines {

  /** A number larger than this is a slip: no problem of a bench is that long. */
  static final int MOST = 999_999;

  private static final String NUMBER = "a whole number from 0 to " + MOST;

  private final String name;
  private final List<String> lines;
  private int read;

  private Lines(String name, List<String> lines) {
    this.name = name;
    this.lines = lines;
  }

  /** The lines of a text; the name is what messages call it. */
  static Lines of(String name, String text) {
    return new Lines(name, text.lines().toList());
  }

  /**
   * The lines of a file.
   *
   * @throws Faulty when it cannot be read
   */
  static Lines of(Path file) {
    try {
      return of(file.toString(), Files.readString(file, UTF_8));
    } catch (IOException unreadable) {
      throw new Faulty(
          List.of(new Fault(file.toString(), "nothing that can be read", "a file of text")));
    }
  }

  /** Whether there is anything but blank lines left. */
  boolean more() {
    while (read < lines.size() && lines.get(read).isBlank()) {
      read++;
    }
    return read < lines.size();
  }

  /** The next line that is not blank, without the blanks around it. */
  String next(String right) {
    if (!more()) {
      throw new Faulty(List.of(new Fault(name, "its end", right)));
    }
    return lines.get(read++).strip();
  }

  /** Reads up to a line that begins with a heading, and returns the rest of that line. */
  String after(String heading) {
    String line = next("a line that begins with \"" + heading + '"');
    while (!line.startsWith(heading)) {
      line = next("a line that begins with \"" + heading + '"');
    }
    return line.substring(heading.length());
  }

  /** The whole numbers of the next line. */
  int[] numbers(String right) {
    return Arrays.stream(cells(next(right), "\\s+")).mapToInt(this::number).toArray();
  }

  /** All whole numbers that are left. */
  int[] allNumbers() {
    int[] numbers = {};
    while (more()) {
      int[] line = numbers("");
      int before = numbers.length;
      numbers = Arrays.copyOf(numbers, before + line.length);
      System.arraycopy(line, 0, numbers, before, line.length);
    }
    return numbers;
  }

  /** The text as a whole number, 0 or more. */
  int number(String text) {
    must(text.matches("[0-9]{1,6}"), text, NUMBER);
    return Integer.parseInt(text);
  }

  /** Refuses the line read last unless the rule holds. */
  void must(boolean holds, Object found, String right) {
    if (!holds) {
      throw new Faulty(List.of(new Fault(name + " line " + read, "\"" + found + '"', right)));
    }
  }

  /** What stands between separators, blanks around it taken away. */
  static String[] cells(String line, String separator) {
    return Arrays.stream(line.split(separator, -1)).map(String::strip).toArray(String[]::new);
  }
}
