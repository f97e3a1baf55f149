package strickle.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A way to set forms up to shape a piece.
 *
 * @param id 1 to 64 characters
 * @param name 1 to 200 characters
 * @param forms the forms one casting holds, at least one; a form listed twice is summed
 * @param cavities pieces from one casting, 1 to 1000
 * @param volumeMl volume of one casting in millilitres, above 0; or empty, when {@code shape} or
 *     {@code mesh} gives it
 * @param shape solids to add and subtract; or empty
 * @param mesh an STL file beside the book; or empty
 * @param wastePercent wet mix lost beside the mould, in percent of the volume, 0 to 100
 * @param prepMinutes setting the forms up for one casting, 0 to 100000
 * @param pourMinutes filling one casting, 0 to 100000
 * @param demouldMinutes demoulding one casting, cleaning and oiling away included, 1 to 100000
 * @param setHours hours at 20 °C from pour to demould, 0 to 8760
 * @param setAtMostHours the most elapsed hours until the demould, from {@code setHours} to 8760, or
 *     empty
 * @param core a core that floats, or empty
 * @param consumes what one casting uses up beside the mix
 */
public record Mould(
    String id,
    String name,
    List<FormUse> forms,
    int cavities,
    OptionalDouble volumeMl,
    List<ShapePart> shape,
    Optional<MeshFile> mesh,
    double wastePercent,
    int prepMinutes,
    int pourMinutes,
    int demouldMinutes,
    double setHours,
    OptionalDouble setAtMostHours,
    Optional<Core> core,
    List<Use> consumes) {

  /**
   * Checks the mould and copies its lists.
   *
   * @throws Faulty with every fault, paths relative to the mould
   */
  public Mould {
    Check check = new Check();
    check.id(".id", id);
    check.name(".name", name);
    forms = check.someOf(".forms", forms, "form");
    check.whole(".cavities", cavities, 1, Check.MOST_AT_ONCE);
    shape = check.list(".shape", shape);
    checkVolume(check, volumeMl, shape, mesh);
    check.number(".wastePercent", wastePercent, 0, 100);
    check.minutes(".prepMinutes", prepMinutes, 0);
    check.minutes(".pourMinutes", pourMinutes, 0);
    check.minutes(".demouldMinutes", demouldMinutes, 1);
    check.hours(".setHours", setHours);
    check.atMostHours(".setAtMostHours", setAtMostHours, setHours);
    check.given(".core", core, "a core or none");
    consumes = check.list(".consumes", consumes);
    check.done();
  }

  private static void checkVolume(
      Check check, OptionalDouble volumeMl, List<ShapePart> shape, Optional<MeshFile> mesh) {
    boolean volumeGiven = check.given(".volumeMl", volumeMl, "millilitres or none");
    boolean meshGiven = check.given(".mesh", mesh, "a mesh or none");
    if (!volumeGiven || !meshGiven) {
      return;
    }
    volumeMl.ifPresent(ml -> check.positive(".volumeMl", ml, Check.MOST_ML_OR_GRAMS));
    List<String> ways = ways(volumeMl, shape, mesh);
    check.that(
        ways.size() == 1,
        ".volumeMl",
        ways.isEmpty() ? Show.NOTHING : String.join(" and ", ways),
        "exactly one of volumeMl, shape and mesh");
  }

  private static List<String> ways(
      OptionalDouble volumeMl, List<ShapePart> shape, Optional<MeshFile> mesh) {
    List<String> ways = new ArrayList<>();
    volumeMl.ifPresent(ml -> ways.add("volumeMl"));
    if (!shape.isEmpty()) {
      ways.add("shape");
    }
    mesh.ifPresent(file -> ways.add("mesh"));
    return ways;
  }
}
