package strickle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static strickle.safety.Routes.step;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import strickle.book.WaitKind;

/** Steps as makers write them. What the words mean is common practice, no source. */
class WordsTest {

  @ParameterizedTest
  @CsvSource({
    "dip in water repellent, SEAL",
    "apply densifier, SEAL",
    "treat with hardener, SEAL",
    "waterproof the inside, SEAL",
    "hydrophobic treatment, SEAL",
    "carnauba wax, SEAL",
    "re-oil, SEAL",
    "airbrush the edge, PAINT",
    "sponge on the color, PAINT",
    "colour the inside, PAINT",
    "patina, PAINT",
    "superglue, GLUE",
    "stick on bumpers, LAY",
    "apply sticker, LAY",
    "put on rubber feet, LAY",
    "insert glass tube, LAY",
    "screw on the hook, LAY",
    "fit the clock movement, LAY",
    "glue the magnets, GLUE LAY",
    "silicone the glass insert, GLUE LAY",
    "spray glue the felt, GLUE LAY",
    "set the magnet in epoxy, GLUE LAY",
    "mount with epoxy, GLUE LAY",
    "weight it down overnight, PRESS",
    "smooth the edges, SAND",
    "chamfer the rim, SAND",
    "ease the edges, SAND",
    "break the corners, SAND",
    "sandblast the face, SAND",
    "diamond pad the foot, SAND",
    "engrave the name, SAND",
    "buff to a shine, HANDLE",
    "burnish, HANDLE",
    "mask the edge with tape, HANDLE",
    "cut the felt, HANDLE",
    "cut the wicks, HANDLE",
    "tie the ribbon, HANDLE",
    "check the colour, LOOK",
    "quality check, LOOK",
    "photo, LOOK",
    "steam, WET",
    "dip in water, WET",
    "slurry coat, WET",
    "skim coat the holes, WET",
    "sand/seal, SAND SEAL",
    "oil and buff, HANDLE SEAL"
  })
  void aStepDoesWhatItsWordsSay(String words, String acts) {
    Set<String> found = new TreeSet<>();
    read(words).acts().forEach(act -> found.add(act.name()));
    assertEquals(new TreeSet<>(List.of(acts.split(" ", -1))), found);
  }

  @ParameterizedTest
  @CsvSource({
    "pour soy wax, false",
    "fill with wax and wick, false",
    "wax, true",
    "mount with epoxy, false",
    "pour clear resin, true",
    "seal the lid of the box, false"
  })
  void whatMayBeSomethingElseIsNotSure(String words, boolean sure) {
    assertEquals(sure, read(words).sure());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"brush on stone tonic", "wipe on the finish", "rub in balsam", "apply it"})
  void whatIsPutOnUnderAnUnknownNameIsNamedAndNotTakenForHandling(String words) {
    assertEquals(
        List.of(words),
        RouteSense.unread(Routes.book(Routes.DRY_LATER, step(words, WaitKind.REST, 0))));
  }

  @ParameterizedTest
  @CsvSource({
    "sand the rim, true",
    "'sand the rim, then rinse', true",
    "sand and wash, true",
    "rub down the rim and bag, true",
    "drill the hole, true",
    "wet sand the rim, false",
    "wet sand and polish, false",
    "'rinse, hone to 800', false",
    "sand under water, false",
    "cut the cork, false",
    "buff the wax, false"
  })
  void dustIsWhatIsTakenOffBeforeAnythingIsWet(String words, boolean dusty) {
    assertEquals(dusty, read(words).dusty());
  }

  @Test
  void aCoatOfSlurryNeedsNoGlovesForResin() {
    assertEquals(false, read("slurry coat").handlesCoats());
    assertEquals(false, read("check the colour").handlesCoats());
  }

  private static Doing read(String words) {
    return Doing.of(step(words, WaitKind.REST, 0), false);
  }
}
