package strickle.page;

import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every screen with the demo's studio and a plan in use, as a phone and a laptop see it by day and
 * by night: nothing goes wrong, nothing is wider than the window, axe-core finds nothing, and a
 * picture is kept.
 */
@BrowserTest
class EveryRoomTest {

  static final List<String> PLACES =
      List.of(
          "/today",
          "/week",
          "/orders",
          "/orders/M-1",
          "/orders/new",
          "/fairs",
          "/fairs/breakwater",
          "/fairs/breakwater/edit",
          "/prices",
          "/prices/doorstop-brick",
          "/bench",
          "/bench/drying",
          "/bench/room",
          "/bench/learnt",
          "/shelf",
          "/shelf/pieces/lantern-tall-basalt",
          "/shelf/moulds/lantern-tall",
          "/shelf/mixes/basalt",
          "/shelf/materials",
          "/shelf/people/maren",
          "/shelf/studio",
          "/shopping",
          "/history",
          "/settings",
          "/start");

  @TempDir static Path folder;

  /** A window for each width: what it has loaded once it need not load again. */
  private static final Map<Look, Screen> SCREENS = new HashMap<>();

  private static StudioHouse house;

  @BeforeAll
  static void begin() {
    house = StudioHouse.working(folder);
  }

  @AfterAll
  static void end() {
    SCREENS.values().forEach(Screen::close);
    SCREENS.clear();
    house.close();
  }

  static Stream<Arguments> screens() {
    return Stream.of(Look.WIDE, Look.NARROW)
        .flatMap(look -> PLACES.stream().map(place -> Arguments.of(place, look)));
  }

  @ParameterizedTest(name = "{0} at {1}, by day and by night")
  @MethodSource("screens")
  void isWholeAndAccessible(String place, Look look) {
    Screen screen = SCREENS.computeIfAbsent(look, one -> Screen.of(house, one));
    String name = place.substring(1).replace('/', '-');
    screen.open(place).by(ColorScheme.LIGHT).fitsTheWindow().picture(name).isAccessible();
    // Night changes colours and nothing else.
    screen.by(ColorScheme.DARK).fitsTheWindow().picture(name).hasReadableColours();
    screen.hadNoTroubles();
  }
}
