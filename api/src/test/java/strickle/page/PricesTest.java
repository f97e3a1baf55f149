package strickle.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Prices: every figure follows the price, and a price is kept when it is asked from now on. */
@BrowserTest
class PricesTest {

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
  void whatIsLeftFollowsTheSliderAndAgreesWithTheService() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/prices/doorstop-brick");
      screen.field("Price").first().fill("18");
      assertThat(screen.text(Pattern.compile("each piece loses"))).isVisible();
      screen.field("Price").first().fill("40");
      assertThat(screen.text(Pattern.compile("At \\$40.00 through “own table”"))).isVisible();
      String answer =
          house
              .send(
                  "POST",
                  "/api/target",
                  "{\"piece\": \"doorstop-brick\", \"channel\": \"own-table\", \"price\": 40,"
                      + " \"marginPercent\": 30}",
                  "Content-Type",
                  "application/json")
              .body();
      double profit = number(answer, "profit");
      String shown = "$" + String.format(Locale.ROOT, "%.2f", profit);
      assertThat(screen.page().locator("s-price-piece .figures")).containsText(shown);
    }
  }

  @Test
  void aPriceAskedFromNowOnIsKept() {
    try (Screen screen = Screen.of(house, Look.NARROW)) {
      screen.open("/prices/doorstop-brick?price=37");
      screen.button("Ask $37.00 from now on").click();
      assertThat(screen.text("doorstop, brick is $37.00 from now on.")).isVisible();
      assertTrue(
          house.get("/api/pieces/doorstop-brick").matches("(?s).*\"price\": 37(\\.0+)?\\D.*"));
    }
  }

  @Test
  void pricesWithoutAWageSaySo() {
    String studio = house.get("/api/studio");
    String tag = house.send("GET", "/api/studio", "").headers().firstValue("ETag").orElseThrow();
    String unpaid = studio.replaceFirst("\"wagePerHour\": [0-9.]+", "\"wagePerHour\": 0");
    house.send("PUT", "/api/studio", unpaid, "If-Match", tag, "Content-Type", "application/json");
    try (Screen screen = Screen.of(house, Look.NARROW)) {
      screen.open("/prices");
      assertThat(screen.text(Pattern.compile("^No hour of work is paid yet"))).isVisible();
      assertThat(screen.link("Say what an hour is paid")).isVisible();
    }
  }

  private static double number(String json, String name) {
    Matcher found = Pattern.compile('"' + name + "\": (-?[0-9.]+)").matcher(json);
    assertTrue(found.find(), json);
    return Double.parseDouble(found.group(1));
  }
}
