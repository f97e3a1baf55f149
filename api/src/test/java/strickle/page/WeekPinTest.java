package strickle.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Mouse;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A pour is pinned and let go again by dragging, by keys, and by a menu without dragging. */
@BrowserTest
class WeekPinTest {

  private static final Pattern START = Pattern.compile("\"start\": \"([^\"]+)\"");

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
  void aPourIsPinnedWhereItIsDroppedAndTheDropCanBeTakenBack() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      Board board = Board.open(screen, "by=person&days=3");
      Board.Pour pour = board.focusPourAhead();
      Mouse mouse = drag(screen, 60);
      assertThat(screen.text(Pattern.compile("Let go or press Enter to pin it there"))).isVisible();
      screen.picture("week-drag");
      mouse.up();
      assertThat(screen.text(Pattern.compile("^Pinned: " + pour.mix()))).isVisible();
      assertTrue(pinned().compareTo(pour.start()) > 0, "later than " + pour.start());
      screen.button("Take it back").click();
      assertThat(screen.text("It is taken back.")).isVisible();
      assertEquals("", pinned());
    }
  }

  @Test
  void escapeLeavesWhatIsBeingDraggedWhereItWas() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      Board board = Board.open(screen, "by=person&days=3");
      board.focusPourAhead();
      Mouse mouse = drag(screen, 60);
      board.press("Escape");
      assertThat(board.bars(".dragged")).hasCount(0);
      mouse.up();
      assertEquals("", pinned());
    }
  }

  @Test
  void keysMoveAPourAndPinItAndOneKeyPinsItWhereItIs() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      Board board = Board.open(screen, "by=person&days=3");
      Board.Pour pour = board.focusPourAhead();
      board.press("Shift+ArrowRight").press("Shift+ArrowRight");
      assertThat(board.bars(".dragged")).isVisible();
      board.press("Enter");
      assertThat(screen.text(Pattern.compile("^Pinned: " + pour.mix()))).isVisible();
      assertTrue(pinned().compareTo(pour.start()) > 0, "later than " + pour.start());
      screen.button("Take it back").click();
      assertThat(screen.text("It is taken back.")).isVisible();
      board.focusPourAhead();
      board.press("p");
      assertThat(screen.text(Pattern.compile("^Pinned: " + pour.mix()))).isVisible();
      assertEquals(pour.start(), pinned());
      assertThat(board.bars(".bar.pinned").first()).isVisible();
      board.focusPourAhead();
      board.press("p");
      assertThat(screen.text("The pin is out.")).isVisible();
      assertEquals("", pinned());
    }
  }

  @Test
  void aPhonePinsFromTheCardWithoutDragging() {
    try (Screen screen = Screen.of(house, Look.NARROW)) {
      screen.open("/week?days=7");
      Locator pour = screen.button(Pattern.compile("^pour ")).last();
      pour.tap();
      screen.button("Pin it at another time…").tap();
      screen.field("Who pours").selectOption("Tobias");
      assertThat(screen.text(Pattern.compile("^Nearest time in their hours: "))).isVisible();
      screen.picture("week-move").isAccessible();
      screen.button("Pin it there").tap();
      assertThat(screen.text(Pattern.compile("^Pinned: .*, Tobias"))).isVisible();
      assertTrue(house.get("/api/book").contains("\"person\": \"tobias\""));
      assertThat(screen.text(Pattern.compile("not kept yet"))).isVisible();
    }
  }

  /** Drags what has focus to the right, and holds it. */
  private static Mouse drag(Screen screen, double far) {
    List<?> box =
        (List<?>)
            screen
                .page()
                .evaluate(
                    "() => { let e = document.activeElement;"
                        + " while (e.shadowRoot?.activeElement) { e = e.shadowRoot.activeElement; }"
                        + " const b = e.getBoundingClientRect();"
                        + " return [b.x + Math.min(8, b.width / 2), b.y + b.height / 2]; }");
    double x = ((Number) box.get(0)).doubleValue();
    double y = ((Number) box.get(1)).doubleValue();
    Mouse mouse = screen.page().mouse();
    mouse.move(x, y);
    mouse.down();
    mouse.move(x + far / 2, y);
    mouse.move(x + far, y, new Mouse.MoveOptions().setSteps(4));
    return mouse;
  }

  /** When the first pin of the book starts; empty when it has none. */
  private String pinned() {
    String book = house.get("/api/book");
    int pins = book.indexOf("\"pins\"");
    Matcher start = START.matcher(pins < 0 ? "" : book.substring(pins));
    return start.find() ? start.group(1) : "";
  }
}
