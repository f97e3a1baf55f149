package strickle.store;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Where a studio's data lie when nothing else is asked for: where the platform keeps such. */
public final class DataFolder {

  private DataFolder() {}

  /**
   * The folder by the platform's convention: {@code %APPDATA%\Strickle} on Windows, {@code
   * ~/Library/Application Support/Strickle} on macOS, {@code $XDG_DATA_HOME/strickle} or {@code
   * ~/.local/share/strickle} elsewhere (XDG Base Directory Specification 0.8).
   *
   * @param system the name of the operating system
   * @param home the person's home folder
   * @param variables the variables of the process
   */
  public static Path usual(String system, Path home, Map<String, String> variables) {
    String name = system.toLowerCase(Locale.ROOT);
    if (name.startsWith("windows")) {
      return variable(variables, "APPDATA")
          .orElse(home.resolve("AppData").resolve("Roaming"))
          .resolve("Strickle");
    }
    if (name.startsWith("mac")) {
      return home.resolve("Library").resolve("Application Support").resolve("Strickle");
    }
    return variable(variables, "XDG_DATA_HOME")
        .filter(Path::isAbsolute)
        .orElse(home.resolve(".local").resolve("share"))
        .resolve("strickle");
  }

  private static Optional<Path> variable(Map<String, String> variables, String name) {
    return Optional.ofNullable(variables.get(name)).filter(value -> !value.isEmpty()).map(Path::of);
  }
}
