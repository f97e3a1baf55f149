package strickle.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class MouldTest {

  private static final List<ShapePart> SHAPE =
      List.of(new ShapePart(new Solid.Box(100, 50, 20), false));
  private static final Optional<MeshFile> MESH =
      Optional.of(new MeshFile("planter.stl", LengthUnit.MM, OptionalDouble.empty()));

  private static Mould mould(
      OptionalDouble volumeMl, List<ShapePart> shape, Optional<MeshFile> mesh) {
    Mould m = SampleBook.planterDeep();
    return new Mould(
        m.id(),
        m.name(),
        m.forms(),
        m.cavities(),
        volumeMl,
        shape,
        mesh,
        m.wastePercent(),
        m.prepMinutes(),
        m.pourMinutes(),
        m.demouldMinutes(),
        m.setHours(),
        m.setAtMostHours(),
        m.core(),
        m.consumes());
  }

  @Test
  void theVolumeMayComeFromAShapeOrAMesh() {
    assertEquals(SHAPE, mould(OptionalDouble.empty(), SHAPE, Optional.empty()).shape());
    assertEquals(MESH, mould(OptionalDouble.empty(), List.of(), MESH).mesh());
  }

  @Test
  void exactlyOneWayGivesTheVolume() {
    String right = "exactly one of volumeMl, shape and mesh";

    assertEquals(
        new Fault(".volumeMl", "nothing", right),
        Faults.only(() -> mould(OptionalDouble.empty(), List.of(), Optional.empty())));
    assertEquals(
        new Fault(".volumeMl", "volumeMl and shape and mesh", right),
        Faults.only(() -> mould(OptionalDouble.of(5), SHAPE, MESH)));
    assertEquals(
        new Fault(".volumeMl", "shape and mesh", right),
        Faults.only(() -> mould(OptionalDouble.empty(), SHAPE, MESH)));
  }

  @Test
  void aMouldIsSetUpFromAtLeastOneForm() {
    Mould mould = SampleBook.planterDeep();

    assertEquals(
        new Fault(".forms", "an empty list", "at least one form"),
        Faults.only(() -> Altered.of(mould, "forms", List.of())));
  }

  @Test
  void theMostHoursOfTheSetAreNoFewerThanItsHours() {
    Mould mould = SampleBook.planterDeep();

    assertEquals(
        new Fault(".setAtMostHours", "19.5", "a number from 20 to 8760"),
        Faults.only(() -> Altered.of(mould, "setAtMostHours", OptionalDouble.of(19.5))));
  }

  @Test
  void allFaultsAreToldAtOnceInTheOrderOfTheParts() {
    assertEquals(
        List.of(
            ".id",
            ".name",
            ".forms",
            ".cavities",
            ".volumeMl",
            ".wastePercent",
            ".prepMinutes",
            ".pourMinutes",
            ".demouldMinutes",
            ".setHours",
            ".setAtMostHours"),
        Faults.paths(
            () ->
                new Mould(
                    "a/b",
                    "",
                    List.of(),
                    0,
                    OptionalDouble.of(-5),
                    List.of(),
                    Optional.empty(),
                    101,
                    -1,
                    -1,
                    0,
                    Double.NaN,
                    OptionalDouble.of(-1),
                    Optional.empty(),
                    List.of())));
  }
}
