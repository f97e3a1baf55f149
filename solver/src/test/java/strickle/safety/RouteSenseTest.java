package strickle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strickle.book.After;
import strickle.book.Book;
import strickle.book.Draft;
import strickle.book.Piece;
import strickle.book.SampleBook;
import strickle.book.Step;
import strickle.book.WaitKind;

/** What makes sense is common practice, no source. */
class RouteSenseTest {

  private static final double DRY_LATER = 24;

  @Test
  void theExampleMakesSense() {
    assertEquals(List.of(), RouteSense.of(SampleBook.example()));
    assertEquals(List.of(), RouteSense.unread(SampleBook.example()));
  }

  @Test
  void sealingBeforeTheCureIsSaid() {
    Advice advice =
        only(step("seal", WaitKind.REST, 1), step("wet sand the rim", WaitKind.CURE, 120));
    assertEquals("$.pieces[0].route[0]", advice.path());
    assertTrue(
        advice.said().contains("\"seal\" stands before a cure wait of 120 h"), advice.said());
    assertTrue(advice.sure());
  }

  @Test
  void sealingAfterTheCureIsRight() {
    assertSilent(step("seal", WaitKind.CURE, 120));
    assertSilent(step("wax", WaitKind.REST, 24));
    assertSilent(step("seal", WaitKind.CURE, 72), step("polish", WaitKind.CURE, 48));
  }

  @Test
  void sealingRightOutOfTheMouldIsSaid() {
    Advice advice = only(step("wax", WaitKind.REST, 2));
    assertTrue(advice.said().contains("2 h out of the mould, with no cure"), advice.said());
    only(step("wax", WaitKind.REST, 23.9));
  }

  @Test
  void aFaceLaidOnAWetCoatIsSaid() {
    Step seal = step("seal", WaitKind.CURE, 96);
    Advice advice = only(seal, step("felt the foot", WaitKind.REST, 0));
    assertEquals("$.pieces[0].route[1]", advice.path());
    assertTrue(advice.said().contains("right after \"seal\""), advice.said());
    assertTrue(advice.sure());
    assertFalse(only(seal, step("felt the foot", WaitKind.DRY, 1)).sure());
    assertSilent(seal, step("felt the foot", WaitKind.DRY, 2));
  }

  @Test
  void aSecondCoatOnAWetOneIsOnlyAsked() {
    Step seal = step("first seal coat", WaitKind.CURE, 96);
    assertFalse(only(seal, step("second seal coat", WaitKind.REST, 0)).sure());
  }

  @Test
  void whatDriesBetweenTwoStepsCountsThroughThoseBetween() {
    assertSilent(
        step("seal", WaitKind.CURE, 96),
        step("felt the foot", WaitKind.DRY, 6),
        step("pack", WaitKind.REST, 0));
  }

  @Test
  void packingAWetCoatIsSaid() {
    Book book = book(0, step("seal", WaitKind.CURE, 96));
    Advice advice = RouteSense.of(book).get(0);
    assertEquals("$.pieces[0].finalDryHours", advice.path());
    assertTrue(advice.sure());
    assertEquals(List.of(), RouteSense.of(book(2, step("seal", WaitKind.CURE, 96))));
  }

  @ParameterizedTest
  @CsvSource({"gild the rim, Leaf", "paint the band, Paint", "apply copper leaf, Leaf"})
  void paintAndLeafOnADampUnsealedPieceAreSaid(String words, String what) {
    Advice fresh = only(step(words, WaitKind.REST, 4));
    assertTrue(fresh.said().contains("4 h after the mould"), fresh.said());
    assertTrue(fresh.because().startsWith(what), fresh.because());
    assertSilent(step(words, WaitKind.CURE, 48));
    assertSilent(step("seal", WaitKind.CURE, 24), step(words, WaitKind.DRY, 4));
  }

  @Test
  void aPieceThatWasWashedIsDampAgain() {
    Advice advice =
        only(
            step("wash off the dust", WaitKind.CURE, 120), step("paint the band", WaitKind.DRY, 3));
    assertTrue(advice.said().contains("3 h after \"wash off the dust\""), advice.said());
    only(step("wet sand", WaitKind.CURE, 120), step("gild", WaitKind.DRY, 3));
    assertSilent(step("dry sand", WaitKind.CURE, 120), step("gild", WaitKind.DRY, 3));
  }

  @Test
  void onePaintCoatOnAnotherIsNotOnADampPiece() {
    assertSilent(
        step("paint the band", WaitKind.CURE, 48), step("paint the band", WaitKind.DRY, 4));
  }

  @Test
  void glueThatIsClosedBeforeTheLastPieceIsGluedIsSaid() {
    // Two pieces in a typical run at 20 minutes each: the first waits 20 minutes, then 1 hour.
    Step glue = step("glue the foot, open 15 min", WaitKind.CURE, 96, 20);
    Advice advice = only(glue, step("felt", WaitKind.REST, 0, OptionalDouble.of(0.25)));
    assertTrue(
        advice.said().contains("the first piece waits 20 min, and the glue is open for 15 min"),
        advice.said());
    Step slow = step("glue the foot, open 1 h", WaitKind.CURE, 96, 20);
    assertSilent(slow, step("felt", WaitKind.REST, 0, OptionalDouble.of(1)));
    only(slow, step("felt", WaitKind.REST, 1, OptionalDouble.of(1)));
  }

  @Test
  void theMostWaitIsTheOpenTimeWhenNoneIsSaid() {
    Step glue = step("glue", WaitKind.CURE, 96, 40);
    only(glue, step("felt", WaitKind.REST, 0, OptionalDouble.of(0.5)));
    assertSilent(glue, step("felt", WaitKind.REST, 0, OptionalDouble.of(0.7)));
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

  @ParameterizedTest
  @CsvSource({
    "wet sand the rim, SAND",
    "first seal coat, SEAL",
    "sand the leaf tray, SAND",
    "polish the waxed face, SAND",
    "Rub down the rim and bag, SAND WET",
    "glue the felt, GLUE LAY",
    "seal; felt the foot, SEAL LAY",
    "knock off the flash, HANDLE",
    "ponder, ''"
  })
  void theFirstKnownWordOfEachClauseIsTheAct(String words, String acts) {
    Set<String> expected =
        acts.isEmpty() ? Set.of() : Set.copyOf(Arrays.asList(acts.split(" ", -1)));
    Set<String> found = new HashSet<>();
    Doing.of(step(words, WaitKind.REST, 0), false).acts().forEach(act -> found.add(act.name()));
    assertEquals(expected, found);
  }

  @Test
  void aCoatingUsedUpIsACoatButNotForSure() {
    Doing doing = Doing.of(step("second round", WaitKind.REST, 0), true);
    assertEquals(Set.of(Act.SEAL), doing.acts());
    assertFalse(doing.sure());
  }

  @Test
  void aWordOfTwoActsIsNotSure() {
    assertFalse(only(step("wax and then seal the leaf", WaitKind.REST, 1)).sure());
  }

  @Test
  void stepsWithoutAKnownWordAreNotJudgedAndNamedOnce() {
    Step odd = step("ponder", WaitKind.REST, 0);
    Book book = book(DRY_LATER, odd, odd, step("seal", WaitKind.CURE, 48));
    assertEquals(List.of(), RouteSense.of(book));
    assertEquals(List.of("ponder"), RouteSense.unread(book));
  }

  @Test
  void everyWordMeansOneAct() {
    Map<String, Act> seen = new HashMap<>();
    for (Act act : Act.values()) {
      act.words().forEach(word -> assertNull(seen.put(word, act), word));
    }
    assertTrue(seen.size() > 80);
  }

  private static void assertSilent(Step... steps) {
    assertEquals(List.of(), RouteSense.of(book(DRY_LATER, steps)));
  }

  private static Advice only(Step... steps) {
    List<Advice> advice = RouteSense.of(book(DRY_LATER, steps));
    assertEquals(1, advice.size(), advice.toString());
    return advice.get(0);
  }

  private static Book book(double finalDryHours, Step... steps) {
    Piece p = SampleBook.planterSlate();
    Piece piece =
        new Piece(
            p.id(),
            p.name(),
            p.mould(),
            p.mix(),
            p.goodPercent(),
            p.onHand(),
            p.typicalRun(),
            List.of(steps),
            finalDryHours,
            p.packing(),
            p.price(),
            p.leftoverValue());
    return Draft.of(SampleBook.example()).pieces(piece).book();
  }

  private static Step step(String words, WaitKind wait, double hours) {
    return step(words, wait, hours, 4);
  }

  private static Step step(String words, WaitKind wait, double hours, int each) {
    return step(words, wait, hours, each, OptionalDouble.empty());
  }

  private static Step step(String words, WaitKind wait, double hours, OptionalDouble most) {
    return step(words, wait, hours, 4, most);
  }

  private static Step step(
      String words, WaitKind wait, double hours, int each, OptionalDouble most) {
    After after = new After(wait, hours, most);
    return new Step(words, 3, each, after, List.of(), List.of(), Optional.empty());
  }
}
