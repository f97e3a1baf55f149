package strickle.cli;

import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;

/** Finds out whether somebody is watching. */
final class Terminal {

  private Terminal() {}

  /**
   * Whether standard error is a terminal. Java can tell only of input and output together, so the
   * POSIX command {@code test} is asked; where there is none, nobody is watching.
   */
  static boolean onStandardError() {
    try {
      return new ProcessBuilder("test", "-t", "2").redirectError(Redirect.INHERIT).start().waitFor()
          == 0;
    } catch (IOException noSuchCommand) {
      return false;
    } catch (InterruptedException cutOff) {
      Thread.currentThread().interrupt();
      return false;
    }
  }
}
