package strickle.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** Opens an address in the browser of whoever sits at this machine. */
final class Browser {

  private Browser() {}

  /**
   * The command that does it.
   *
   * @param system the name of the operating system, as Java gives it
   */
  static List<String> command(String system, String address) {
    String name = system.toLowerCase(Locale.ROOT);
    if (name.startsWith("windows")) {
      return List.of("rundll32", "url.dll,FileProtocolHandler", address);
    }
    return List.of(name.startsWith("mac") ? "open" : "xdg-open", address);
  }

  /**
   * Starts a command and lets it be.
   *
   * @return whether there was such a program to start
   */
  static boolean start(List<String> command) {
    try {
      new ProcessBuilder(command)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .redirectError(ProcessBuilder.Redirect.DISCARD)
          .start();
      return true;
    } catch (IOException none) {
      return false;
    }
  }
}
