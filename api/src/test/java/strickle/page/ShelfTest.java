package strickle.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
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

  private static final String WEDGE =
      """
      solid wedge
      facet normal 0 0 0 outer loop vertex 0 0 0 vertex 0 100 0 vertex 100 0 0 endloop endfacet
      facet normal 0 0 0 outer loop vertex 0 0 0 vertex 100 0 0 vertex 0 0 100 endloop endfacet
      facet normal 0 0 0 outer loop vertex 0 0 0 vertex 0 0 100 vertex 0 100 0 endloop endfacet
      facet normal 0 0 0 outer loop vertex 100 0 0 vertex 0 100 0 vertex 0 0 100 endloop endfacet
      endsolid wedge
      """;

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
      drop(screen, "open.stl", open);
      assertThat(screen.text(Pattern.compile("^open\\.stl was not taken: .*open edges: 3 of 3")))
          .isVisible();
      screen.forgetTroubles(); // the browser notes the refusal too
    }
  }

  @Test
  void aMeshIsMeasuredKeptAndTurnedByKeysAndByDragging() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/shelf/moulds/lantern-tall");
      screen.field("Told by").selectOption("a mesh (STL)");
      drop(screen, "wedge.stl", WEDGE);
      // A tetrahedron on three edges of 100 mm at right angles: 100³ / 6 mm³.
      assertThat(screen.text("Holds 167 ml")).isVisible();
      Locator view = screen.page().locator("s-mesh-view canvas");
      screen.picture("mould-of-mesh").isAccessible();
      Object before = drawn(view);
      view.focus();
      screen.page().keyboard().press("ArrowLeft");
      screen.nextFrame();
      Object turned = drawn(view);
      assertNotEquals(before, turned);
      view.dragTo(
          view, new Locator.DragToOptions().setSourcePosition(60, 60).setTargetPosition(160, 90));
      screen.nextFrame();
      assertNotEquals(turned, drawn(view));
      screen.button("Save").click();
      assertThat(screen.text(Pattern.compile("is saved\\.$"))).isVisible();
      screen.open("/shelf/moulds/lantern-tall");
      assertThat(view).isVisible();
    }
  }

  @Test
  void whatAMeshHoldsFollowsItsUnitAndStandsThereAgainAfterwards() {
    try (Screen screen = Screen.of(house, Look.NARROW)) {
      screen.open("/shelf/moulds/lantern-tall");
      screen.field("Told by").selectOption("a mesh (STL)");
      drop(screen, "wedge.stl", WEDGE);
      assertThat(screen.text("Holds 167 ml")).isVisible();
      screen.field("One unit of it is").selectOption("inches");
      // 25.4³ times as much.
      assertThat(screen.text(Pattern.compile("^Holds 2,?731"))).isVisible();
      screen.field("One unit of it is").selectOption("millimetres");
      assertThat(screen.text("Holds 167 ml")).isVisible();
      screen.button("Save").click();
      assertThat(screen.text(Pattern.compile("is saved\\.$"))).isVisible();
      screen.open("/shelf/moulds/lantern-tall");
      assertThat(screen.text("Holds 167 ml")).isVisible();
    }
  }

  @Test
  void aMeshOfTheSameNameLeavesTheOneOfAnotherMouldAlone() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/shelf/moulds/lantern-tall");
      screen.field("Told by").selectOption("a mesh (STL)");
      drop(screen, "wedge.stl", WEDGE);
      assertThat(screen.text("Holds 167 ml")).isVisible();
      screen.button("Save").click();
      assertThat(screen.text(Pattern.compile("is saved\\.$"))).isVisible();
      screen.open("/shelf/moulds/new");
      screen.field("Told by").selectOption("a mesh (STL)");
      drop(screen, "wedge.stl", WEDGE.replace("100", "50"));
      assertThat(screen.text("By wedge-2.stl")).isVisible();
      assertThat(screen.text(Pattern.compile("^Holds 2[01]\\D"))).isVisible();
      assertTrue(house.get("/api/meshes/wedge.stl").contains("100"));
    }
  }

  @Test
  void aSolidWithAnEmptyMeasureIsNotSpokenOfInTheWordsOfTheService() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/shelf/moulds/new");
      screen.field("Told by").selectOption("solids put together");
      assertThat(screen.text("Holds 628 ml")).isVisible();
      screen.field("Radius").fill("");
      assertThat(screen.text(Pattern.compile("^Holds"))).isHidden();
      screen.field("Radius").fill("50");
      assertThat(screen.text("Holds 628 ml")).isVisible();
    }
  }

  @Test
  void aMixIsWeighedOutAndItsPigmentCheckedWhileItIsTyped() {
    try (Screen screen = Screen.of(house, Look.NARROW)) {
      screen.open("/shelf/mixes/basalt");
      assertThat(screen.text("Pigment is 5% of the cement; 10% is the most.")).isVisible();
      screen.page().locator("[path='pigment[0].percent'] input").fill("14");
      assertThat(screen.text(Pattern.compile("^Pigment is 14% of the cement, above 10%")))
          .isVisible();
      screen.page().locator("[path='wetDensityKgPerM3'] input").fill("2000");
      assertThat(screen.text(Pattern.compile("at 2,000\\s"))).isVisible();
    }
  }

  @Test
  void aMixThatIsNotSavedYetIsWeighedOutToo() {
    try (Screen screen = Screen.of(house, Look.WIDE)) {
      screen.open("/shelf/mixes/new");
      assertThat(screen.text(Pattern.compile("^One casting of .* wet, at "))).isVisible();
    }
  }

  private static Object drawn(Locator canvas) {
    return canvas.evaluate("c => c.toDataURL()");
  }

  private static void drop(Screen screen, String name, String stl) {
    screen
        .page()
        .locator("s-shelf-volume input[type=file]")
        .setInputFiles(new FilePayload(name, "model/stl", stl.getBytes(StandardCharsets.UTF_8)));
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
