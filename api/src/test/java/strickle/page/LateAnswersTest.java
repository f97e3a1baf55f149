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

  private static final Pattern BATCH = Pattern.compile("/api/batch");

  /** The history's list, not the studio's. */
  private static final Pattern PLANS = Pattern.compile("/api/plans\\?limit=(?!50)");

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
      screen.page().route(BATCH, this::holdTheFirst);
      Locator step = screen.field("Scale reads to").first();
      screen.page().waitForRequest(BATCH, () -> step.selectOption("4"));
      step.selectOption("0");
      refuse(screen, BATCH);
      assertThat(screen.text(Pattern.compile(LATE))).hasCount(0);
      screen.forgetTroubles();
    }
  }

  @Test
  void ofTheListOfPlansThatHasBeenReadAgainSince() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/history");
      Page page = screen.page();
      page.route(PLANS, this::holdTheFirst);
      house.order("O-one", "doorstop-brick");
      page.waitForRequest(PLANS, screen::returnTo);
      house.order("O-two", "doorstop-brick");
      page.waitForResponse(PLANS, screen::returnTo);
      refuse(screen, PLANS);
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

  private void refuse(Screen screen, Pattern path) {
    screen.page().waitForResponse(path, () -> first.get().fulfill(Refused.with(LATE)));
    screen.nextFrame();
  }
}
