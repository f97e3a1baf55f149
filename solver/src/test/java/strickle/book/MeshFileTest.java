package strickle.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class MeshFileTest {

  private static MeshFile named(String file) {
    return new MeshFile(file, LengthUnit.MM, OptionalDouble.empty());
  }

  @Test
  void aPlainNameIsKeptAsItIsWritten() {
    for (String name : List.of("bowl.stl", "Bowl 2.STL", "große schale.v3.stl")) {
      assertEquals(name, named(name).file());
    }
  }

  @Test
  void aNameThatLeadsElsewhereOrIsNoStlIsRefused() {
    List<String> names =
        List.of(
            "",
            ".stl",
            "..stl",
            "bowl",
            "bowl.obj",
            "bowl.stl.exe",
            "../bowl.stl",
            "/bowl.stl",
            "in/bowl.stl",
            "in\\bowl.stl",
            "c:bowl.stl",
            "bowl\u0000.stl",
            "bowl\n.stl",
            "b".repeat(200) + ".stl");
    for (String name : names) {
      Faulty faulty = assertThrows(Faulty.class, () -> named(name), name);
      assertEquals(".file", faulty.faults().get(0).path());
    }
  }

  @Test
  void everythingMissingIsToldAtOnce() {
    Faulty faulty =
        assertThrows(Faulty.class, () -> new MeshFile(null, null, OptionalDouble.of(Double.NaN)));
    assertEquals(
        List.of(".file", ".unit", ".measuredMl"),
        faulty.faults().stream().map(Fault::path).toList());
  }

  @Test
  void aMeasuredVolumeIsAboveZero() {
    assertEquals(OptionalDouble.of(12.5), named("bowl.stl").measured(12.5, false).measuredMl());
    for (double ml : new double[] {0, -1, Double.POSITIVE_INFINITY}) {
      assertThrows(Faulty.class, () -> named("bowl.stl").measured(ml, false));
    }
  }

  @Test
  void anInchIsItsMillimetresExactly() {
    // 1 in = 25.4 mm exactly (16 CFR 500.19).
    assertEquals(25.4, LengthUnit.INCH.mm());
    assertEquals(1, LengthUnit.MM.mm());
  }
}
