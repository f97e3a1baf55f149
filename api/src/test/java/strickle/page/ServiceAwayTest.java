package strickle.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The service is killed under an open page, as a process is killed, and started again: what is half
 * typed stays, what is sent meanwhile is kept and arrives once, and the page says what is the case.
 */
@BrowserTest
class ServiceAwayTest {

  private static final Pattern AWAY = Pattern.compile("^The service does not answer");

  @TempDir Path folder;

  private StudioHouse house;

  @BeforeEach
  void begin() {
    house = StudioHouse.killable(folder);
  }

  @AfterEach
  void end() {
    house.close();
  }

  @Test
  void whatIsHalfTypedStaysAndThePageSaysWhenTheServiceIsGoneAndBack() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/shelf/forms/drum-a");
      screen.field("Costs each").fill("27");
      house.end();
      screen.returnTo();
      assertThat(screen.text(AWAY)).isVisible();
      screen.picture("service-away").isAccessible();
      screen.field("Lasts for castings").fill("70");
      house.again();
      assertThat(screen.text(AWAY)).isHidden();
      assertThat(screen.field("Costs each")).hasValue("27");
      screen.page().reload();
      screen.settled();
      assertThat(screen.field("Costs each")).hasValue("27");
      screen.button("Save").click();
      assertThat(screen.text("large drum is saved.")).isVisible();
      assertTrue(house.get("/api/forms/drum-a").contains("27"));
      screen.forgetTroubles(); // a browser notes every request that was cut off
    }
  }

  @Test
  void whatIsChangedMeanwhileIsKeptThroughAClosedWindowAndSentWhenTheServiceIsBack() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/shelf/forms/drum-a");
      screen.field("Costs each").fill("27");
      screen.link("Orders").hover(); // which has it ready
      screen.page().waitForFunction("() => customElements.get('s-room-orders') !== undefined");
      house.end();
      screen.button("Save").click();
      assertThat(screen.text("1 change not sent yet")).isVisible();
      screen.link("Orders").click();
      screen.link("New order").first().click();
      screen.field("For").fill("a late caller");
      screen.button("Save").click();
      assertThat(screen.text("2 changes not sent yet")).isVisible();
      assertThat(screen.text("a late caller").first()).isVisible();
      Screen next = screen.another();
      screen.page().close();
      house.again();
      next.open("/orders");
      assertThat(next.text("All is saved")).isVisible();
      assertThat(next.text("a late caller").first()).isVisible();
      assertTrue(house.get("/api/forms/drum-a").contains("27"));
      assertEquals(2, house.get("/api/orders").split("a late caller", -1).length);
      screen.forgetTroubles();
    }
  }

  @Test
  void whatArrivedThoughItsAnswerWasLostIsNotMadeTwice() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/orders/new");
      screen.field("For").fill("a bakery");
      screen
          .page()
          .route("**/api/orders", this::arriveUnanswered, new Page.RouteOptions().setTimes(1));
      screen.button("Save").click();
      assertThat(screen.text("1 change not sent yet")).isVisible();
      house.again();
      assertThat(screen.text("All is saved")).isVisible();
      assertEquals(2, house.get("/api/orders").split("a bakery", -1).length);
      screen.forgetTroubles();
    }
  }

  @Test
  void aPlanThatWasBeingLaidOutIsLaidOutAllTheSame() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/week");
      screen.button("Lay out the week").click();
      assertThat(screen.text(Pattern.compile("^Best so far"))).isVisible(Screen.patiently());
      house.end();
      house.again();
      house.endLaying();
      assertThat(screen.heading("A new plan is ready")).isVisible();
      screen.forgetTroubles();
    }
  }

  /** Lets a request arrive, and kills the service before it is answered. */
  private void arriveUnanswered(Route route) {
    route.fetch();
    house.end();
    route.abort();
  }
}
