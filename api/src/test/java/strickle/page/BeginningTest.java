package strickle.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Request;
import com.microsoft.playwright.Route;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a page asks for while it begins. */
@BrowserTest
class BeginningTest {

  private static final String STUDIOS = "/api/studios";
  private static final List<String> OF_A_STUDIO =
      List.of("/api/book", "/api/plan-in-use", "/api/progress", "/api/plans");

  @TempDir Path folder;

  private final List<String> asked = new ArrayList<>();

  @Test
  void theStudioIsAskedForBeforeAnyModuleIsThere() {
    try (StudioHouse house = StudioHouse.working(folder);
        Screen screen = watched(house)) {
      screen.page().route("**/pack/**", Route::abort);
      screen.page().navigate(house.address() + "/orders");
      screen.page().waitForCondition(() -> asked.containsAll(OF_A_STUDIO));
      screen.forgetTroubles();
    }
  }

  @Test
  void nothingOfTheStudioIsAskedForTwice() {
    try (StudioHouse house = StudioHouse.working(folder);
        Screen screen = watched(house)) {
      screen.open("/orders");
      for (String path : OF_A_STUDIO) {
        assertEquals(1, Collections.frequency(asked, path), path);
      }
      assertEquals(1, Collections.frequency(asked, STUDIOS));
    }
  }

  @Test
  void whereThereIsNoStudioNothingOfOneIsAskedFor() {
    try (StudioHouse house = StudioHouse.empty(folder);
        Screen screen = watched(house)) {
      screen.open("/");
      assertTrue(asked.contains(STUDIOS), asked::toString);
      assertTrue(Collections.disjoint(asked, OF_A_STUDIO), asked::toString);
    }
  }

  @Test
  void whereNoPlanIsInUseNoneIsAskedForUntilThereIsOne() {
    try (StudioHouse house = StudioHouse.demo(folder);
        Screen screen = watched(house)) {
      for (String room : List.of("/today", "/week", "/shopping", "/what-if", "/history")) {
        screen.open(room);
      }
      assertFalse(asked.contains("/api/plan-in-use"), asked::toString);
      house.workByAPlan(1);
      screen.page().waitForResponse("**/api/plan-in-use", screen::returnTo);
    }
  }

  private Screen watched(StudioHouse house) {
    Screen screen = Screen.of(house, Look.WIDE);
    screen.page().onRequest(request -> asked.add(path(request)));
    return screen;
  }

  private static String path(Request request) {
    return URI.create(request.url()).getPath();
  }
}
