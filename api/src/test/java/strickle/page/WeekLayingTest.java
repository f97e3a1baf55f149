package strickle.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.demo.Generator;
import strickle.json.BookFile;

/** A week being laid out: how far it is, what it would change, and who decides. */
@BrowserTest
class WeekLayingTest {

  /** "Best so far: 12 late hours, 20 h 15 min of handwork." */
  private static final Pattern BEST = Pattern.compile("^Best so far: (.*), (.*) of handwork\\.$");

  private static final Pattern FIRST =
      Pattern.compile("The first way found had (.*), (.*) of handwork\\.");

  /** More than can be laid out best in the first moment. */
  private static final int CASTINGS = 200;

  @TempDir Path folder;

  @Test
  void theTotalsGetBetterWhileOneLooksAndStopTakesTheBestSoFar() {
    try (StudioHouse house = StudioHouse.demo(folder);
        Screen screen = Screen.of(house, Look.WIDE)) {
      house.takeBook(BookFile.write(Generator.book(CASTINGS, 1)));
      screen.page().route("**/api/plans", WeekLayingTest::forLong);
      screen.open("/week");
      screen.button("Lay out the week").click();
      assertThat(screen.page().getByRole(AriaRole.PROGRESSBAR)).isVisible();
      Locator first = screen.text(FIRST);
      assertThat(first).isVisible(Screen.patiently());
      screen.picture("week-laying").isAccessible();
      double[] before = figures(FIRST, first.innerText());
      double[] best = figures(BEST, screen.text(BEST).innerText());
      assertTrue(best[0] < before[0] || (best[0] == before[0] && best[1] < before[1]), "no better");
      screen.button("Stop and take the best so far").click();
      assertThat(screen.heading("A new plan is ready")).isVisible(Screen.patiently());
      screen.button("Work by the new plan").click();
      assertThat(screen.text("The studio works by the new plan.")).isVisible();
    }
  }

  @Test
  void thePresentPlanStaysUntilAnotherIsAcceptedAndAComparisonSaysWhatMoves() {
    try (StudioHouse house = StudioHouse.working(folder);
        Screen screen = Screen.of(house, Look.WIDE)) {
      String present = house.get("/api/plan-in-use");
      Board board = Board.open(screen, "by=person&days=3");
      Board.Pour pour = board.focusPourAhead();
      board.press("Shift+ArrowRight").press("Shift+ArrowRight").press("Enter");
      assertThat(screen.text(Pattern.compile("^Pinned: " + pour.mix()))).isVisible();
      screen.button("Lay out again").click();
      assertThat(screen.heading("The week is being laid out")).isVisible();
      house.endLaying();
      assertThat(screen.heading("A new plan is ready")).isVisible();
      screen.page().locator("s-laying summary").click();
      assertThat(screen.page().locator("s-laying details li").first())
          .containsText(Pattern.compile("poured .*; so far|Could not stay"));
      screen.picture("week-compared").isAccessible();
      screen.button("Look at the new plan").click();
      assertThat(screen.text(Pattern.compile("^You are looking at the new plan"))).isVisible();
      assertEquals(present, house.get("/api/plan-in-use"));
      screen.button("Work by the new plan").click();
      assertThat(screen.text("The studio works by the new plan.")).isVisible();
      String pinned =
          house.get("/api/book").replaceAll("(?s).*\"pins\".*?\"start\": \"([^\"]+)\".*", "$1");
      assertTrue(house.get("/api/plan-in-use").contains("\"start\": \"" + pinned), pinned);
      screen.button("Take it back").click();
      assertThat(screen.text("It is taken back.")).isVisible();
      assertEquals(present, house.get("/api/plan-in-use"));
    }
  }

  @Test
  void whatIsBeingLaidOutIsFoundAgainAfterAReloadAndCanBeLeft() {
    try (StudioHouse house = StudioHouse.working(folder);
        Screen screen = Screen.of(house, Look.NARROW)) {
      String present = house.get("/api/plan-in-use");
      screen.open("/week");
      screen.button("Lay out again").click();
      assertThat(screen.heading("The week is being laid out")).isVisible();
      screen.page().reload();
      screen.settled();
      house.endLaying();
      assertThat(screen.heading("A new plan is ready")).isVisible();
      screen.button("Keep the present one").click();
      assertThat(screen.text("The present plan stays.")).isVisible();
      assertEquals(present, house.get("/api/plan-in-use"));
    }
  }

  /** So long that on no machine it comes to its end before it is stopped. */
  private static void forLong(Route route) {
    String asked = route.request().postData();
    String longer = asked == null ? "" : asked.replaceFirst("\"seconds\":\\d+", "\"seconds\":900");
    if (longer.contains("900")) {
      route.resume(new Route.ResumeOptions().setPostData(longer));
    } else {
      route.resume();
    }
  }

  /** Late hours, and minutes of handwork. */
  private static double[] figures(Pattern words, String text) {
    Matcher found = words.matcher(text);
    assertTrue(found.find(), text);
    return new double[] {number(found.group(1), "late hour"), minutes(found.group(2))};
  }

  private static double number(String text, String of) {
    Matcher found = Pattern.compile("([\\d,]+) " + of).matcher(text);
    return found.find() ? Double.parseDouble(found.group(1).replace(",", "")) : 0;
  }

  private static double minutes(String text) {
    Matcher found = Pattern.compile("(?:(\\d+)\\s*h)?\\s*(?:(\\d+)\\s*min)?").matcher(text);
    assertTrue(found.matches(), text);
    String hours = found.group(1) == null ? "0" : found.group(1);
    String rest = found.group(2) == null ? "0" : found.group(2);
    return 60.0 * Integer.parseInt(hours) + Integer.parseInt(rest);
  }
}
