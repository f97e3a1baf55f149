package strickle.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.options.BoundingBox;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.book.Book;
import strickle.book.Form;
import strickle.demo.Demo;
import strickle.demo.Size;

/** The board of the week: what it shows, and how it is walked and asked. */
@BrowserTest
class WeekTest {

  private static final Book DEMO = Demo.book(Size.MEDIUM);

  /** "March 4 – 6, 2027", or "March 6, 2027" where one day fills the view. */
  private static final Pattern DAYS = Pattern.compile("March (\\d+)(?:\\D+(\\d+))?, 2027");

  /**
   * The first and the last day of which, or of the view, a quarter can be seen beside the names.
   */
  private static final String DAYS_SEEN =
      """
      b => {
        const view = b.viewNode.getBoundingClientRect();
        const [left, right] = [view.left + b.nameWidth, view.left + b.viewNode.clientWidth];
        const seen = [...b.renderRoot.querySelectorAll('.days .day')].filter(day => {
          const box = day.getBoundingClientRect();
          const part = Math.min(right, box.right) - Math.max(left, box.left);
          return part >= Math.min(box.width, right - left) / 4;
        });
        return [seen[0], seen.at(-1)].map(day => /\\d+/.exec(day.textContent)[0]);
      }
      """;

  /** The same of which nearly all can be seen. */
  private static final String DAYS_SEEN_WHOLE =
      DAYS_SEEN.replace("right - left) / 4", "right - left) * 3 / 4");

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
  void theBoardIsOneTabStopWhichRemembersItsPlace() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      Board board = Board.open(screen, "by=person");
      screen.page().getByLabel("Find on the board").focus();
      board.press("Tab");
      assertEquals("s-week-board", board.focusedIn());
      board.press("ArrowDown").press("ArrowRight");
      String place = board.focused();
      board.press("Tab");
      assertNotEquals("s-week-board", board.focusedIn());
      board.press("Shift+Tab");
      assertEquals(place, board.focused());
      assertEquals(1, board.bars("[tabindex='0']").count());
    }
  }

  @Test
  void arrowsLeadAlongARowAndFromRowToRow() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      Board board = Board.open(screen, "by=person");
      board.bars(".name[tabindex]").first().focus();
      board.press("Control+Home").press("ArrowDown").press("Home");
      assertEquals("rowheader", screen.focused("e => e.getAttribute('role')"));
      String name = board.focused();
      board.press("ArrowRight");
      String first = board.focused();
      board.press("End");
      String last = board.focused();
      board.press("ArrowDown").press("Home");
      String next = board.focused();
      assertEquals(4, List.of(name, first, last, next).stream().distinct().count(), next);
      board.press("ArrowUp");
      assertEquals(name, board.focused());
      assertEquals("yes", screen.focused(Screen.FOCUS_IS_SEEN));
    }
  }

  @Test
  void enterOpensWhatABarIsWhyItStandsThereAndWhatWouldMoveIt() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      Board board = Board.open(screen, "by=person&days=3");
      board.bars(".name[tabindex]").first().focus();
      board.press("Control+Home").press("ArrowDown").press("Home").press("ArrowRight");
      String bar = board.focused();
      board.press("Enter");
      // The plan begins at midnight and Maren comes at half past six: her hours are what it waited
      // for.
      assertThat(board.card()).containsText("Why then");
      assertThat(board.card()).containsText("Maren is open from");
      assertThat(board.card()).containsText("What would move it");
      assertThat(board.card()).containsText("Hours for Maren before");
      assertEquals("s-week-card", board.focusedIn());
      screen.picture("week-card").isAccessible();
      board.press("Escape");
      assertThat(board.card()).isHidden();
      assertEquals(bar, board.focused());
    }
  }

  @Test
  void restingOnABarShowsItWithoutTakingTheFocus() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      Board board = Board.open(screen, "by=form");
      Locator bar = board.bars(".forms .bar.form").first();
      String focused = board.focused();
      bar.hover();
      assertThat(board.card()).isVisible();
      assertThat(board.card()).containsText("Why then");
      assertEquals(focused, board.focused());
      screen.page().mouse().move(1, 1);
      assertThat(board.card()).isHidden();
    }
  }

  @Test
  void theBoardAndItsToolsAreNoWiderThanAPhone() {
    try (Screen screen = Screen.of(house, Look.NARROW)) {
      Board.open(screen, "by=form");
      screen.fitsTheWindow();
    }
  }

  @Test
  void aTapOpensItAtTheFootOfAPhone() {
    try (Screen screen = Screen.of(house, Look.NARROW)) {
      Board board = Board.open(screen, "by=person&days=3");
      board.bars(".hands .bar").first().tap();
      assertThat(board.card()).isVisible();
      BoundingBox box = board.card().boundingBox();
      assertEquals(Look.NARROW.height(), box.y + box.height, 1);
      screen.picture("week-card").isAccessible();
      screen.button("Close").click();
      assertThat(board.card()).isHidden();
    }
  }

  @Test
  void everyOrderIsAFlagThatSaysWhenItIsDueAndReady() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      Board board = Board.open(screen, "by=order&days=28");
      Object flags = board.asks("b => b.board.rows[0].bars.map(bar => bar.order.id)");
      assertEquals(DEMO.orders().size(), ((List<?>) flags).size());
      Locator flag = board.bars(".bar.flag").first();
      flag.click();
      assertThat(board.card()).containsText(Pattern.compile("Due .*, ready "));
    }
  }

  @Test
  void rowsAreByFormByPersonOrByOrderAndTheAddressSaysWhich() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      Board board = Board.open(screen, "");
      long units = DEMO.forms().stream().mapToLong(Form::count).sum();
      assertEquals(units, board.rows("forms"));
      assertEquals(DEMO.people().size(), board.rows("hands"));
      by(screen, "order");
      assertTrue(board.rows("orders") >= DEMO.orders().size());
      assertTrue(screen.page().url().contains("by=order"), screen.page().url());
      screen.page().reload();
      screen.settled();
      assertEquals(0, board.rows("forms"));
      by(screen, "person");
      assertEquals(
          "hands",
          board.asks("b => b.board.rows.find(r => !r.heading && r.band !== 'flags').band"));
    }
  }

  @Test
  void theTitleNamesTheDaysThatTheBoardShowsHoweverNarrowTheyAre() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      for (int day = 1; day <= 9; day++) {
        Board board = Board.open(screen, "by=person&days=3&at=2027-03-0" + day + "T00:00");
        screen.settled();
        Matcher title = DAYS.matcher(screen.page().locator("h1").innerText());
        assertTrue(title.find(), screen.page().locator("h1").innerText());
        String last = Objects.requireNonNullElse(title.group(2), title.group(1));
        assertEquals(List.of(title.group(1), last), board.asks(DAYS_SEEN), "from " + day);
      }
    }
  }

  @Test
  void laterLeavesNoDayOutHoweverWideTheDaysAre() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      for (int day = 1; day <= 9; day++) {
        Board board = Board.open(screen, "by=person&days=3&at=2027-03-0" + day + "T00:00");
        screen.settled();
        int whole = Integer.parseInt((String) ((List<?>) board.asks(DAYS_SEEN_WHOLE)).get(1));
        screen.button("Later").click();
        screen.settled();
        int next = Integer.parseInt((String) ((List<?>) board.asks(DAYS_SEEN)).get(0));
        assertTrue(day < next && next <= whole + 1, next + " after " + whole + ", from " + day);
      }
    }
  }

  private static void by(Screen screen, String way) {
    screen.page().locator("s-week-tools button").getByText(way, exactly()).click();
    assertThat(screen.page().locator("s-week-tools button[aria-pressed=true]"))
        .containsText(new String[] {"board", way});
  }

  private static Locator.GetByTextOptions exactly() {
    return new Locator.GetByTextOptions().setExact(true);
  }
}
