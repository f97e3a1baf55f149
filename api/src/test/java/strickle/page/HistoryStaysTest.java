package strickle.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.Locator;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The history while something changes: what was opened stays open, and what is new comes. */
@BrowserTest
class HistoryStaysTest {

  private static final String[] JSON = {"Content-Type", "application/json"};
  private static final int ROUND = 13;
  private static final int LINES = 53;

  @TempDir Path folder;

  private StudioHouse house;

  @BeforeEach
  void begin() {
    house = StudioHouse.demo(folder);
  }

  @AfterEach
  void end() {
    house.close();
  }

  @Test
  void olderPlansThatWereOpenedStayWhenTheStudioChanges() {
    for (int plan = 0; plan < 2 * ROUND; plan++) {
      house.send("POST", "/api/plans", "{\"schedules\": 1, \"seed\": 1}", JSON);
      if (plan % ROUND == ROUND - 1) {
        house.endLaying();
      }
    }
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/history");
      Locator plans = screen.page().locator("s-plans li");
      assertThat(plans).hasCount(20);
      screen.button("Show older plans").click();
      assertThat(plans).hasCount(2 * ROUND);
      change(screen, "/api/plans\\?limit=2");
      assertThat(plans).hasCount(2 * ROUND);
      assertThat(screen.button("Show older plans")).hasCount(0);
    }
  }

  @Test
  void olderLinesThatWereOpenedStayAndALineKeepsItsOwnChanges() {
    for (int order = 0; order < LINES; order++) {
      house.order("O-" + (100 + order), "doorstop-brick");
    }
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/history");
      Locator lines = screen.page().locator("s-history-line");
      screen.button("Show older ones").click();
      assertThat(screen.button("Show older ones")).hasCount(0);
      int before = lines.count();
      lines.first().locator("summary").click();
      assertThat(lines.first()).containsText("O-152");
      change(screen, "/api/journal\\?");
      assertThat(lines).hasCount(before + 1);
      assertEquals(0, lines.first().locator("details[open]").count(), "the new line is open");
      assertThat(lines.nth(1)).containsText("O-152");
      lines.first().locator("summary").click();
      assertThat(lines.first().locator(".in")).containsText("O-new");
    }
  }

  @Test
  void aStateThatAnotherWindowKeptComesWithTheNextChange() {
    try (Screen screen = Screen.of(house, Look.NARROW)) {
      screen.open("/history");
      house.send("POST", "/api/snapshots", "{\"why\": \"before the cold\"}", JSON);
      change(screen, "/api/snapshots");
      assertThat(screen.page().locator("s-snapshots li").getByText("before the cold")).isVisible();
    }
  }

  /** Somebody else changes the studio, and the window reads something of it again. */
  private void change(Screen screen, String read) {
    house.order("O-new", "doorstop-brick");
    screen.page().waitForResponse(Pattern.compile(read), screen::returnTo);
    screen.nextFrame();
  }
}
