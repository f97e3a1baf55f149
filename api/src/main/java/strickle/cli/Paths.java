package strickle.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import strickle.book.Fault;
import strickle.book.Faulty;

/** Makes paths of what was given. */
final class Paths {

  private Paths() {}

  /**
   * The path that a text names.
   *
   * @param argument the argument it was given for
   * @throws Faulty when no file could have such a path
   */
  static Path of(String argument, String text, String right) {
    try {
      return Path.of(text);
    } catch (InvalidPathException impossible) {
      throw new Faulty(List.of(new Fault(argument, '"' + text + '"', right)));
    }
  }

  /**
   * The path of a file that is to be read.
   *
   * @param argument the argument it was given for
   * @throws Faulty when the text is blank, or no file could have such a path
   */
  static Path ofFile(String argument, String text, String right) {
    if (text.isBlank()) {
      throw new Faulty(List.of(new Fault(argument, "nothing", right)));
    }
    return of(argument, text, right);
  }
}
