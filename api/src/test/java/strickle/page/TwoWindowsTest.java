package strickle.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two windows on one studio, and a service that goes away: nothing is written over or lost. */
@BrowserTest
class TwoWindowsTest {

  @TempDir Path folder;

  @Test
  void whoSavesSecondSeesWhatTheFirstChangedAndChooses() {
    try (StudioHouse house = StudioHouse.demo(folder);
        Screen one = Screen.of(house, Look.WIDE)) {
      Screen other = one.another();
      one.open("/shelf/forms/drum-a");
      other.open("/shelf/forms/drum-a");
      one.field("Costs each").fill("21");
      one.button("Save").click();
      assertThat(one.text("large drum is saved.")).isVisible();
      other.field("Costs each").fill("33");
      other.button("Save").click();
      assertThat(other.text("Somebody else has changed this meanwhile")).isVisible();
      other.picture("two-windows");
      other.button("Keep these").click();
      assertThat(other.text("large drum is saved.")).isVisible();
      assertTrue(house.get("/api/forms/drum-a").contains("33"));
      one.forgetTroubles();
      other.forgetTroubles();
    }
  }

  @Test
  void whatIsChangedWhileTheServiceIsAwayIsKeptAndSentWhenItIsBack() {
    try (StudioHouse house = StudioHouse.demo(folder);
        Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/shelf/forms/drum-a");
      screen.field("Costs each").fill("27");
      house.end();
      screen.button("Save").click();
      assertThat(screen.text("1 change not sent yet")).isVisible(Screen.patiently());
      house.again();
      assertThat(screen.text("All is saved")).isVisible(Screen.patiently());
      assertTrue(house.get("/api/forms/drum-a").contains("27"));
      screen.forgetTroubles(); // a browser notes every request that was cut off
    }
  }
}
