package strickle.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Changes tried on the plan in use, and made. */
@BrowserTest
class WhatIfTest {

  @TempDir Path folder;

  @Test
  void whoComesFromAnOrderAndAFormFindsBothAndMayMakeTheChange() {
    try (StudioHouse house = StudioHouse.working(folder);
        Screen screen = Screen.of(house, Look.WIDE)) {
      String form = house.get("/api/forms/drum-a");
      screen.open("/what-if?order=M-1&form=drum-a");
      assertThat(screen.text(Pattern.compile("^M-1, "))).isVisible();
      assertEquals("large drum", chosen(screen, "Form"));
      Locator make = screen.button("Make it so: one more large drum");
      make.waitFor(new Locator.WaitForOptions().setTimeout(60_000));
      screen.picture("what-if").isAccessible();
      make.click();
      assertThat(screen.text(Pattern.compile("^It is in the book, and its plan is in use")))
          .isVisible(Screen.patiently());
      assertTrue(!form.equals(house.get("/api/forms/drum-a")), form);
      screen.button("Take it back").click();
      assertThat(screen.text("It is taken back.")).isVisible();
      assertEquals(form, house.get("/api/forms/drum-a"));
    }
  }

  @Test
  void aChangeOfOnesOwnIsTriedAndWhatItCostsIsTold() {
    try (StudioHouse house = StudioHouse.working(folder);
        Screen screen = Screen.of(house, Look.NARROW)) {
      screen.open("/what-if?form=drum-a");
      screen.button("Make it so: one more large drum").waitFor();
      screen.field("Try").last().selectOption("a room never cooler");
      screen.field("Than").fill("21");
      screen.button("Try it").click();
      assertThat(screen.page().locator("s-table")).containsText("21 °C");
      screen.picture("what-if-own").isAccessible();
    }
  }

  @Test
  void whatIsRefusedBelowALongListIsBroughtIntoSight() {
    try (StudioHouse house = StudioHouse.working(folder);
        Screen screen = Screen.of(house, Look.NARROW)) {
      house.send(
          "POST",
          "/api/progress",
          "{\"kind\": \"broken\", \"form\": \"drum-a\", \"count\": 1,"
              + " \"from\": \"2027-03-01T08:00\"}",
          "Content-Type",
          "application/json");
      screen.open("/what-if");
      Locator make = screen.button(Pattern.compile("^Make it so")).last();
      make.waitFor(new Locator.WaitForOptions().setTimeout(60_000));
      make.tap();
      assertThat(screen.page().locator("s-trouble")).isInViewport();
      screen.forgetTroubles(); // the browser notes the refusal too
    }
  }

  private static String chosen(Screen screen, String label) {
    return (String) screen.field(label).evaluate("select => select.selectedOptions[0].label");
  }
}
