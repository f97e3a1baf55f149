package strickle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.safety.Routes.assertSilent;
import static strickle.safety.Routes.book;
import static strickle.safety.Routes.only;
import static strickle.safety.Routes.step;
import static strickle.safety.Routes.two;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strickle.book.Book;
import strickle.book.SampleBook;
import strickle.book.Step;
import strickle.book.WaitKind;

/** What makes sense is common practice, no source. */
class RouteSenseTest {

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
    assertSilent(step("wax", WaitKind.REST, 72));
    assertSilent(step("seal", WaitKind.CURE, 72), step("polish", WaitKind.CURE, 48));
  }

  @Test
  void sealingRightOutOfTheMouldIsSaid() {
    Advice advice = only(step("wax", WaitKind.REST, 2));
    assertTrue(advice.said().contains("2 h out of the mould, with no cure"), advice.said());
    assertTrue(advice.sure());
  }

  @Test
  void aCureShorterThanTheSetOfTheMouldIsNoCure() {
    // The mould of the example sets for 20 h.
    Advice advice = only(step("seal", WaitKind.CURE, 2));
    assertEquals(
        "\"seal\" may come 2 h out of the mould, 2 h of it cure, where its mould alone takes 20 h"
            + " to set",
        advice.said());
    assertTrue(advice.basis().startsWith("setHours of the mould"), advice.basis());
    assertTrue(advice.sure());
    assertTrue(only(step("seal", WaitKind.CURE, 19.9)).sure());
    assertFalse(only(step("seal", WaitKind.CURE, 20)).sure());
  }

  @Test
  void aCureShorterThanIsUsualIsAskedAndMarkedAsCommonPractice() {
    Advice advice = only(step("seal", WaitKind.CURE, 71.9));
    assertFalse(advice.sure());
    assertTrue(advice.basis().startsWith("common practice, no source"), advice.basis());
    assertSilent(step("wet sand the rim", WaitKind.REST, 2), step("seal", WaitKind.CURE, 70));
  }

  @Test
  void aCureMuchShorterThanTheSameMixGetsElsewhereIsAsked() {
    Book book = two(step("seal", WaitKind.CURE, 80), step("seal", WaitKind.CURE, 160));
    List<Advice> advice = RouteSense.of(book);
    assertEquals(1, advice.size(), advice.toString());
    assertEquals("$.pieces[0].route[0]", advice.get(0).path());
    assertTrue(advice.get(0).said().contains("gets 160 h elsewhere"), advice.get(0).said());
    assertEquals("the waits before $.pieces[1].route[0]", advice.get(0).basis());
    assertFalse(advice.get(0).sure());
    assertEquals(
        List.of(),
        RouteSense.of(two(step("seal", WaitKind.CURE, 81), step("seal", WaitKind.CURE, 160))));
  }

  @Test
  void everyFindingSaysWhyWhatWouldBeBetterAndWhatItGoesBy() {
    List<Advice> advice =
        RouteSense.of(
            book(
                0,
                step("gild", WaitKind.REST, 1),
                step("glue", WaitKind.REST, 0),
                step("felt", WaitKind.REST, 0),
                step("seal", WaitKind.REST, 1),
                step("seal", WaitKind.REST, 0)));
    assertEquals(5, advice.size(), advice.toString());
    for (Advice one : advice) {
      assertTrue(one.because().endsWith("."), one.toString());
      assertTrue(one.rather().endsWith("."), one.toString());
      assertTrue(one.toString().endsWith("(Based on " + one.basis() + ".)"), one.toString());
      assertFalse(one.basis().isBlank());
    }
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
  void whatLooksAtAWetCoatIsNoFaceLaidOnIt() {
    Step seal = step("lacquer", WaitKind.CURE, 96);
    assertSilent(seal, step("check for runs", WaitKind.REST, 0), step("lacquer", WaitKind.DRY, 4));
    assertSilent(seal, step("photograph", WaitKind.REST, 0));
    only(seal, step("sign the foot", WaitKind.REST, 0));
  }

  @Test
  void waxAndOilAreRubbedOutWhileTheyAreWet() {
    Step oil = step("wipe on tung oil", WaitKind.CURE, 96);
    assertSilent(oil, step("wipe off the excess", WaitKind.REST, 0));
    assertSilent(oil, step("buff", WaitKind.REST, 0.3));
    assertSilent(step("paste wax", WaitKind.CURE, 96), step("polish", WaitKind.REST, 0.2));
    only(step("lacquer", WaitKind.CURE, 96), step("buff", WaitKind.REST, 0.3));
    only(oil, step("felt the foot", WaitKind.REST, 0.3));
  }

  @Test
  void aCoatThatIsOnlyLookedAtIsPackedAsWetAsItIs() {
    Step seal = step("seal", WaitKind.CURE, 96);
    Advice advice = RouteSense.of(book(0, seal, step("photo", WaitKind.REST, 0))).get(0);
    assertEquals("$.pieces[0].finalDryHours", advice.path());
    assertTrue(advice.sure());
    Step later = step("photo", WaitKind.DRY, 1.5);
    assertTrue(RouteSense.of(book(0.4, seal, later)).get(0).said().contains("1.9 h after"));
    assertEquals(List.of(), RouteSense.of(book(0.5, seal, later)));
  }

  @Test
  void limewashMayGoOnADampPiece() {
    assertSilent(step("limewash", WaitKind.REST, 4));
    only(step("paint", WaitKind.REST, 4));
  }

  @Test
  void whatSticksByItselfNeedsNoGlueOfAnotherStep() {
    assertSilent(step("stick on bumpers", WaitKind.CURE, 96), step("label", WaitKind.REST, 48));
    only(step("glue", WaitKind.CURE, 96), step("stick the felt on", WaitKind.REST, 0));
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
    assertSilent(step("seal", WaitKind.CURE, 72), step(words, WaitKind.DRY, 4));
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
}
