package strickle.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A studio behind a password, which is set where the service is started. */
@BrowserTest
class PasswordDoorTest {

  private static final String PASSWORD = "grey dust on the sill";

  @TempDir Path folder;

  @Test
  void itIsOpenedByItsPasswordOnlyAndAClosedOneClosesInEveryWindow() {
    try (StudioHouse house = StudioHouse.closed(folder, "Ash Lane", PASSWORD);
        Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/orders");
      open(screen, "a guess");
      assertThat(screen.text("The name or the password is not right.")).isVisible();
      screen.picture("door").isAccessible();
      open(screen, PASSWORD);
      assertThat(screen.text("Ash Lane").first()).isVisible();
      Screen other = screen.another();
      other.open("/settings");
      other.button("Close the studio").click();
      assertThat(other.field("Password")).isVisible();
      screen.returnTo();
      assertThat(screen.field("Password")).isVisible();
      assertThat(screen.text(Pattern.compile("Ash Lane"))).hasCount(0);
      screen.forgetTroubles(); // the browser notes what was refused
      other.forgetTroubles();
    }
  }

  private static void open(Screen screen, String password) {
    screen.field("The studio’s name").last().fill("Ash Lane");
    screen.field("Password").fill(password);
    screen.button("Open").last().click();
  }
}
