package strickle.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.json.PlanFile;
import strickle.plan.Plan;

/** The day at the bench. */
@BrowserTest
class TodayTest {

  @TempDir Path folder;

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
  void aTaskDoneAsPlannedIsNotedWithOneTapAndCanBeTakenBack() {
    try (Screen screen = Screen.of(house, Look.NARROW)) {
      screen.open("/today");
      screen.button("Done as planned").first().tap();
      assertThat(screen.text("Noted as done").first()).isVisible();
      assertEquals(1, house.count("/api/progress"));
      screen.button("Take it back").tap();
      assertThat(screen.text("It is taken back.")).isVisible();
      assertEquals(0, house.count("/api/progress"));
    }
  }

  @Test
  void whatWasBegunAndIsDoneIsNotedOnce() {
    try (Screen screen = Screen.of(house, Look.NARROW)) {
      screen.open("/today");
      screen.button("Begin now").first().tap();
      assertThat(screen.text("Noted as begun").first()).isVisible();
      screen.button("Done, at other times…").first().tap();
      screen.field("Begun").fill("2027-03-01T09:00");
      screen.field("Ended").fill("2027-03-01T10:10");
      screen.button("Note it").tap();
      assertThat(screen.text("It is noted.")).isVisible();
      assertEquals(1, house.count("/api/progress"));
      assertTrue(house.get("/api/progress").contains("2027-03-01T10:10"));
    }
  }

  @Test
  void whatIsBegunAndDoneWhileTheServiceIsAwayIsNotedOnce() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/today");
      screen.page().context().setOffline(true);
      screen.button("Begin now").first().click();
      assertThat(screen.text("1 change not sent yet")).isVisible();
      screen.button("Done, at other times…").first().click();
      screen.field("Begun").fill("2027-03-01T09:00");
      screen.field("Ended").fill("2027-03-01T10:10");
      screen.button("Note it").click();
      assertThat(screen.text("2 changes not sent yet")).isVisible();
      screen.page().context().setOffline(false);
      assertThat(screen.text("All is saved")).isVisible();
      assertEquals(1, house.count("/api/progress"));
      assertTrue(house.get("/api/progress").contains("2027-03-01T10:10"));
      screen.forgetTroubles(); // a browser notes every request that could not be made
    }
  }

  @Test
  void whatCameUpAndWasNotedByMistakeIsTakenOut() {
    try (Screen screen = Screen.of(house, Look.NARROW)) {
      screen.open("/today");
      screen.button("A form broke…").tap();
      screen.button("Note it").tap();
      assertThat(screen.text("It is noted.")).isVisible();
      assertEquals(1, house.count("/api/progress"));
      screen.button(Pattern.compile("^Noted by mistake")).tap();
      assertThat(screen.text("The note is taken out.")).isVisible();
      assertEquals(0, house.count("/api/progress"));
    }
  }

  @Test
  void whatWasDoneAtOtherTimesOffersToLayOutAgain() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/today");
      screen.button("Done, at other times…").first().click();
      screen.field("Begun").fill("2027-03-01T09:00");
      screen.field("Ended").fill("2027-03-01T10:10");
      screen.button("Note it").click();
      assertThat(screen.text("What has happened is not as planned.")).isVisible();
      assertThat(screen.button("Lay out again from now")).isVisible();
      assertThat(screen.text("It is noted.")).isVisible(); // the service has it
      assertTrue(house.get("/api/progress").contains("2027-03-01T10:10"));
    }
  }

  @Test
  void whatCannotHaveHappenedIsRefusedInAFormThatTakesFocus() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/today");
      screen.button("Done, at other times…").first().click();
      screen.field("Begun").fill("");
      screen.button("Note it").click();
      Locator summary = screen.text("One thing is not right yet");
      assertThat(summary).isVisible();
      assertEquals("summary", screen.focused("e => e.className"));
      assertEquals(0, house.count("/api/progress"));
    }
  }

  @Test
  void whoIsBackSoonerIsPlannedForAgainFromThenOn() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/today");
      assertThat(screen.button("Lay out again from now")).hasCount(0);
      screen.button("Somebody is away…").click();
      screen.field("Who").selectOption("Maren");
      screen.field("Until").fill("2027-03-04T00:00");
      screen.button("Note it").click();
      assertThat(screen.text(Pattern.compile("^Maren is away from Mon"))).isVisible();
      assertThat(screen.text("What has happened is not as planned.")).isVisible();
      screen.button("Back again…").click();
      assertThat(screen.field("Who")).hasValue("0"); // the first of the studio
      screen.field("Here again from").fill("2027-03-02T12:00");
      screen.button("Note it").click();
      assertThat(screen.text(Pattern.compile("^Maren is back from Tue"))).isVisible();
      assertThat(screen.button("Back again…")).hasCount(0);
      screen.button("Lay out again from now").click();
      assertThat(screen.heading("The week is being laid out")).isVisible();
      house.endLaying();
      screen.button("Work by the new plan").click();
      assertThat(screen.text("The studio works by the new plan.")).isVisible();
      List<LocalDate> days = daysOf("maren");
      assertFalse(days.contains(LocalDate.of(2027, 3, 1)), days.toString());
      assertTrue(days.contains(LocalDate.of(2027, 3, 2)), days.toString());
      screen.open("/today");
      assertThat(screen.text(Pattern.compile("^Maren is away .* to Tue"))).isVisible();
      assertThat(screen.button("Lay out again from now")).hasCount(0);
      assertEquals(0, house.count("/api/progress"));
    }
  }

  /** The days on which somebody has something to do. */
  private List<LocalDate> daysOf(String person) {
    Plan plan = PlanFile.parse(house.get("/api/plan-in-use"));
    return plan.tasks().stream()
        .filter(task -> task.person().equals(person))
        .map(task -> task.start().toLocalDate())
        .toList();
  }

  @Test
  void whatIsWeighedIsTickedOffAndStaysTickedAfterAReload() {
    try (Screen screen = Screen.of(house, Look.NARROW)) {
      screen.open("/today");
      Locator first = screen.page().locator("s-weigh input[type=checkbox]").first();
      first.check();
      screen.open("/today");
      assertThat(screen.page().locator("s-weigh input[type=checkbox]").first()).isChecked();
    }
  }

  @Test
  void onPaperStandsAllThereIsToWeighAndToLayOnAndNoButton() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/today");
      List<String> needed = new ArrayList<>();
      for (String part : List.of("s-task-card h3", "s-weigh .line", ".ballast", "s-care summary")) {
        needed.addAll(screen.page().locator(part).allInnerTexts());
      }
      List<String> buttons = screen.page().locator("s-task-card button").allInnerTexts();
      String words = Paper.words(screen.paper("today", new Page.PdfOptions()));
      assertTrue(needed.size() > 10 && !buttons.isEmpty(), needed + " " + buttons);
      assertEquals(List.of(), needed.stream().filter(text -> !isIn(words, text)).toList());
      assertEquals(List.of(), buttons.stream().filter(text -> isIn(words, text)).toList());
    }
  }

  private static boolean isIn(String words, String text) {
    return words.contains(text.replaceAll("\\s+", " ").strip());
  }

  /** The day with the longest name that English has. */
  @Test
  void allThatCanBeDoneForADayStandsInOneLineOnASmallLaptop() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      for (String day : List.of("2027-03-01", "2027-09-29")) {
        screen.open("/today?day=" + day);
        List<Double> tops =
            screen.page().locator("s-room-today header:has(h1) :is(.button, button)").all().stream()
                .map(button -> button.boundingBox().y)
                .distinct()
                .toList();
        assertEquals(1, tops.size(), day + ": " + tops);
      }
      screen.picture("today-longest-day");
    }
  }

  @Test
  void everythingThatIsTouchedIsLargeEnoughForABenchHand() {
    try (Screen screen = Screen.of(house, Look.NARROW)) {
      screen.open("/today");
      for (Locator button : screen.page().locator("s-task-card button, s-tick label").all()) {
        BoundingBox box = button.boundingBox();
        assertTrue(box.height >= 44, button.innerText() + " is " + box.height + " high");
      }
    }
  }
}
