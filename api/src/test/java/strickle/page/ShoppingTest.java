package strickle.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.json.Noted;
import strickle.json.PlanFile;
import strickle.plan.Plan;
import strickle.plan.Task;

/** What to buy for the plan in use, by when. */
@BrowserTest
class ShoppingTest {

  /** Tuesday 2 March 2027, 12:00 in the demo studio. */
  private static final Instant NEXT_DAY = Instant.parse("2027-03-02T16:00:00Z");

  private static final String[] JSON = {"Content-Type", "application/json"};

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
  void whatToBuyStandsFirstAndWhatWaitsForOneDeliveryIsToldOnce(@TempDir Path own) {
    try (StudioHouse bare = StudioHouse.working(own);
        Screen screen = Screen.of(bare, Look.NARROW)) {
      materials(bare).forEach(material -> stock(bare, material, "0"));
      screen.open("/shopping");
      Object deliveries =
          screen
              .page()
              .evaluate(
                  """
                  async () => {
                    const list = await (await fetch('/api/shopping?plan=in-use')).json();
                    return new Set(list.tooEarly.map(one => one.material + one.arrives)).size;
                  }
                  """);
      Locator sections = screen.page().locator("s-room-shopping section");
      assertThat(sections.first()).hasClass("day");
      Locator early = sections.filter(new Locator.FilterOptions().setHasText("begins before"));
      assertThat(early.locator(":scope > ul > li")).hasCount((int) deliveries);
      Locator together = early.locator("details").first();
      assertThat(together.locator("li").first()).isHidden();
      together.locator("summary").tap();
      assertThat(together.locator("li").first()).isVisible();
      screen.picture("shopping-bare").isAccessible();
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

  @Test
  void whatWasPouredBeforeTheStockWasCountedNeedNotBeBoughtAgain(@TempDir Path own) {
    try (StudioHouse working = StudioHouse.working(own);
        Screen screen = Screen.of(working, Look.WIDE).at(NEXT_DAY)) {
      String material = pourAndGoOn(working);
      // As much is left as is needed from now on: too little for a shelf that the pour still is to
      // be taken from.
      String needed = needed(working, "&counted=2027-03-02T12:00", material);
      stock(working, material, needed);
      screen.open("/shopping");
      Locator bought = screen.page().locator("s-tick", having(name(working, material)));
      assertThat(screen.text(Pattern.compile("as from before the plan began"))).isVisible();
      assertThat(bought).hasCount(1);
      screen.picture("shopping-under-way").isAccessible();
      screen.button("They are as counted now").click();
      assertThat(screen.text(Pattern.compile("^The shelf’s numbers are taken as counted Tue")))
          .isVisible();
      assertThat(bought).hasCount(0);
      assertTrue(screen.page().url().contains("counted=2027-03-02T12"), screen.page().url());
      screen.page().reload();
      screen.settled();
      assertThat(bought).hasCount(0);
      screen.field("Counted").fill("2027-03-01T18:00");
      assertThat(bought).hasCount(1);
      screen.field("Counted").fill("2027-03-02T09:00");
      assertThat(bought).hasCount(0);
      screen.button("They are from before the plan began").click();
      assertThat(bought).hasCount(1);
    }
  }

  @Test
  void anotherStudiosListIsNotShownWhileItsOwnIsOnTheWay(@TempDir Path own) {
    try (StudioHouse working = StudioHouse.working(own);
        Screen screen = Screen.of(working, Look.WIDE)) {
      screen.open("/shopping");
      assertThat(screen.page().locator("s-table")).isVisible();
      String file = working.get("/api/export").replace("Gannet Row Studio", "Back Room");
      String[] taking = {"Content-Type", "application/json", "If-Match", "*"};
      assertEquals(200, working.send("PUT", "/api/export", file, taking).statusCode());
      List<Route> held = new ArrayList<>();
      screen.page().route("**/api/shopping**", held::add);
      screen.page().waitForRequest("**/api/shopping**", screen::returnTo);
      screen.nextFrame();
      assertThat(screen.page().locator("s-table")).hasCount(0);
      held.forEach(Route::resume);
      assertThat(screen.page().locator("s-table")).isVisible();
    }
  }

  /** Does the first pour as planned, lays the rest out the next day, and says what was poured. */
  private static String pourAndGoOn(StudioHouse house) {
    Plan plan = PlanFile.parse(house.get("/api/plan-in-use"));
    Task pour = plan.tasks().getFirst();
    house.send("POST", "/api/progress", Noted.poured(pour), JSON);
    house.at(NEXT_DAY);
    house.goOn("2027-03-02T12:00");
    return plan.lots().stream()
        .filter(lot -> lot.id().equals(pour.lot()))
        .findFirst()
        .orElseThrow()
        .weighOut()
        .getFirst()
        .material();
  }

  private static String needed(StudioHouse house, String how, String material) {
    String list = house.get("/api/shopping?plan=in-use" + how);
    return found(list, "\"" + material + "\",\\s+\"needed\": ([\\d.]+)");
  }

  private static List<String> materials(StudioHouse house) {
    return Pattern.compile("(?m)^      \"id\": \"([^\"]+)\"")
        .matcher(house.get("/api/materials"))
        .results()
        .map(result -> result.group(1))
        .toList();
  }

  private static String name(StudioHouse house, String material) {
    return found(house.get("/api/materials/" + material), "\"name\": \"([^\"]+)\"");
  }

  private static void stock(StudioHouse house, String material, String quantity) {
    String path = "/api/materials/" + material;
    HttpResponse<String> before = house.send("GET", path, "");
    String tag = before.headers().firstValue("ETag").orElseThrow();
    String now = before.body().replaceFirst("\"onHand\": [\\d.]+", "\"onHand\": " + quantity);
    HttpResponse<String> taken =
        house.send("PUT", path, now, "If-Match", tag, "Content-Type", "application/json");
    assertEquals(200, taken.statusCode(), taken.body());
  }

  private static String found(String text, String pattern) {
    Matcher found = Pattern.compile(pattern).matcher(text);
    assertTrue(found.find(), pattern + " in " + text);
    return found.group(1);
  }

  private static Page.LocatorOptions having(String text) {
    return new Page.LocatorOptions().setHasText(text);
  }
}
