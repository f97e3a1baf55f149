package strickle.page;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The pictures of the README as the page looks now, in {@code target/pictures/readme}: what a
 * window shows without being scrolled. {@code web/pictures/renew} takes them over.
 */
@BrowserTest
class ReadmePicturesTest {

  private static final Path TAKEN = Path.of("target", "pictures", "readme");
  private static final Path README = Path.of("..", "README.md");

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

  static Stream<Arguments> pictures() {
    return Stream.of(
        Arguments.of("week", "/week", Look.WIDE),
        Arguments.of("today", "/today", Look.WIDE),
        Arguments.of("price", "/prices/doorstop-brick", Look.WIDE),
        Arguments.of("today-phone", "/today", new Look(390, ColorScheme.DARK)));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("pictures")
  void aPictureOfTheReadmeCanBeTakenAnew(String name, String place, Look look) throws IOException {
    try (Screen screen = Screen.of(house, look)) {
      screen.open(place);
      Path file = TAKEN.resolve(name + ".png");
      screen.page().screenshot(new Page.ScreenshotOptions().setPath(file));
      assertTrue(Files.readString(README).contains("web/pictures/" + name + ".png"), name);
      assertTrue(Files.exists(Path.of("..", "web", "pictures", name + ".png")), name);
    }
  }
}
