package strickle.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import strickle.book.Amount;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.mix.Surface;

/** The area that is coated, given or read off solids or a mesh, one of them at a time. */
final class CoatArea {

  private static final double MM2_PER_M2 = 1e6;
  private static final double MOST_M2 = 1e6;
  private static final String WAYS = "one of --area-m2, --add and --mesh";

  @Option(
      names = "--area-m2",
      paramLabel = "AREA",
      description = "the area of one piece, such as 0.05, 480cm2 or 3ft2")
  private String area;

  @Option(
      names = SolidList.ADD,
      paramLabel = "SOLID",
      description = "a solid all round, as volume knows them; may be given several times")
  private List<String> add = new ArrayList<>();

  @Option(
      names = SolidList.SUBTRACT,
      paramLabel = "SOLID",
      description = {
        "a hollow open at its top (a cap or half a sphere at its flat face), whose walls are coated"
            + " too; may be given several times"
      })
  private List<String> subtract = new ArrayList<>();

  @Mixin private final MeshOptions mesh = new MeshOptions();

  /** The area in m²; empty when anything is wrong, which is noted. */
  Optional<Double> read(Given values) {
    boolean solids = !add.isEmpty() || !subtract.isEmpty();
    int ways = (area == null ? 0 : 1) + (solids ? 1 : 0) + (mesh.given() ? 1 : 0);
    if (ways != 1) {
      String found = ways == 0 ? "no area" : "several areas at once";
      values.fault(new Fault("coat", found, WAYS));
      return Optional.empty();
    }
    if (area != null) {
      return values
          .amount("--area-m2", area, Amount::area)
          .filter(
              m2 ->
                  values.must(
                      m2 > 0 && m2 <= MOST_M2,
                      "--area-m2",
                      area,
                      "an area above 0, at most 1000000 m²"));
    }
    return solids ? solids(values) : mesh(values);
  }

  private Optional<Double> solids(Given values) {
    SolidList solids = SolidList.read(values, add, subtract);
    if (solids.texts().size() < add.size() + subtract.size()) {
      return Optional.empty();
    }
    try {
      return Optional.of(Surface.mm2(solids.shape()) / MM2_PER_M2);
    } catch (Faulty faulty) {
      faulty.faults().forEach(fault -> values.fault(placed(fault)));
      return Optional.empty();
    }
  }

  /** A fault of the solids as they stand in a list, told of the one that was written. */
  private Fault placed(Fault fault) {
    String place = SolidList.SUBTRACT;
    if (fault.path().startsWith("[")) {
      int at = Integer.parseInt(fault.path().substring(1, fault.path().indexOf(']')));
      place = SolidText.place(place, subtract.get(at - add.size()));
    } else if (add.isEmpty()) {
      return new Fault(SolidList.ADD, "nothing", "a solid from which the others are taken away");
    }
    return new Fault(place, fault.found(), fault.right());
  }

  private Optional<Double> mesh(Given values) {
    return mesh.read(values).map(scaled -> scaled.mesh().areaMm2(scaled.unit()) / MM2_PER_M2);
  }
}
