package strickle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.safety.Routes.DRY_LATER;
import static strickle.safety.Routes.book;
import static strickle.safety.Routes.only;
import static strickle.safety.Routes.step;

import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strickle.book.Book;
import strickle.book.Step;
import strickle.book.WaitKind;

/** How the words of a route are read; what they mean is common practice, no source. */
class RouteWordsTest {

  @ParameterizedTest
  @CsvSource({
    "wet sand the rim, SAND",
    "first seal coat, SEAL",
    "sand the leaf tray, SAND",
    "polish the waxed face, SAND",
    "Rub down the rim and bag, SAND WET",
    "glue the felt, GLUE LAY",
    "glue and clamp, GLUE PRESS",
    "press the felt, LAY PRESS",
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

  @ParameterizedTest
  @CsvSource({
    "brush on sealer, SEAL, true",
    "brush on varnish, SEAL, true",
    "wipe with oil, SEAL, true",
    "rub in the wax, SEAL, true",
    "lay gold leaf, LEAF, true",
    "lay the leaf, LEAF, true",
    "'brush on size, open 15 min', GLUE, true",
    "coat with epoxy resin, SEAL, true",
    "pour clear resin, SEAL, true",
    "polyurethane top coat, SEAL, true",
    "shellac, SEAL, true",
    "spray with acrylic, SEAL, true",
    "spray clear coat, SEAL, true",
    "spray paint the band, PAINT, true",
    "a coat of glue, GLUE, true",
    "stain, PAINT, true",
    "buff with wax, SEAL, false",
    "sign with paint, PAINT, false",
    "seal the box, SEAL, false",
    "brush off dust before sealing, HANDLE, true",
    "sealing, SEAL, true",
    "stencilling, PAINT, true",
    "two coats of lacquer, SEAL, true",
    "lay the gold leaves, LEAF, true"
  })
  void whatIsPutOnIsTheActWhateverItIsPutOnWith(String words, String act, boolean sure) {
    Doing doing = Doing.of(step(words, WaitKind.REST, 0), false);
    assertEquals(Set.of(Act.valueOf(act)), doing.acts());
    assertEquals(sure, doing.sure());
  }

  @ParameterizedTest
  @CsvSource({
    "pack and seal the carton, HANDLE, false",
    "oil the form before next pour, '', true",
    "sand the leaf tray, SAND, true",
    "wipe off excess sealer, HANDLE, true",
    "check the seal, LOOK, true"
  })
  void aCoatOnlyNamedIsNoCoatOfThePieceButIsNeverSilent(
      String words, String act, boolean passedOver) {
    Step step = step(words, WaitKind.REST, 0);
    Doing doing = Doing.of(step, false);
    assertEquals(act.isEmpty() ? Set.of() : Set.of(Act.valueOf(act)), doing.acts());
    Book book = book(DRY_LATER, step);
    assertEquals(passedOver ? List.of(words) : List.of(), RouteSense.passedOver(book));
    assertEquals(List.of(), RouteSense.unread(book));
  }

  @Test
  void leafLaidOnADampPieceIsSaidInTheWordsOfTheTrade() {
    Advice advice = only(step("lay the leaf", WaitKind.REST, 4));
    assertTrue(advice.because().startsWith("Leaf does not hold on damp concrete"));
    assertTrue(advice.sure());
  }

  @Test
  void leafLaidADayAfterItsSizeClosedIsSaid() {
    Advice advice =
        only(
            step("brush on size, open 15 min", WaitKind.CURE, 96),
            step("lay gold leaf", WaitKind.REST, 24));
    assertTrue(advice.said().contains("the glue is open for 15 min"), advice.said());
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
    Book book = book(DRY_LATER, odd, odd, step("seal", WaitKind.CURE, 72));
    assertEquals(List.of(), RouteSense.of(book));
    assertEquals(List.of("ponder"), RouteSense.unread(book));
  }

  @Test
  void everyWordMeansOneAct() {
    Map<String, Act> seen = new HashMap<>();
    for (Act act : Act.values()) {
      for (String word : Vocabulary.words(act)) {
        assertNull(seen.put(word, act), word);
        assertEquals(word.toLowerCase(Locale.ROOT), word);
        assertEquals(Optional.of(word), Vocabulary.plain(word));
        assertEquals(Optional.of(act), Vocabulary.plain(word + "s").flatMap(Vocabulary::act));
      }
    }
    assertTrue(seen.size() > 80);
  }
}
