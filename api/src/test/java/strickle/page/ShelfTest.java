package strickle.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The shelf: things are made, changed and removed, and told of before they are saved. */
@BrowserTest
class ShelfTest {

  @TempDir Path folder;

  private StudioHouse house;

  @BeforeEach
  void begin() {
    house = StudioHouse.demo(folder);
  }

  @AfterEach
  void end() {
    house.close();
  }

  @Test
  void aMouldIsPutTogetherFromSolidsAndItsVolumeStandsBesideThem() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/shelf/moulds/new");
      screen.field("Name").first().fill("straight bowl");
      screen.field("Told by").selectOption("solids put together");
      screen.field("Radius").fill("50");
      screen.field("Height").fill("100");
      // A cylinder of 50 mm radius and 100 mm height: π · 25 · 10 cm³.
      assertThat(screen.text("Holds 785 ml")).isVisible();
      screen.picture("mould-of-solids");
      screen.button("Save").click();
      assertThat(screen.link("straight bowl")).isVisible();
      assertTrue(house.get("/api/moulds/straight-bowl").contains("cylinder"));
    }
  }

  @Test
  void aMeshThatIsNotClosedIsRefusedWithItsOpenEdges() {
    String open =
        """
        solid open
        facet normal 0 0 1 outer loop vertex 0 0 0 vertex 9 0 0 vertex 0 9 0 endloop endfacet
        endsolid open
        """;
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/shelf/moulds/lantern-tall");
      screen.field("Told by").selectOption("a mesh (STL)");
      screen
          .page()
          .locator("s-shelf-volume input[type=file]")
          .setInputFiles(
              new FilePayload("open.stl", "model/stl", open.getBytes(StandardCharsets.UTF_8)));
      assertThat(screen.text(Pattern.compile("open edges: 3 of 3"))).isVisible();
      screen.forgetTroubles(); // the browser notes the refusal too
    }
  }

  @Test
  void whatAPieceStillNeedsCannotBeRemoved() {
    try (Screen screen = Screen.of(house, Look.NARROW)) {
      screen.open("/shelf/mixes/basalt");
      screen.button("Remove it").click();
      assertThat(screen.text(Pattern.compile("It cannot be removed"))).isVisible();
      screen.forgetTroubles();
      assertTrue(house.get("/api/mixes").contains("\"basalt\""));
    }
  }

  @Test
  void aRouteThatMakesNoSenseIsToldOfWhileItIsTyped() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/shelf/pieces/doorstop-brick");
      screen.field("Step").first().fill("seal coat");
      assertThat(screen.text("Does that make sense?")).isVisible(Screen.patiently());
    }
  }
}
