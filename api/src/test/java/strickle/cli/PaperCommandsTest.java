package strickle.cli;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Day sheets, price lists and calendars from the command line. */
class PaperCommandsTest {

  @TempDir Path folder;
  private Path plan;
  private Path out;

  @BeforeEach
  void planTheDemo() {
    plan = folder.resolve("week.json");
    out = folder.resolve("out");
    Shell.run("plan", "demo", "--schedules", "5", "--out", plan).done();
  }

  private Shell.Result run(Object... arguments) {
    return Shell.run(arguments);
  }

  @Test
  void daySheetsAreAPdf() throws IOException {
    String told = run("sheet", "demo", "--plan", plan, "--out", out).done().out();
    assertEquals("The day sheets are written to " + out + ".\n", told);
    byte[] all = Files.readAllBytes(out);
    assertTrue(new String(all, ISO_8859_1).startsWith("%PDF-"));
    run("sheet", "demo", "--plan", plan, "--out", out).done();
    assertArrayEquals(all, Files.readAllBytes(out));
    run("sheet", "demo", "--plan", plan, "--day", "2027-03-01", "--person", "maren", "--out", out)
        .done();
    assertTrue(Files.size(out) < all.length);
  }

  @Test
  void theCalendarIsOfThisMinute() throws IOException {
    run("calendar", "demo", "--plan", plan, "--out", out).done();
    String text = Files.readString(out);
    assertTrue(text.startsWith("BEGIN:VCALENDAR\r\n"), text);
    assertTrue(text.contains("DTSTAMP:20270405T043000Z\r\n"), text);
  }

  @Test
  void priceListsAreAPdfOrATable() throws IOException {
    run("price-list", "demo", "--paper", "letter", "--out", out).done();
    assertTrue(new String(Files.readAllBytes(out), ISO_8859_1).startsWith("%PDF-"));
    run("price-list", "demo", "--csv", "--out", out).done();
    assertTrue(Files.readString(out).startsWith("piece,name,mix,currency,price,channelPrice\r\n"));
  }

  @Test
  void whatIsWrongIsToldAndNothingIsWritten() {
    Shell.Result options =
        run("sheet", "demo", "--plan", plan, "--day", "1.3.", "--paper", "a3", "--out", out);
    assertEquals(2, options.code());
    assertEquals(
        List.of(
            "--day: found \"1.3.\"; right would be a date such as 2027-04-05",
            "--paper: found \"a3\"; right would be a4 or letter"),
        options.faults());
    refused("--person", "sheet", "demo", "--plan", plan, "--person", "x", "--out", out);
    refused("--person", "calendar", "demo", "--plan", plan, "--person", "x", "--out", out);
    refused("--channel", "price-list", "demo", "--channel", "x", "--out", out);
    refused("--out", "sheet", "demo", "--plan", plan, "--out", plan);
    assertFalse(Files.exists(out));
  }

  private void refused(String option, Object... arguments) {
    Shell.Result result = run(arguments);
    assertEquals(2, result.code());
    assertEquals(List.of(option), result.paths());
  }
}
