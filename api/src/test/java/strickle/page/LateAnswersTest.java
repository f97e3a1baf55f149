package strickle.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicReference;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A refusal that comes when something else has been asked since is nobody's any more. */
@BrowserTest
class LateAnswersTest {

  private static final String LATE = "Too late to matter.";

  @TempDir Path folder;

  private final AtomicReference<Route> first = new AtomicReference<>();
  private StudioHouse house;

  @BeforeEach
  void begin() {
    house = StudioHouse.working(folder);
  }

  @AfterEach
  void end() {
    house.close();
  }

  @Test
  void ofABatchForAStepOfTheScaleThatIsNotWantedAnyMore() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/today");
      screen.page().route("**/api/batch", this::holdTheFirst);
      Locator step = screen.field("Scale reads to").first();
      screen.page().waitForRequest("**/api/batch", () -> step.selectOption("4"));
      step.selectOption("0");
      refuse(screen, "**/api/batch");
      assertThat(screen.text(Pattern.compile(LATE))).hasCount(0);
      screen.forgetTroubles();
    }
  }

  @Test
  void ofTheListOfPlansThatHasBeenReadAgainSince() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/history");
      Page page = screen.page();
      page.route("**/api/plans?limit=20", this::holdTheFirst);
      house.order("O-one", "doorstop-brick");
      page.waitForRequest("**/api/plans?limit=20", screen::returnTo);
      house.order("O-two", "doorstop-brick");
      page.waitForResponse("**/api/plans?limit=20", screen::returnTo);
      refuse(screen, "**/api/plans?limit=20");
      assertThat(screen.text(Pattern.compile(LATE))).hasCount(0);
      assertThat(page.locator("s-plans li")).hasCount(1);
      screen.forgetTroubles();
    }
  }

  private void holdTheFirst(Route route) {
    if (!first.compareAndSet(null, route)) {
      route.resume();
    }
  }

  private void refuse(Screen screen, String path) {
    screen.page().waitForResponse(path, () -> first.get().fulfill(Refused.with(LATE)));
    screen.nextFrame();
  }
}
