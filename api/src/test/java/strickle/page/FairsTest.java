package strickle.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What to bring to a fair, worked out and put in the plan. */
@BrowserTest
class FairsTest {

  @TempDir Path folder;

  @Test
  void theBuildThatIsWorkedOutIsPutAmongTheOrdersAndCanBeTakenBack() {
    try (StudioHouse house = StudioHouse.demo(folder);
        Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/fairs/breakwater");
      screen.button("Work out what to bring").click();
      assertThat(screen.text(Pattern.compile("can be expected after all costs")))
          .isVisible(Screen.patiently());
      screen.picture("fair-worked-out");
      screen.button("Put this build in the plan").click();
      assertThat(screen.text(Pattern.compile("The build is among the orders"))).isVisible();
      assertTrue(house.get("/api/orders").contains("breakwater-tealight-brick"));
      screen.button("Take it back").click();
      assertThat(screen.text("It is taken back.")).isVisible();
      assertTrue(!house.get("/api/orders").contains("breakwater-tealight-brick"));
    }
  }
}
