package strickle.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Orders: entered, promised, imported, refused. */
@BrowserTest
class OrdersTest {

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
  void aNewOrderIsPromisedWhileItIsTypedAndKeptWhenSaved() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/orders/new");
      screen.field("Piece").selectOption("doorstop, brick");
      screen.field("How many").fill("2");
      assertThat(screen.text(Pattern.compile("2 × doorstop, brick: ready")))
          .isVisible(Screen.patiently());
      screen.button(Pattern.compile("^Promise ")).click();
      screen.field("For").fill("a bakery");
      screen.picture("order-promised");
      screen.button("Save").click();
      assertThat(screen.text("a bakery").first()).isVisible();
      assertTrue(house.get("/api/orders").contains("a bakery"));
    }
  }

  @Test
  void everyColumnOfPrintedOrdersHasItsName() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/orders");
      assertThat(screen.text("M-1").first()).isVisible();
      String words = Paper.words(screen.paper("orders", new Page.PdfOptions()));
      String names = "Order For What is wanted Worth Due Ready";
      assertTrue(words.contains(names), words);
    }
  }

  @Test
  void whatCannotBePromisedUntilTheWeekIsLaidOutAgainIsSaidInPlainWords() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/orders/new");
      screen.field("Piece").selectOption("doorstop, brick");
      screen.button("Save").click();
      assertThat(screen.link("New order").first()).isVisible();
      screen.open("/orders/new");
      screen.field("Piece").selectOption("match pot, brick");
      assertThat(screen.text(Pattern.compile("^The book has changed since the week")))
          .isVisible(Screen.patiently());
      assertThat(screen.link("To the week")).isVisible();
      screen.open("/what-if");
      assertThat(screen.heading("The plan is older than the book")).isVisible();
      assertThat(screen.text(Pattern.compile("rule \\d"))).hasCount(0);
      screen.open("/today");
      assertThat(screen.text(Pattern.compile("wet cement is caustic"))).isVisible();
      assertThat(screen.text(Pattern.compile("^The book has changed since the week"))).isVisible();
    }
  }

  @Test
  void aFormWithFaultsMovesFocusToOneSummaryThatLinksToTheFields() {
    try (Screen screen = Screen.of(house, Look.NARROW)) {
      screen.open("/orders/new");
      screen.field("How many").fill("none");
      screen.button("Save").click();
      assertThat(screen.text(Pattern.compile("not right yet"))).isVisible();
      assertEquals("summary", screen.focused("e => e.className"));
      screen.link("How many").click();
      assertEquals("box", screen.focused("e => e.id"));
      screen.isAccessible();
    }
  }

  @Test
  void ofATableTheGoodOrdersAreTakenAndEveryBadRowIsTold() {
    String csv =
        """
        order,for,due,piece,quantity
        T-1,a florist,2027-04-20T10:00,doorstop-brick,2
        T-2,a florist,2027-04-20T10:00,no-such-piece,2
        """;
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/orders");
      screen
          .page()
          .locator("input[type=file]")
          .setInputFiles(
              new FilePayload("orders.csv", "text/csv", csv.getBytes(StandardCharsets.UTF_8)));
      assertThat(screen.text("One order was taken from orders.csv.")).isVisible();
      assertThat(screen.text(Pattern.compile("no-such-piece"))).isVisible();
      assertTrue(house.get("/api/orders").contains("T-1"));
    }
  }

  @Test
  void whatIsTypedOutlivesAReload() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/orders/new");
      screen.field("For").fill("a reader of long books");
      screen.page().waitForTimeout(300);
      screen.open("/orders/new");
      assertThat(screen.field("For")).hasValue("a reader of long books");
    }
  }
}
