package strickle.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.options.FilePayload;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a reader chooses for this machine, the studio's own data, and the studio as a whole. */
@BrowserTest
class SettingsTest {

  @TempDir static Path folder;

  private static StudioHouse house;

  @BeforeAll
  static void begin() {
    house = StudioHouse.demo(folder);
  }

  @AfterAll
  static void end() {
    house.close();
  }

  @Test
  void unitsThemeAndWritingHoldForThisReaderOnlyAndOutliveAReload() {
    String book = house.get("/api/book");
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/settings");
      screen.field("Units").selectOption("Ounces, pounds, gallons, inches, °F");
      screen.field("Light or dark").selectOption("Dark");
      screen.field("Dates, numbers and money are written").selectOption("German (Germany)");
      screen.open("/settings");
      // 2731 g are 6.02 lb and 18 °C are 64.4 °F; a comma parts whole from parts in German.
      assertThat(screen.text(Pattern.compile("^So it looks: 6,02.lb.*64,4.°F.*1\\.234,50")))
          .isVisible();
      assertEquals(
          "dark",
          screen.page().evaluate("() => getComputedStyle(document.documentElement).colorScheme"));
      screen.picture("settings-us").isAccessible();
      assertEquals(book, house.get("/api/book"));
    }
  }

  @Test
  void theStudiosOwnDataAreSavedAndTakenBack() {
    try (Screen screen = Screen.of(house, Look.NARROW)) {
      screen.open("/settings");
      screen.field("What an hour of work is paid").fill("31.50");
      screen.button("Save").first().click();
      assertThat(screen.text("The studio’s own data are saved.")).isVisible();
      assertTrue(house.get("/api/studio").contains("31.5"));
      screen.button("Take it back").click();
      assertThat(screen.field("What an hour of work is paid")).hasValue("24");
    }
  }

  @Test
  void theStudioIsSavedAsAFileAndPutInPlaceAgain() throws IOException {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/settings");
      Download file = screen.page().waitForDownload(() -> screen.button("Save as a file").click());
      assertEquals("studio-2027-03-01.json", file.suggestedFilename());
      String before = house.get("/api/book");
      String form = house.get("/api/forms/drum-a");
      String tag =
          house.send("GET", "/api/forms/drum-a", "").headers().firstValue("ETag").orElse("");
      house.send(
          "PUT",
          "/api/forms/drum-a",
          form.replace("large drum", "drum"),
          "If-Match",
          tag,
          "Content-Type",
          "application/json");
      put(screen, "studio.json", Files.readString(file.path()));
      screen.button("Put it in place").click();
      assertThat(screen.text("The file is in place.")).isVisible();
      assertEquals(before, house.get("/api/book"));
    }
  }

  @Test
  void whatIsNoStudioIsRefusedAndChangesNothing() {
    String before = house.get("/api/book");
    try (Screen screen = Screen.of(house, Look.NARROW)) {
      screen.open("/settings");
      put(screen, "notes.txt", "buy sand");
      screen.button("Put it in place").click();
      assertThat(screen.text(Pattern.compile("it is no JSON"))).isVisible();
      put(screen, "book.json", "{\"format\": \"strickle-studio/1\", \"book\": {}}");
      screen.button("Put it in place").click();
      assertThat(screen.page().locator("s-trouble")).containsText("studio: found nothing");
      screen.picture("settings-refused").isAccessible();
      assertEquals(before, house.get("/api/book"));
      screen.forgetTroubles(); // the browser notes the refusal too
    }
  }

  @Test
  void aCalendarProgramReadsThePlanUntilItsAddressIsEnded() {
    house.workByAPlan();
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/settings");
      screen.button("Make an address").click();
      String address = screen.page().getByLabel(Pattern.compile("^Subscribe to this")).inputValue();
      String path = URI.create(address).getPath();
      assertTrue(house.get(path).startsWith("BEGIN:VCALENDAR"));
      screen.picture("settings-calendar").isAccessible();
      screen.button("End the address").click();
      assertThat(screen.text("The address shows nothing any more.")).isVisible();
      assertFalse(house.get(path).startsWith("BEGIN:VCALENDAR"));
    }
  }

  private static void put(Screen screen, String name, String text) {
    screen
        .page()
        .locator("s-studio-file input[type=file]")
        .setInputFiles(
            new FilePayload(name, "application/json", text.getBytes(StandardCharsets.UTF_8)));
  }
}
