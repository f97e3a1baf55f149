package strickle.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Who has chosen US units is told nothing in metric ones, in any room. */
@BrowserTest
class UsUnitsTest {

  /** An amount in a metric unit, as in 1.2 kg. */
  private static final Pattern METRIC =
      Pattern.compile(
          "\\d[\\s\u00a0](kg|g|ml|l|mm|cm|m²|m³|km/h|°C|kg/m³|kg/m²/h)(?![\\p{L}\\d/])");

  /** All words that can be seen, in shadow trees too. */
  private static final String SEEN =
      """
      () => {
        const text = node => node.nodeType === Node.TEXT_NODE ? node.data
          : node.nodeType !== Node.ELEMENT_NODE && node.nodeType !== Node.DOCUMENT_FRAGMENT_NODE ? ''
          : ['STYLE', 'SCRIPT'].includes(node.tagName) || node.checkVisibility?.() === false ? ''
          : [...(node.shadowRoot ?? node).childNodes].map(text).join('')
            + (node.shadowRoot ? [...node.childNodes].map(text).join('') : '');
        return text(document.body);
      }
      """;

  @TempDir static Path folder;

  private static StudioHouse house;
  private static Screen screen;

  @BeforeAll
  static void begin() {
    house = StudioHouse.working(folder);
    screen = Screen.of(house, Look.WIDE);
    screen.page().addInitScript("localStorage.setItem('strickle.units', 'us')");
  }

  @AfterAll
  static void end() {
    screen.close();
    house.close();
  }

  static List<String> places() {
    return EveryRoomTest.PLACES;
  }

  @ParameterizedTest
  @MethodSource("places")
  void aRoomTellsNothingInMetricUnits(String place) {
    screen.open(place).picture("us-" + place.substring(1).replace('/', '-'));
    String seen = (String) screen.page().evaluate(SEEN);
    List<String> metric =
        METRIC
            .matcher(seen)
            .results()
            .map(MatchResult::start)
            .map(at -> seen.substring(Math.max(0, at - 60), Math.min(seen.length(), at + 12)))
            .toList();
    assertEquals(List.of(), metric);
  }
}
