package strickle.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Response;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An order has come since the week was laid out. */
@BrowserTest
class AheadOfThePlanTest {

  private static final Pattern AS_LAID_OUT =
      Pattern.compile(
          "This list is for the week as it was laid out on .*, with the shelf as it stood then\\."
              + " One order is newer and not in it\\.");

  @TempDir Path folder;

  private final List<String> refused = new ArrayList<>();
  private StudioHouse house;

  @BeforeEach
  void begin() {
    house = StudioHouse.working(folder);
    house.order("O-new", "doorstop-brick");
  }

  @AfterEach
  void end() {
    house.close();
  }

  @Test
  void whatIsKnownToBeRefusedIsNotAskedFor() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.page().onResponse(this::note);
      for (String room : List.of("/today", "/shopping", "/what-if", "/bench/room", "/week")) {
        screen.open(room);
      }
      screen.open("/orders/new");
      screen.field("Piece").selectOption("doorstop, brick");
      assertThat(screen.text(Pattern.compile("^The book has changed since the week"))).isVisible();
      assertEquals(List.of(), refused);
    }
  }

  private void note(Response response) {
    if (response.status() >= 400) {
      refused.add(response.status() + " of " + response.url());
    }
  }

  @Test
  void theShoppingListSaysOfWhichPlanItIsAndLeadsToANewOne() {
    for (Look look : List.of(Look.NARROW, Look.WIDE)) {
      try (Screen screen = Screen.of(house, look)) {
        screen.open("/shopping");
        assertThat(screen.page().locator("s-say").first()).containsText(AS_LAID_OUT);
        assertTrue(screen.page().locator("s-table tbody tr").count() > 0, "no list");
        assertThat(screen.text(Pattern.compile("rule \\d"))).hasCount(0);
        screen.picture("shopping-older").isAccessible();
      }
    }
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/shopping");
      screen.button("Lay the week out again").click();
      screen.page().waitForURL("**/week**");
      house.endLaying();
      assertThat(screen.heading("A new plan is ready")).isVisible(Screen.patiently());
      screen.button("Work by the new plan").click();
      assertThat(screen.text("The studio works by the new plan.")).isVisible();
      screen.open("/shopping");
      assertThat(screen.text(Pattern.compile("as it was laid out"))).hasCount(0);
    }
  }
}
