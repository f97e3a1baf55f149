package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Command lines that cannot be used: exit code 2, nothing on standard output, and a way out. */
class WrongCommandLinesTest {

  @Test
  void aCommandIsNeeded() {
    Shell.Result result = refused();
    assertTrue(result.err().contains("check, demo or serve"), result.err());
  }

  @Test
  void anUnknownCommandIsNamedWithTheNearest() {
    Shell.Result result = refused("plann", "demo");
    assertTrue(result.err().contains("not understood: plann"), result.err());
    assertTrue(result.err().contains("maybe you meant plan"), result.err());
  }

  @Test
  void anUnknownOptionIsNamedWithTheNearest() {
    Shell.Result result = refused("plan", "demo", "--sedd", "3");
    assertTrue(result.err().contains("--sedd"), result.err());
    assertTrue(result.err().contains("--seed"), result.err());
    assertTrue(result.err().contains("\"strickle plan --help\""), result.err());
  }

  @Test
  void aBookIsNeeded() {
    assertTrue(refused("plan").err().contains("BOOK"));
  }

  @Test
  void oneBookIsEnough() {
    assertTrue(refused("price", "demo", "other.json").err().contains("other.json"));
  }

  @Test
  void anOptionGivenTwiceIsRefused() {
    assertTrue(refused("plan", "demo", "--seed", "1", "--seed", "2").err().contains("--seed"));
  }

  @Test
  void anOptionWithoutItsValueIsRefused() {
    assertTrue(refused("plan", "demo", "--out").err().contains("--out"));
  }

  @Test
  void schedulesAndSecondsExcludeEachOther() {
    Shell.Result result = refused("plan", "demo", "--schedules", "5", "--seconds", "5");
    assertEquals(
        List.of(
            "--schedules: found \"5\"; right would be either --schedules or --seconds, not both"),
        result.faults());
  }

  @ParameterizedTest
  @CsvSource({
    "--seconds, 0",
    "--seconds, 3601",
    "--seconds, 2.5",
    "--seconds, ten",
    "--schedules, 0",
    "--schedules, 1000000001",
    "--schedules, 99999999999999999999",
    "--schedules, -5",
    "--seed, 1.0",
    "--seed, 9223372036854775808",
    "--from, 2027-02-29",
    "--from, 05.04.2027",
    "--from, 2027-04-05T25:00",
    "--from, 2027-04-05T09:00-04:00",
    "--from, 2027-4-5",
    "--from, 1969-12-31",
    "--from, 2200-01-01",
    "--from, tomorrow",
    "--cover, 49.9",
    "--cover, 100",
    "--cover, 90%",
  })
  void aValueThatCannotBeIsToldWithWhatWouldBeRight(String option, String value) {
    Shell.Result result = refused("plan", "demo", option, value);
    assertEquals(1, result.faults().size(), result.err());
    String start = option + ": found \"" + value + "\"; right would be ";
    assertTrue(result.err().startsWith(start), result.err());
  }

  @ParameterizedTest
  @CsvSource({
    "--margin, 100",
    "--margin, -1",
    "--margin, 0.12345",
    "--margin, a third",
    "--margin, 1e5",
    "--ending, 1",
    "--ending, 0.999",
    "--ending, -0.5",
    "--ending, .99",
  })
  void aPriceThatCannotBeAskedIsToldWithWhatWouldBeRight(String option, String value) {
    Shell.Result result = refused("price", "demo", option, value);
    assertTrue(result.err().startsWith(option + ": found "), result.err());
    assertTrue(result.err().contains("; right would be "), result.err());
  }

  @ParameterizedTest
  @CsvSource({"--castings, 0", "--castings, 2001", "--castings, many", "--seed, x"})
  void aSizeThatCannotBeMadeIsToldWithWhatWouldBeRight(String option, String value) {
    String other = option.equals("--seed") ? "--castings" : "--seed";
    Shell.Result result = refused("demo", option, value, other, "1");
    assertTrue(result.err().startsWith(option + ": found "), result.err());
  }

  @Test
  void allWrongValuesAreToldAtOnce() {
    Shell.Result result =
        refused("plan", "demo", "--from", "soon", "--seconds", "0", "--seed", "x");
    assertEquals(List.of("--from", "--seconds", "--seed"), result.paths());
  }

  @Test
  void aValueIsNeverTakenForAFileOfArguments() {
    assertTrue(refused("plan", "@book.json").err().contains("@book.json"));
  }

  private static Shell.Result refused(Object... arguments) {
    Shell.Result result = Shell.run(arguments);
    assertEquals(2, result.code(), result.err());
    assertEquals("", result.out());
    assertFalse(result.err().contains("Exception"), result.err());
    assertFalse(result.err().contains("\tat "), result.err());
    return result;
  }
}
