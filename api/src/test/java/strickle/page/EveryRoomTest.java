package strickle.page;

import java.nio.file.Path;
import java.util.List;
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

  private static final List<String> PLACES =
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

  private static StudioHouse house;

  @BeforeAll
  static void begin() {
    house = StudioHouse.demo(folder);
    house.workByAPlan();
  }

  @AfterAll
  static void end() {
    house.close();
  }

  static Stream<Arguments> screens() {
    return PLACES.stream()
        .flatMap(place -> Look.ALL.stream().map(look -> Arguments.of(place, look)));
  }

  @ParameterizedTest(name = "{0} at {1}")
  @MethodSource("screens")
  void isWholeAndAccessible(String place, Look look) {
    try (Screen screen = Screen.of(house, look)) {
      screen.open(place).fitsTheWindow().picture(place.substring(1).replace('/', '-'));
      screen.isAccessible();
    }
  }
}
