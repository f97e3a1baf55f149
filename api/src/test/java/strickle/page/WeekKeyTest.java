package strickle.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Media;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The Week's key on paper, where there is no colour. */
@BrowserTest
class WeekKeyTest {

  /** The lines around an element, without their colours. */
  private static final String FORM =
      """
      e => {
        const style = getComputedStyle(e);
        return ['Top', 'Right', 'Bottom', 'Left']
          .map(side => style['border' + side + 'Width'] + ' ' + style['border' + side + 'Style'])
          .join(', ');
      }
      """;

  @TempDir Path folder;

  @Test
  void dueAndLateDifferInFormAsTheirFlagsDo() {
    try (StudioHouse house = StudioHouse.demo(folder);
        Screen screen = Screen.of(house, Look.WIDE)) {
      house.takeBook(
          house
              .get("/api/book")
              .replaceFirst("\"due\": \"[^\"]+\"", "\"due\": \"2027-03-02T08:00\""));
      house.workByAPlan(1);
      screen.open("/week?days=28");
      screen.paper("week-key", new Page.PdfOptions());
      screen.page().emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
      screen.page().evaluate("() => dispatchEvent(new Event('beforeprint'))");
      String due = form(screen, "s-board-key .due");
      String late = form(screen, "s-board-key .late");
      assertNotEquals(due, late);
      assertEquals(late, form(screen, ".paper .bar.flag.behind-time"));
      assertEquals(due, form(screen, ".paper .bar.flag:not(.behind-time)"));
    }
  }

  private static String form(Screen screen, String element) {
    return String.valueOf(screen.page().locator(element).first().evaluate(FORM));
  }
}
