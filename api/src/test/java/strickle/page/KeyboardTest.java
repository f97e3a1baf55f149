package strickle.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Without a mouse: everything is reached, focus is seen and never caught. */
@BrowserTest
class KeyboardTest {

  private static final int MOST_STOPS = 120;

  @TempDir Path folder;

  @Test
  void theFirstStopLeadsPastTheRoomsToTheRoom() {
    try (StudioHouse house = StudioHouse.demo(folder);
        Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/orders");
      screen.page().keyboard().press("Tab");
      assertEquals("To the room", screen.focused("e => e.innerText"));
      screen.page().keyboard().press("Enter");
      assertEquals("room", screen.focused("e => e.id"));
    }
  }

  @Test
  void everyRoomIsReachedByTabAndEnterAndItsTitleTakesFocus() {
    try (StudioHouse house = StudioHouse.demo(folder);
        Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/orders");
      tabTo(screen, "Prices");
      screen.page().keyboard().press("Enter");
      assertThat(screen.heading("Prices")).isVisible();
      screen.settled();
      assertEquals("H1", screen.focused("e => e.tagName"));
    }
  }

  @Test
  void focusIsSeenAtEveryStopAndComesRoundAgain() {
    try (StudioHouse house = StudioHouse.demo(folder);
        Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/shelf/forms/drum-a");
      List<String> unseen = new ArrayList<>();
      int stops = 0;
      String first = null;
      for (; stops < MOST_STOPS; stops++) {
        screen.page().keyboard().press("Tab");
        String stop = screen.focused("e => e.tagName + ' ' + (e.innerText || e.name || e.id)");
        if (stop.equals(first)) {
          break;
        }
        first = first == null ? stop : first;
        if (!stop.startsWith("BODY") && screen.focused(Screen.FOCUS_IS_SEEN).equals("no")) {
          unseen.add(stop);
        }
      }
      assertEquals(List.of(), unseen, "stops without a visible focus");
      assertTrue(stops < MOST_STOPS, "focus never comes round");
    }
  }

  private static void tabTo(Screen screen, String text) {
    for (int stops = 0; stops < MOST_STOPS; stops++) {
      screen.page().keyboard().press("Tab");
      if (text.equals(screen.focused("e => e.innerText"))) {
        return;
      }
    }
    throw new AssertionError("no stop says " + text);
  }
}
