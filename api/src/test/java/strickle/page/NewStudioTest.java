package strickle.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A maker who has never seen the page comes from nothing to a day sheet in the hand. */
@BrowserTest
class NewStudioTest {

  @TempDir Path folder;

  @Test
  void threeQuestionsAnOrderAndAPlanLeadToAPrintedDaySheet() throws IOException {
    try (StudioHouse house = StudioHouse.empty(folder);
        Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/").picture("first-start");
      begin(screen);
      answerTheQuestions(screen);
      screen.open("/shelf");
      assertThat(screen.text("1 piece from 1 mould and 1 mix.")).isVisible();
      screen.open("/orders");
      order(screen);
      assertTrue(house.get("/api/book").contains("\"quantity\": 20000"), "kilograms, as on a sack");
      layOut(screen);
      assertTrue(house.get("/api/plan-in-use").contains("\"from\": \"2027-03-01T12:"), "from now");
      String day = theFirstDay(screen);
      Download sheet =
          screen.page().waitForDownload(() -> screen.button("Day sheet as PDF").click());
      byte[] pdf = Files.readAllBytes(sheet.path());
      assertEquals(day + ".pdf", sheet.suggestedFilename());
      assertEquals("%PDF", new String(Arrays.copyOf(pdf, 4), StandardCharsets.US_ASCII));
      screen.picture("first-day");
    }
  }

  private static void begin(Screen screen) {
    screen.field("The studio’s name").fill("Back Room");
    screen.button("Begin").last().click();
    assertThat(screen.heading("Three questions, one first piece")).isVisible();
  }

  private static void answerTheQuestions(Screen screen) {
    screen.field("The piece").fill("candle dish");
    screen.field("What one filling of its mould holds").fill("400");
    screen.field("Its price").fill("38");
    screen.field("The mix").fill("white");
    screen.field("What you buy it as, dry").fill("white blend");
    screen.field("A pack holds").fill("20");
    screen.field("and costs").fill("28");
    screen.field("Name").last().fill("Lea");
    screen.picture("first-questions");
    screen.button("Make my first book").click();
    assertThat(screen.heading("There are no orders.")).isVisible();
  }

  private static void order(Screen screen) {
    screen.link("New order").first().click();
    screen.field("How many").fill("2");
    screen.button("Save").click();
    assertThat(screen.link("O-1").first()).isVisible();
  }

  private static void layOut(Screen screen) {
    screen.open("/week");
    screen.button("Lay out the week").first().click();
    Locator accept = screen.button("Work by the new plan");
    // There is little to try: it does not take the ten seconds that it might.
    accept.waitFor(new Locator.WaitForOptions().setTimeout(8_000));
    // Who goes away before taking it finds it again.
    screen.open("/week");
    screen.button(Pattern.compile("^Look at the plan of .*, not taken yet$")).click();
    accept.click();
    accept.waitFor(
        new Locator.WaitForOptions()
            .setState(com.microsoft.playwright.options.WaitForSelectorState.DETACHED));
    assertThat(screen.text(Pattern.compile("on time. O-1 has the least to spare"))).isVisible();
  }

  /** Goes to the first day with something to do, today or the one that is offered. */
  private static String theFirstDay(Screen screen) {
    screen.open("/today");
    Locator next = screen.link(Pattern.compile("^Go to "));
    if (next.count() > 0) {
      next.first().click();
    }
    assertThat(screen.heading(Pattern.compile("^pour white"))).isVisible();
    String url = screen.page().url();
    assertTrue(screen.text("white blend").count() > 0, "what to weigh");
    return url.contains("day=") ? url.substring(url.indexOf("day=") + 4) : "2027-03-01";
  }
}
