package strickle.page;

import com.microsoft.playwright.Locator;
import java.util.List;
import java.util.Map;

/** The week's board on a screen. */
final class Board {

  /** Finds a pour some days ahead that stands by itself, and puts the focus on it. */
  private static final String FOCUS_POUR_AHEAD =
      """
      b => {
        const fits = ({bar}) =>
          bar.kind === 'task' && bar.task.kind === 'pour' && bar.from > b.now + 3 * 1440;
        const row = b.board.rows.findIndex((r, at) => r.person && b.board.items(at).some(fits));
        const item = b.board.items(row).findIndex(fits);
        const {bar} = b.board.items(row)[item];
        b.focusAt({row, item, minute: bar.from});
        return {lot: bar.lot.id, person: bar.task.person, mix: bar.lot.mix.name,
          start: b.week.local(bar.from)};
      }
      """;

  private final Screen screen;

  private Board(Screen screen) {
    this.screen = screen;
  }

  /** Opens the week as a board, with more in its address such as {@code by=person}. */
  static Board open(Screen screen, String more) {
    screen.open("/week?show=board&" + more);
    Board board = new Board(screen);
    board.locator().locator(".bar").first().waitFor();
    return board;
  }

  /** The board itself. */
  Locator locator() {
    return screen.page().locator("s-week-board");
  }

  /** Bars in the document, by what tells them in CSS such as {@code .hands .bar}. */
  Locator bars(String css) {
    return locator().locator(css);
  }

  /** The card that a bar opens. */
  Locator card() {
    return screen.page().locator("s-week-card .card");
  }

  /** What a function of the board says. */
  Object asks(String function) {
    return locator().evaluate(function);
  }

  /** How many rows there are of a band, whether they are in the document or not. */
  long rows(String band) {
    return ((List<?>) asks("b => b.board.rows.filter(r => !r.heading).map(r => r.band)"))
        .stream().filter(band::equals).count();
  }

  /** Puts the focus on a pour some days ahead, and says which. */
  Pour focusPourAhead() {
    Map<?, ?> found = (Map<?, ?>) asks(FOCUS_POUR_AHEAD);
    return new Pour(
        (String) found.get("lot"),
        (String) found.get("person"),
        (String) found.get("mix"),
        (String) found.get("start"));
  }

  /**
   * A pour of the plan.
   *
   * @param start local time, as the book writes it
   */
  record Pour(String lot, String person, String mix, String start) {}

  /** The host of what has focus: the name of the component it stands in. */
  String focusedIn() {
    return screen.focused("e => e.getRootNode().host?.localName ?? ''");
  }

  /** What has focus, in words. */
  String focused() {
    return screen.focused("e => e.getAttribute('aria-label') ?? e.innerText");
  }

  /** Presses a key. */
  Board press(String key) {
    screen.page().keyboard().press(key);
    return this;
  }
}
