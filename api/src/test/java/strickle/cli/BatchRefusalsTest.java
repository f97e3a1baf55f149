package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Batches that cannot be worked out. */
class BatchRefusalsTest {

  @Test
  void everythingWrongIsToldAtOnce() {
    Shell.Result refused =
        Shell.run(
            "batch",
            "--dry",
            "x:parts=0",
            "--dry",
            "y",
            "--pigment",
            "z:percent=a,of=dry",
            "--water",
            "percent=3,of=x",
            "--mould",
            "m",
            "--step-grams",
            "0",
            "--have",
            "cement",
            "--waste",
            "101");
    assertEquals(Outcome.WRONG, refused.code());
    assertEquals(
        List.of(
            "--dry x.parts",
            "--dry y.parts",
            "--pigment z.percent",
            "--water.of",
            "--waste",
            "--mould",
            "--have",
            "--step-grams"),
        refused.paths(),
        refused.err());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "batch",
        "batch --volume-ml 3",
        "batch --volume-ml 3 --mix slate",
        "batch demo --volume-ml 3 --mix nonesuch",
        "batch demo --mould nonesuch --mix basalt",
        "batch --volume-ml 12oz --dry x:parts=1,density=3 --water percent=20",
        "batch --volume-ml 0 --dry x:parts=1,density=3 --water percent=20",
        "batch --volume-ml 1e9 --dry x:parts=1,density=3 --water percent=20",
        "batch --volume-ml 9999999 --castings 1000 --dry x:parts=1,density=3 --water percent=20",
        "batch --volume-ml 3 --dry x:parts=1 --water percent=20",
        "batch --volume-ml 3 --dry x:parts=1,density=3",
        "batch --volume-ml 3 --dry water:parts=1,density=3 --water percent=20",
        "batch --volume-ml 3 --dry x:parts=1,density=3 --water percent=100,of=total",
        "batch --volume-ml 3 --dry x:parts=1,density=3 --water percent=30,of=cement",
        "batch --volume-ml 3 --dry x:parts=1,density=3 --water percent=30 --past y:mass=3",
        "batch --volume-ml 3 --past x:mass=100 --past water:mass=20",
        "batch --volume-ml 3 --past x:mass=100 --past-filled-ml 10000",
        "batch --volume-ml 3 --past water:mass=100 --past-filled-ml 100",
        "batch demo --volume-ml 3 --mix basalt --density 2000",
        "batch demo --volume-ml 3 --mix basalt --step-grams 1e-9"
      })
  void whatCannotBeWorkedOutIsRefused(String words) {
    Shell.Result refused = Shell.run((Object[]) words.split(" "));
    assertEquals(Outcome.WRONG, refused.code(), refused.err());
    assertFalse(refused.err().contains("bug"), refused.err());
    assertEquals("", refused.out());
  }
}
