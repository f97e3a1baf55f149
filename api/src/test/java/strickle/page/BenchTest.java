package strickle.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.json.PlanFile;
import strickle.plan.Spell;
import strickle.plan.Task;
import strickle.plan.TaskKind;

/** What is worked out with a pencil at the bench. */
@BrowserTest
class BenchTest {

  /** Longer than it takes until a box that was left says what is wrong with it. */
  private static final int A_WHILE_MS = 600;

  private static final String[] JSON = {"Content-Type", "application/json"};

  @TempDir static Path folder;

  private static StudioHouse house;

  @BeforeAll
  static void begin() {
    house = StudioHouse.demo(folder);
  }

  @AfterAll
  static void end() {
    house.close();
  }

  @Test
  void aBatchIsWeighedOutForCastingsAndRoundedToTheScale() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/bench/batch");
      screen.field("Mix").selectOption("basalt");
      screen.field("tall lantern, large drum over middle drum").fill("2");
      screen.field("Scale reads to").selectOption("5 g");
      assertThat(screen.text(Pattern.compile("^The batch weighs .* wet"))).isVisible();
      Locator grams = screen.page().locator("s-bench-batch td.grams");
      assertThat(grams.first()).isVisible();
      for (String one : grams.allInnerTexts()) {
        double read =
            Double.parseDouble(one.replaceAll("[^\\d.]", "")) * (one.contains("kg") ? 1000 : 1);
        assertTrue(Math.abs(read / 5 - Math.round(read / 5)) < 1e-9, one);
      }
      assertTrue(screen.page().url().contains("step=5"), screen.page().url());
      screen.picture("bench-batch").isAccessible();
    }
  }

  @Test
  void aDryingLogIsBegunWeighedAndTellsTheDayWithItsCurve() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/bench/drying");
      screen.field("Which piece").fill("tall lantern, first");
      screen.button("Begin it").click();
      assertThat(screen.heading("tall lantern, first")).isVisible();
      double[] grams = {1460, 1441, 1427, 1417, 1410, 1405};
      for (int day = 0; day < grams.length; day++) {
        screen.field("When").fill("2027-02-%02dT09:00".formatted(20 + day));
        screen.field("Weight").fill(Double.toString(grams[day]));
        screen.button("Note the weight").click();
        assertThat(screen.page().locator("s-bench-drying tbody tr")).hasCount(day + 1);
      }
      assertThat(screen.text(Pattern.compile("^It loses less than .* It still holds"))).isVisible();
      assertThat(screen.page().locator("s-bench-drying canvas")).isVisible();
      screen.picture("bench-drying-fitted").isAccessible();
      screen.button("Remove this log").click();
      assertThat(screen.text(Pattern.compile("^The log of tall lantern"))).isVisible();
      screen.button("Take it back").click();
      assertThat(screen.text("It is taken back.")).isVisible();
      assertTrue(house.get("/api/drying").contains("tall lantern, first"));
    }
  }

  @Test
  void anAnswerThatComesLateDoesNotTakeThePlaceOfALaterOne() {
    keepLog("few", 1460, 1460, 1460, 1460, 1460);
    keepLog("many", 1460, 1441, 1427, 1417, 1410, 1405);
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      List<Route> held = new ArrayList<>();
      screen.page().route("**/api/drying/few/fit", held::add);
      screen.open("/bench/drying");
      screen
          .page()
          .locator("s-bench-drying a", new Page.LocatorOptions().setHasText("few"))
          .click();
      screen.page().waitForCondition(() -> !held.isEmpty());
      screen.page().goBack();
      screen
          .page()
          .locator("s-bench-drying a", new Page.LocatorOptions().setHasText("many"))
          .click();
      Locator sentence = screen.text(Pattern.compile("^It loses less than .* It still holds"));
      assertThat(sentence).isVisible();
      screen
          .page()
          .waitForResponse("**/api/drying/few/fit", () -> held.forEach(Route::resume))
          .finished();
      screen.nextFrame(); // which shows what the page makes of it
      assertTrue(sentence.isVisible(), "the later answer is gone");
      screen.forgetTroubles(); // weights that stay are refused, which the browser notes
    }
  }

  @Test
  void whatWasWeighedIsDrawnBeforeADayCanBeTold() {
    keepLog("short", 1460, 1441);
    try (Screen screen = Screen.of(house, Look.NARROW)) {
      screen.open("/bench/drying/short");
      assertThat(screen.text(Pattern.compile("3\\smore weighings are needed"))).isVisible();
      assertThat(screen.page().locator("s-bench-drying canvas")).isVisible();
      screen.field("When").fill("2027-02-23T09:00");
      screen.field("Weight").fill("1427");
      screen.button("Note the weight").tap();
      assertThat(screen.text(Pattern.compile("2\\smore weighings are needed"))).isVisible();
      screen.page().waitForTimeout(A_WHILE_MS);
      assertThat(screen.text("This is needed.")).isHidden();
    }
  }

  private static void keepLog(String name, int... grams) {
    List<String> all = new ArrayList<>();
    for (int day = 0; day < grams.length; day++) {
      all.add("{\"at\": \"2027-02-%dT09:00\", \"grams\": %d}".formatted(20 + day, grams[day]));
    }
    String log = "{\"id\": \"%s\", \"name\": \"%s\", \"weighings\": %s}".formatted(name, name, all);
    house.send("POST", "/api/drying", log, JSON);
  }

  @Test
  void theRoomTellsWhatWindDoesToAPour() {
    try (Screen screen = Screen.of(house, Look.NARROW)) {
      screen.open("/bench/room");
      Locator loss = screen.page().locator("s-bench-air td[data-label='A pour loses']").first();
      String still = loss.innerText();
      screen.field("Wind at the pour").fill("20");
      assertThat(loss).not().hasText(still);
    }
  }

  @Test
  void whatWasNotedTwiceIsHeldAgainstTheBookAndTakenOver() {
    house.workByAPlan();
    PlanFile.parse(house.get("/api/plan-in-use")).tasks().stream()
        .filter(task -> task.kind() == TaskKind.DEMOULD)
        .map(BenchTest::twiceAsLong)
        .forEach(note -> house.send("POST", "/api/progress", note, JSON));
    String moulds = house.get("/api/moulds");
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/bench/learnt");
      assertThat(screen.text(Pattern.compile("of the book (is|are) not what has been noted")))
          .isVisible();
      screen.picture("bench-learnt-offers").isAccessible();
      screen.button(Pattern.compile("^Take (it|them) over$")).click();
      assertThat(screen.text("The book says what has been noted.")).isVisible();
      assertNotEquals(moulds, house.get("/api/moulds"));
      screen.button("Take it back").click();
      assertThat(screen.text("It is taken back.")).isVisible();
      assertEquals(moulds, house.get("/api/moulds"));
    }
  }

  /** A note that a task has taken twice the time that was planned. */
  private static String twiceAsLong(Task task) {
    Spell spell = task.spells().get(0);
    LocalDateTime start = spell.start().toLocalDateTime();
    LocalDateTime end = spell.end().toLocalDateTime();
    return "{\"kind\": \"demoulded\", \"run\": \"%s\", \"person\": \"%s\", \"start\": \"%s\", \"end\": \"%s\"}"
        .formatted(
            task.run().orElseThrow(), task.person(), start, end.plus(Duration.between(start, end)));
  }
}
