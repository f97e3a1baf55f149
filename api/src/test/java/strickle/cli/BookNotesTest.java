package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What check notes of mixes and moulds. */
class BookNotesTest {

  // ASTM C979 §1.4, read: at most 10 % of the cement. The example's blend is 45 % cement, so 3 %
  // of the dry mix are 6.7 % of it, and 4.6 % are 10.2 %.
  private static final String DOSE = "\"percent\": 3.0";

  @TempDir Path folder;

  @Test
  void aMixWithTooMuchPigmentIsNotedByCheckAndByThePlan() {
    Path book = Shell.file(folder, "book.json", Shell.example(DOSE, "\"percent\": 4.6"));
    String note = "the pigment is 10.2 % of the cement, above 10 %, the most by ASTM C979";
    assertTrue(flat("check", book).contains("Note: mix \"slate\": " + note), flat("check", book));
    String plan = flat("plan", book, "--schedules", "1");
    assertTrue(plan.contains("Pigment slate: " + note), plan);
  }

  @Test
  void aMixWithinItsLimitIsNotNoted() {
    Path book = Shell.file(folder, "book.json", Shell.example());
    assertFalse(flat("check", book).contains("Note"), "check");
    assertFalse(flat("plan", book, "--schedules", "1").contains("Pigment"), "plan");
  }

  @Test
  void aPigmentThatCannotBeCheckedIsNotedByCheck() {
    String bagged = Shell.example(", \"cementPercent\": 45", "");
    Path book = Shell.file(folder, "book.json", bagged);
    String out = flat("check", book);
    assertTrue(out.contains("mix \"slate\": the pigment cannot be checked"), out);
  }

  @Test
  void aMeshIsToldWithItsUnitItsVolumeAndWhatMayCountTwice() {
    Shell.file(folder, "box.stl", tetrahedron(0));
    Shell.file(folder, "two.stl", tetrahedron(0) + tetrahedron(1));
    // Three edges of 100 at right angles: a sixth of a litre.
    String one = flat("check", book("\"box.stl\""));
    String told = "166.7 ml as measured from box.stl, one unit of it taken as 1 mm";
    assertTrue(one.contains("Note: mould \"deep planter\": " + told + "."), one);
    assertFalse(one.contains("counted twice"), one);
    String two = flat("check", book("\"two.stl\""));
    assertTrue(two.contains("333.3 ml as measured from two.stl"), two);
    assertTrue(two.contains("what they share is counted twice."), two);
  }

  private Path book(String mesh) {
    return Shell.file(
        folder, "book.json", Shell.example("\"volumeMl\": 1180", "\"mesh\": " + mesh));
  }

  private static String tetrahedron(int at) {
    String a = "vertex " + at + " 0 0 ";
    String b = "vertex " + (at + 100) + " 0 0 ";
    String c = "vertex " + at + " 100 0 ";
    String d = "vertex " + at + " 0 100 ";
    return "solid t\n"
        + face(a, c, b)
        + face(a, b, d)
        + face(a, d, c)
        + face(b, c, d)
        + "endsolid t\n";
  }

  private static String face(String a, String b, String c) {
    return "facet normal 0 0 0 outer loop " + a + b + c + "endloop endfacet\n";
  }

  private static String flat(Object... words) {
    Shell.Result result = Shell.run(words).done();
    assertEquals(0, result.code());
    return result.out().replaceAll("\\s+", " ");
  }
}
