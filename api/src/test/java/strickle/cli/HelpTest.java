package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HelpTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "plan",
        "replan",
        "promise",
        "bound",
        "what-if",
        "price",
        "volume",
        "batch",
        "ballast",
        "curing",
        "drying",
        "room",
        "coat",
        "cautions",
        "lift",
        "check",
        "demo"
      })
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
    for (String word :
        List.of(
            "plan",
            "replan",
            "promise",
            "bound",
            "what-if",
            "price",
            "volume",
            "batch",
            "ballast",
            "curing",
            "drying",
            "room",
            "coat",
            "cautions",
            "lift",
            "check",
            "demo",
            "Examples:",
            "Exit codes:")) {
      assertTrue(help.contains(word), word + " in " + help);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "--help",
        "plan --help",
        "replan --help",
        "promise --help",
        "what-if --help",
        "price --help",
        "volume --help",
        "batch --help",
        "ballast --help",
        "curing --help",
        "drying --help",
        "room --help",
        "coat --help",
        "cautions --help",
        "lift --help",
        "check --help",
        "demo --help"
      })
  void helpFitsATerminalOfNinetyColumns(String words) {
    Shell.run((Object[]) words.split(" "))
        .done()
        .out()
        .lines()
        .forEach(line -> assertTrue(line.length() <= 90, line));
  }

  @Test
  void theVersionIsThatOfTheBuild() throws IOException {
    String pom = Files.readString(Shell.root().resolve("pom.xml"));
    assertTrue(pom.contains("<version>" + Version.NUMBER + "</version>"), Version.NUMBER);
    String printed = Shell.run("--version").done().out().strip();
    assertEquals("strickle " + Version.NUMBER, printed);
  }
}
