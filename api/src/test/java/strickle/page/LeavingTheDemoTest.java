package strickle.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.Locator;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What belongs to the made-up studio is of no use in one's own, and the other way round. */
@BrowserTest
class LeavingTheDemoTest {

  private static final String[] JSON = {"If-Match", "*", "Content-Type", "application/json"};

  @TempDir Path folder;

  @Test
  void thePlansOfTheMadeUpStudioAreOfferedInItAlone() {
    try (StudioHouse house = StudioHouse.working(folder);
        Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/history");
      assertThat(plans(screen)).hasCount(1);
      screen.button("Leave it and begin your own").click();
      assertThat(screen.text("The made-up studio is put away.")).isVisible();
      screen.open("/history");
      assertThat(screen.text("None has been laid out yet.")).isVisible();
      assertThat(plans(screen)).hasCount(0);
      screen.picture("history-own");
      screen.open("/week");
      assertThat(screen.heading("No week is laid out yet")).isVisible();
      assertThat(screen.button(Pattern.compile("^Look at the plan of"))).hasCount(0);
      screen.open("/week?plan=" + firstPlan(house));
      assertThat(screen.heading("No week is laid out yet")).isVisible();
      assertThat(screen.button("Work by the new plan")).hasCount(0);
      assertEquals(200, house.send("POST", "/api/undo", "", JSON).statusCode());
      screen.open("/history");
      assertThat(plans(screen)).hasCount(1);
      assertThat(plans(screen)).containsText("the plan you work by");
    }
  }

  @Test
  void onesOwnPlansFromBeforeAreThereAgainAfterwards() {
    try (StudioHouse house = StudioHouse.demo(folder);
        Screen screen = Screen.of(house, Look.WIDE)) {
      house.takeBook(house.get("/api/book").replace("Gannet Row Studio", "Back Room"));
      house.workByAPlan(1);
      String demo = "{\"name\": \"Back Room\", \"begin\": \"demo\"}";
      assertEquals(200, house.send("POST", "/api/begin", demo, JSON).statusCode());
      screen.open("/history");
      assertThat(plans(screen)).hasCount(0);
      screen.button("Take the last change back").click();
      assertThat(plans(screen)).hasCount(1);
      assertThat(plans(screen)).containsText("the plan you work by");
    }
  }

  @Test
  void aPlanOfAnotherStudiosBookIsNotTakenButToldInPlainWords() {
    try (StudioHouse house = StudioHouse.demo(folder);
        Screen screen = Screen.of(house, Look.NARROW)) {
      house.takeBook(house.get("/api/book").replace("Gannet Row Studio", "Back Room"));
      house.workByAPlan(1);
      String empty = "{\"name\": \"Ash Lane\", \"begin\": \"empty\"}";
      assertEquals(200, house.send("POST", "/api/begin", empty, JSON).statusCode());
      screen.open("/week?plan=" + firstPlan(house));
      assertThat(screen.heading("It cannot be shown")).isVisible();
      assertThat(screen.text(Pattern.compile("another book, that of “Back Room”"))).isVisible();
      assertThat(screen.button("Work by the new plan")).hasCount(0);
      screen.picture("week-of-another").isAccessible();
    }
  }

  @Test
  void aPlanThatCannotBeTakenIsRefusedUnderWordsOfItsOwn() {
    try (StudioHouse house = StudioHouse.working(folder);
        Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/week");
      screen.button("Lay out again").click();
      assertThat(screen.heading("The week is being laid out")).isVisible();
      house.endLaying();
      assertThat(screen.heading("A new plan is ready")).isVisible();
      screen.page().route("**/accept", route -> route.fulfill(Refused.with("Not now.")));
      screen.button("Work by the new plan").click();
      assertThat(screen.heading("The plan could not be taken")).isVisible();
      screen.forgetTroubles();
    }
  }

  private static Locator plans(Screen screen) {
    return screen.page().locator("s-plans li");
  }

  private static String firstPlan(StudioHouse house) {
    Matcher id = Pattern.compile("\"id\": \"([^\"]+)\"").matcher(house.get("/api/plans"));
    return id.find() ? id.group(1) : "none";
  }
}
