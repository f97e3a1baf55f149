package strickle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.safety.Routes.DRY_LATER;
import static strickle.safety.Routes.assertSilent;
import static strickle.safety.Routes.book;
import static strickle.safety.Routes.only;
import static strickle.safety.Routes.step;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strickle.book.After;
import strickle.book.Book;
import strickle.book.Draft;
import strickle.book.Material;
import strickle.book.SampleBook;
import strickle.book.Step;
import strickle.book.Use;
import strickle.book.WaitKind;

/** How long glues are open is common practice, no source. */
class GlueRuleTest {
  @Test
  void glueThatIsClosedBeforeTheLastPieceIsGluedIsSaid() {
    // Two pieces in a typical run at 20 minutes each: the first waits 20 minutes for the second,
    // 3 until the felt is set up and 4 until it is laid.
    Step glue = step("glue the foot, open 15 min", WaitKind.CURE, 96, 20);
    Advice advice = only(glue, step("felt", WaitKind.REST, 0, OptionalDouble.of(0.25)));
    assertTrue(
        advice
            .said()
            .contains("a piece waits 27 min until it is laid, and the glue is open for 15 min"),
        advice.said());
    Step slow = step("glue the foot, open 1 h", WaitKind.CURE, 96, 20);
    assertSilent(slow, step("felt", WaitKind.REST, 0, OptionalDouble.of(0.5)));
    only(slow, step("felt", WaitKind.REST, 1, OptionalDouble.of(1)));
  }

  @Test
  void theMostWaitIsTheOpenTimeWhenNoneIsSaid() {
    Step glue = step("glue", WaitKind.CURE, 96, 40);
    // 40 minutes for the second piece, 3 and 4 until the first is laid: 47, and 0.8 h are 48.
    assertSilent(glue, step("felt", WaitKind.REST, 0, OptionalDouble.of(0.8)));
  }

  @Test
  void aMostWaitThatIsLongerThanGluesAreOpenIsAsked() {
    Step glue = step("glue", WaitKind.CURE, 96);
    assertSilent(glue, step("felt", WaitKind.REST, 0, OptionalDouble.of(1)));
    Advice advice = only(glue, step("felt", WaitKind.REST, 0, OptionalDouble.of(24)));
    assertTrue(advice.said().contains("wait up to 1440 min"), advice.said());
    assertTrue(advice.basis().startsWith("common practice, no source"), advice.basis());
    assertFalse(advice.sure());
    assertSilent(
        step("size", WaitKind.CURE, 96), step("gild", WaitKind.REST, 3, OptionalDouble.of(12)));
  }

  @Test
  void theLongestThatTheRouteAllowsHasToBeWithinTheOpenTime() {
    // One hour of waiting, then 4 minutes for the other piece, 3 and 4 of laying.
    Step felt = step("felt", WaitKind.REST, 0, OptionalDouble.of(1));
    Advice advice = only(step("glue, open 70 min", WaitKind.CURE, 96), felt);
    assertTrue(advice.said().contains("up to 71 min"), advice.said());
    assertEquals("the words of the step", advice.basis());
    assertSilent(step("glue, open 71 min", WaitKind.CURE, 96), felt);
  }

  @Test
  void slowLayingLetsTheLastPieceWaitAndStepsBetweenLetAll() {
    // The second piece: 3 minutes to set up, 30 for the first, 30 for itself.
    Step felt = step("felt", WaitKind.REST, 0, 30, OptionalDouble.of(0));
    assertSilent(step("glue, open 63 min", WaitKind.CURE, 96), felt);
    only(step("glue, open 62 min", WaitKind.CURE, 96), felt);
    // A step between takes 3 and twice 4 minutes.
    Step wipe = step("wipe the edge", WaitKind.REST, 0, OptionalDouble.of(0));
    only(step("glue, open 63 min", WaitKind.CURE, 96), wipe, felt);
    assertSilent(step("glue, open 74 min", WaitKind.CURE, 96), wipe, felt);
  }

  @ParameterizedTest
  @CsvSource({"press", "clamp the feet", "press the pads on", "clamping"})
  void pressingAndClampingIsLaying(String words) {
    Advice advice =
        only(
            step("glue the feet, open 10 min", WaitKind.CURE, 96),
            step(words, WaitKind.REST, 1, OptionalDouble.of(1)));
    assertTrue(advice.said().contains("waits 71 min"), advice.said());
    assertTrue(advice.sure());
    only(step("glue the felt", WaitKind.CURE, 96), step(words, WaitKind.REST, 0));
  }

  @Test
  void anotherGlueBeginsAnotherOpenTime() {
    assertSilent(
        step("glue the felt, open 10 min", WaitKind.CURE, 96),
        step("glue the cork", WaitKind.REST, 5));
  }

  @Test
  void theNameOfAGlueMaySayHowLongItIsOpen() {
    Book example = SampleBook.example();
    Material sealer = example.material("sealer");
    Material glue =
        new Material(
            sealer.id(),
            "contact glue, open time 20 min",
            "glue",
            sealer.unit(),
            sealer.relativeDensity(),
            sealer.cementPercent(),
            sealer.pack(),
            sealer.onHand(),
            sealer.leadDays());
    Step feet =
        new Step(
            "glue the feet",
            3,
            4,
            new After(WaitKind.CURE, 96, OptionalDouble.empty()),
            List.of(),
            List.of(new Use("sealer", BigDecimal.ONE)),
            Optional.empty());
    Step clamp = step("clamp", WaitKind.REST, 0, OptionalDouble.of(0.5));
    List<Material> materials =
        example.materials().stream().map(m -> m.id().equals("sealer") ? glue : m).toList();
    Book book =
        Draft.of(book(DRY_LATER, feet, clamp)).materials(materials.toArray(Material[]::new)).book();
    List<Advice> advice = RouteSense.of(book);
    assertEquals(1, advice.size(), advice.toString());
    assertEquals("the name of \"contact glue, open time 20 min\"", advice.get(0).basis());
    assertTrue(advice.get(0).said().contains("up to 41 min"), advice.get(0).said());
  }

  @Test
  void anOpenTimeThatNothingKeepsIsSaid() {
    Advice advice = only(step("glue", WaitKind.CURE, 96), step("felt", WaitKind.REST, 0));
    assertEquals("$.pieces[0].route[1].after.atMostHours", advice.path());
    only(
        step("glue, open 10 min", WaitKind.CURE, 96, 1),
        step("felt", WaitKind.REST, 0, OptionalDouble.of(2)));
  }

  @Test
  void whatIsGluedAndLaidInOneStepNeedsOpenTimeForOnePieceOnly() {
    assertSilent(step("glue the felt", WaitKind.CURE, 96, 40));
    assertSilent(step("glue the felt (open time 10 min)", WaitKind.CURE, 96, 10));
    only(step("glue the felt (open time 10 min)", WaitKind.CURE, 96, 11));
  }
}
