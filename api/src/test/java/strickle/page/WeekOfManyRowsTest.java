package strickle.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.book.Book;
import strickle.book.Form;
import strickle.demo.Generator;
import strickle.json.BookFile;

/** A studio of many forms: the board keeps in the document what is seen, and prints all of it. */
@BrowserTest
class WeekOfManyRowsTest {

  private static final int ROWS = 300;
  private static final int CASTINGS = 300;
  private static final int MOST_NODES = 800;

  private static final Book BOOK = withForms(Generator.book(CASTINGS, 1));

  @TempDir static Path folder;

  private static StudioHouse house;

  @BeforeAll
  static void begin() {
    house = StudioHouse.demo(folder);
    house.takeBook(BookFile.write(BOOK));
    house.workByAPlan(1);
  }

  @AfterAll
  static void end() {
    house.close();
  }

  /** The same book with so many of each form that their units are the rows wanted. */
  private static Book withForms(Book book) {
    int each = Math.ceilDiv(ROWS, book.forms().size());
    List<Form> forms =
        book.forms().stream()
            .map(f -> new Form(f.id(), f.name(), each, f.costEach(), f.lifeCastings()))
            .toList();
    return new Book(
        book.studio(),
        book.people(),
        book.stations(),
        forms,
        book.moulds(),
        book.materials(),
        book.mixes(),
        book.pieces(),
        book.orders(),
        book.channels(),
        book.fairs(),
        book.pins());
  }

  @Test
  void fourWeeksOfThreeHundredRowsAreFewNodesWhereverOneLooks() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      Board board = Board.open(screen, "by=form&days=28");
      assertTrue(board.rows("forms") >= ROWS, board.rows("forms") + " rows");
      for (String place : List.of("0", "4000", "1e9")) {
        board.asks("b => { b.viewNode.scrollTop = " + place + "; b.viewNode.scrollLeft = 400; }");
        screen.nextFrame();
        int nodes =
            ((Number) board.asks("b => b.renderRoot.querySelectorAll('*').length")).intValue();
        assertTrue(nodes <= MOST_NODES, nodes + " nodes at " + place);
        assertTrue(board.bars(".row").count() > 5, "rows in sight");
      }
    }
  }

  @Test
  void theFocusStaysWhereItIsThoughItsRowIsScrolledAway() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      Board board = Board.open(screen, "by=form&days=28");
      board.bars("[tabindex='0']").focus();
      String place = board.focused();
      board.asks("b => { b.viewNode.scrollTop = 1e9; }");
      screen.nextFrame();
      assertEquals(place, board.focused());
      board.press("Control+End");
      assertEquals("s-week-board", board.focusedIn());
    }
  }

  @Test
  void everyRowStandsOnPaper() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      Board board = Board.open(screen, "by=form&days=28");
      Object rows =
          board.asks("b => b.board.rows.filter(r => r.form).map(r => r.form.name + ' ' + r.unit)");
      byte[] pdf = screen.paper("week-300-rows", new Page.PdfOptions().setLandscape(true));
      String words = Paper.words(pdf);
      List<String> missing =
          ((List<?>) rows)
              .stream()
                  .map(String::valueOf)
                  .filter(row -> !(" " + words + " ").contains(" " + row + " "))
                  .toList();
      assertEquals(List.of(), missing, "rows that are not on paper");
      assertEquals(0, board.bars(".paper .sheet").count(), "sheets that stay in the document");
    }
  }
}
