package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class HelpTest {

  static Set<String> commands() {
    return Shell.commands();
  }

  @ParameterizedTest
  @MethodSource("commands")
  void everyCommandShowsExamplesOfItself(String command) {
    String help = Shell.run(command, "--help").done().out();
    List<String> examples =
        help.lines().dropWhile(line -> !line.equals("Examples:")).skip(1).toList();
    assertTrue(
        examples.stream().filter(line -> line.startsWith("  strickle " + command)).count() >= 2,
        help);
  }

  @Test
  void theProgramNamesAllItsCommandsAndExitCodes() {
    String help = Shell.run("--help").done().out();
    for (String command : commands()) {
      assertTrue(help.contains("\n  " + command + " "), command + " in " + help);
    }
    for (String word : List.of("Examples:", "Exit codes:")) {
      assertTrue(help.contains(word), word + " in " + help);
    }
  }

  @Test
  void helpFitsATerminalOfNinetyColumns() {
    fits("--help");
    commands().forEach(command -> fits(command, "--help"));
  }

  private static void fits(Object... words) {
    Shell.run(words).done().out().lines().forEach(line -> assertTrue(line.length() <= 90, line));
  }

  @Test
  void theVersionIsThatOfTheBuild() throws IOException {
    String pom = Files.readString(Shell.root().resolve("pom.xml"));
    assertTrue(pom.contains("<version>" + Version.NUMBER + "</version>"), Version.NUMBER);
    String printed = Shell.run("--version").done().out().strip();
    assertEquals("strickle " + Version.NUMBER, printed);
  }
}
