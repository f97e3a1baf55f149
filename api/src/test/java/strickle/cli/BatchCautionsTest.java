package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a batch says beside its weights. */
class BatchCautionsTest {

  private static final List<Object> RECIPE =
      List.of("batch", "--dry", "cement:parts=1,density=3.15", "--water", "percent=40");

  @Test
  void weighingAndMixingAreCautionedAgainstOnceEachWithTheirSources() {
    String out = run("--volume-ml", "1000", "--pigment", "red:percent=1,density=4.5");
    String flat = out.replaceAll("\\s+", " ");
    for (String words :
        List.of(
            "wet cement is caustic",
            "(mix and pour it; source: OSHA guidance 3351",
            "wear a fitting mask when weighing",
            "(weigh cement; weigh red; source: OSHA 29 CFR 1926.1153",
            "Follow your local codes and the product's sheet.")) {
      assertTrue(flat.contains(words), out);
      assertEquals(flat.indexOf(words), flat.lastIndexOf(words), out);
    }
    assertFalse(out.contains("lift with two"), out);
  }

  @Test
  void aHeavyBatchIsNotForOneToLift() {
    // 5 l at 1951 kg/m³ are 9.76 kg; from the floor 8.82 kg may be lifted.
    String out = run("--volume-ml", "5000");
    assertTrue(out.contains("(all of it, 9.8 kg (21.5 lb), 1.1 x the limit"), out);
  }

  @Test
  void whatHoldsNoCementIsNotCaustic() {
    String out =
        Shell.run(
                "batch",
                "--volume-ml",
                "100",
                "--dry",
                "plaster:parts=1,density=2.3,cement=0",
                "--water",
                "percent=60")
            .done()
            .out();
    assertFalse(out.contains("caustic"), out);
    assertTrue(out.contains("weigh plaster"), out);
  }

  @Test
  void aSpareMouldThatGetsNothingIsSaidTo() {
    String none = run("--volume-ml", "1000", "--spare", "cup=60ml");
    assertTrue(
        none.contains("Note: nothing is left over for cup: a batch that is rounded up"), none);
    String some = run("--volume-ml", "1000", "--spare", "cup=60ml", "--round-up-grams", "3000");
    assertFalse(some.contains("nothing is left over"), some);
    assertTrue(some.contains("8 x cup would leave"), some);
  }

  @Test
  void aMeasuredDensityLeavesNoAirToBeGiven() {
    List<Object> words = new ArrayList<>(RECIPE);
    words.addAll(List.of("--volume-ml", "1000", "--density", "1900", "--air", "3"));
    Shell.Result refused = Shell.run(words.toArray());
    assertEquals(List.of("--air"), refused.paths());
    assertEquals(Outcome.WRONG, refused.code());
  }

  @Test
  void aFineScaleIsShownWithItsDecimals() {
    String out =
        run("--volume-ml", "20", "--pigment", "red:percent=1,density=4.5", "--step-grams", "0.01");
    assertTrue(out.contains("0.28 g"), out);
  }

  private static String run(Object... more) {
    List<Object> words = new ArrayList<>(RECIPE);
    words.addAll(List.of(more));
    return Shell.run(words.toArray()).done().out();
  }
}
