package strickle.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was done to the studio, taken back and put in again; and kept states to go back to. */
@BrowserTest
class HistoryTest {

  private static final String[] JSON = {"Content-Type", "application/json"};

  /** Whether what has focus, through all shadows, says this. */
  private static final String HAS_FOCUS =
      """
      words => {
        let e = document.activeElement;
        while (e?.shadowRoot?.activeElement) { e = e.shadowRoot.activeElement; }
        return e?.textContent === words;
      }
      """;

  @TempDir Path folder;

  private StudioHouse house;
  private String before;

  @BeforeEach
  void begin() {
    house = StudioHouse.demo(folder);
    before = house.get("/api/forms/drum-a");
    change("large drum", "drum of oak");
  }

  @AfterEach
  void end() {
    house.close();
  }

  private void change(String from, String to) {
    String tag = house.send("GET", "/api/forms/drum-a", "").headers().firstValue("ETag").orElse("");
    String form = house.get("/api/forms/drum-a").replace(from, to);
    int status =
        house
            .send(
                "PUT",
                "/api/forms/drum-a",
                form,
                "If-Match",
                tag,
                "Content-Type",
                "application/json")
            .statusCode();
    assertEquals(200, status);
  }

  @Test
  void theLastChangeIsTakenBackAndPutInAgain() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/history");
      screen.button("Take the last change back").click();
      assertThat(screen.text("The last change is taken back.")).isVisible();
      assertEquals(before, house.get("/api/forms/drum-a"));
      assertThat(screen.text(Pattern.compile("^took back line"))).isVisible();
      screen.button("Put it in again").click();
      assertThat(screen.text("It is in again.")).isVisible();
      assertTrue(house.get("/api/forms/drum-a").contains("drum of oak"));
      screen.picture("history-undone").isAccessible();
    }
  }

  @Test
  void aLineOpensToWhatStoodThereBeforeAndAfterAndTheAddressLeadsToIt() {
    try (Screen screen = Screen.of(house, Look.NARROW)) {
      screen.open("/history");
      screen.page().locator("s-history-line summary").first().click();
      assertThat(screen.page().locator("s-history-line details[open]")).containsText("drum of oak");
      screen.page().reload();
      screen.settled();
      assertThat(screen.page().locator("s-history-line details[open]")).containsText("large drum");
      screen.picture("history-line").isAccessible();
    }
  }

  @Test
  void aKeptStateIsGoneBackToAndThatIsTakenBackToo() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/history");
      screen.field("Why, in a few words").fill("before the cold");
      screen.button("Keep the studio as it is").click();
      assertThat(screen.text("It is kept.")).isVisible();
      change("drum of oak", "drum of ash");
      screen.page().waitForResponse("**/api/book", screen::returnTo);
      screen
          .page()
          .locator("s-snapshots li")
          .filter(new Locator.FilterOptions().setHasText("before the cold"))
          .getByText("Go back to this")
          .click();
      screen.picture("history-go-back").isAccessible();
      screen.button("Go back to this").last().click();
      assertThat(screen.text(Pattern.compile("^The studio is as it was"))).isVisible();
      assertTrue(house.get("/api/forms/drum-a").contains("drum of oak"));
      screen.button("Take it back").click();
      assertThat(screen.text("It is taken back.")).isVisible();
      assertTrue(house.get("/api/forms/drum-a").contains("drum of ash"));
    }
  }

  @Test
  void aKeptStateIsRemovedAfterAQuestionAndNothingElseIs() {
    house.send("POST", "/api/snapshots", "{\"why\": \"before the cold\"}", JSON);
    try (Screen screen = Screen.of(house, Look.NARROW)) {
      screen.open("/history");
      Locator row = rows(screen, "s-snapshots", "before the cold");
      inRow(row, "Remove the state of").press("Enter");
      screen.picture("history-remove").isAccessible();
      screen.page().keyboard().press("Escape");
      assertThat(row).isVisible();
      inRow(row, "Remove the state of").press("Enter");
      screen.button("Remove this state").press("Enter");
      assertThat(screen.text(Pattern.compile("^The state of .* is removed"))).isVisible();
      assertThat(row).hasCount(0);
      screen.page().waitForFunction(HAS_FOCUS, "Kept states");
      assertFalse(house.get("/api/snapshots").contains("before the cold"));
      assertTrue(house.get("/api/forms/drum-a").contains("drum of oak"));
    }
  }

  @Test
  void aPlanIsRemovedAfterAQuestionButNotTheOneInUse() {
    house.workByAPlan(1);
    String first = house.get("/api/plan-in-use");
    house.workByAPlan(300);
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/history");
      Locator inUse = rows(screen, "s-plans", "the plan you work by");
      assertThat(inUse).hasCount(1);
      assertThat(inUse.getByRole(AriaRole.BUTTON)).hasCount(0);
      Locator other = rows(screen, "s-plans", "handwork").last();
      assertThat(other.getByRole(AriaRole.LINK)).isVisible();
      inRow(other, "Remove the plan of").press("Enter");
      screen.picture("history-remove-plan").isAccessible();
      screen.button("Remove this plan").press("Enter");
      assertThat(screen.text(Pattern.compile("^The plan of .* is removed"))).isVisible();
      assertThat(rows(screen, "s-plans", "handwork")).hasCount(1);
      screen.page().waitForFunction(HAS_FOCUS, "Plans that were laid out");
      screen.button("Take the last change back").click();
      assertThat(screen.text("The last change is taken back.")).isVisible();
      assertEquals(first, house.get("/api/plan-in-use"));
      screen.hadNoTroubles();
    }
  }

  private static Locator rows(Screen screen, String list, String words) {
    return screen
        .page()
        .locator(list + " li")
        .filter(new Locator.FilterOptions().setHasText(words));
  }

  private static Locator inRow(Locator row, String name) {
    Pattern begins = Pattern.compile("^" + name);
    return row.getByRole(AriaRole.BUTTON, new Locator.GetByRoleOptions().setName(begins));
  }
}
