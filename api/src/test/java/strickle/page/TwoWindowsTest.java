package strickle.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two windows on one studio: nothing is written over. */
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
  void whoKnowsOfTheOthersChangeBeforeSavingWritesNothingOverEither() {
    try (StudioHouse house = StudioHouse.demo(folder);
        Screen one = Screen.of(house, Look.WIDE);
        Screen other = Screen.of(house, Look.WIDE)) {
      other.open("/shelf/forms/drum-a");
      other.field("Costs each").fill("33");
      one.open("/shelf/forms/drum-a");
      one.field("Lasts for castings").fill("71");
      one.button("Save").click();
      assertThat(one.text("large drum is saved.")).isVisible();
      other.page().waitForResponse("**/api/book", other::returnTo);
      other.button("Save").click();
      assertThat(other.text("Somebody else has changed this meanwhile")).isVisible();
      other.button("Keep these").click();
      assertThat(other.text("large drum is saved.")).isVisible();
      String form = house.get("/api/forms/drum-a");
      assertTrue(form.contains("33") && form.contains("71"), form);
    }
  }
}
