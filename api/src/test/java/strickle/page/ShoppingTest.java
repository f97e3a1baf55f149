package strickle.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import java.nio.file.Path;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What to buy for the plan in use, by when. */
@BrowserTest
class ShoppingTest {

  @TempDir static Path folder;

  private static StudioHouse house;

  @BeforeAll
  static void begin() {
    house = StudioHouse.working(folder);
  }

  @AfterAll
  static void end() {
    house.close();
  }

  @Test
  void theListSaysWhatItCostsAndWhatIsBoughtIsTickedOffThroughAReload() {
    Matcher cost =
        Pattern.compile("(?m)^  \"cost\": ([\\d.]+)")
            .matcher(house.get("/api/shopping?plan=in-use"));
    try (Screen screen = Screen.of(house, Look.NARROW)) {
      screen.open("/shopping");
      String told =
          cost.find()
              ? String.format(Locale.ROOT, "$%,.2f", Double.parseDouble(cost.group(1)))
              : "no cost";
      assertThat(screen.page().locator("s-say").first()).containsText(told);
      Locator first = screen.page().locator("s-tick input").first();
      first.check();
      screen.open("/shopping");
      assertThat(screen.page().locator("s-tick input").first()).isChecked();
    }
  }

  @Test
  void whatThePlanUsesIsSortedByAnyColumnAndTheAddressKeepsIt() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/shopping");
      screen.button("Sort by Costs").click();
      screen.button("Sort by Costs").click();
      screen.open(screen.page().url().replace(house.address(), ""));
      assertThat(screen.page().locator("s-table th[aria-sort=descending]")).containsText("Costs");
    }
  }

  @Test
  void aPlanUnderWayIsToldThatItCannotWaitForItsMaterials() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/week?wait=materials");
      assertThat(screen.text(Pattern.compile("under way cannot wait for its materials")))
          .isVisible();
    }
  }
}
