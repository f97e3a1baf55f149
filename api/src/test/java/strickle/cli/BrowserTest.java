package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BrowserTest {

  private static final String ADDRESS = "http://localhost:8317/";

  @ParameterizedTest
  @CsvSource({
    "Linux, xdg-open",
    "FreeBSD, xdg-open",
    "Mac OS X, open",
    "Windows 11, rundll32",
  })
  void everySystemHasItsWayToOpenAnAddress(String system, String program) {
    List<String> command = Browser.command(system, ADDRESS);
    assertEquals(program, command.get(0));
    assertEquals(ADDRESS, command.get(command.size() - 1));
  }

  @Test
  void aProgramThatIsNotThereIsNoAccident() {
    assertFalse(Browser.start(List.of("no-such-program-anywhere", ADDRESS)));
    String java = System.getProperty("java.home") + "/bin/java";
    assertTrue(Browser.start(List.of(java, "--version")));
  }
}
