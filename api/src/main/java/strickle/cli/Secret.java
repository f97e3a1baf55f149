package strickle.cli;

import java.io.BufferedReader;
import java.io.Console;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Reads a password where nobody else sees it: never from the command line. */
final class Secret {

  private Secret() {}

  /**
   * Asks on the terminal, without showing what is typed; where standard input is none, the first
   * line of it in UTF-8.
   *
   * @return nothing when there is no line
   */
  static Optional<String> read(String question) {
    // Java 21 has no console at all where there is no terminal; later ones have one that is none.
    Optional<Console> console = Optional.ofNullable(System.console()).filter(one -> isTerminal());
    return console.isPresent()
        ? Optional.ofNullable(console.get().readPassword("%s: ", question)).map(String::new)
        : firstLine(System.in);
  }

  private static Optional<String> firstLine(InputStream in) {
    try {
      return Optional.ofNullable(
          new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)).readLine());
    } catch (IOException cannot) {
      throw new UncheckedIOException(cannot);
    }
  }

  private static boolean isTerminal() {
    try {
      return new ProcessBuilder("test", "-t", "0").redirectInput(Redirect.INHERIT).start().waitFor()
          == 0;
    } catch (IOException noSuchCommand) {
      return false;
    } catch (InterruptedException cutOff) {
      Thread.currentThread().interrupt();
      return false;
    }
  }
}
