package strickle.api;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import strickle.book.Faulty;
import strickle.book.LengthUnit;
import strickle.book.ShapePart;
import strickle.json.CoatAnswer;
import strickle.json.Meshes;
import strickle.mix.Film;
import strickle.mix.Leaf;
import strickle.mix.StlMesh;
import strickle.mix.Surface;
import strickle.mix.Uptake;

/**
 * A coat or leaf to be worked out for an area, given in one of three ways.
 *
 * @param areaM2 the area of one piece in m², above 0, at most 1000000
 * @param shape solids all round; a hollow, with "subtract", is open at its top and coated inside
 * @param mesh a mesh the studio keeps, by the name of its file
 * @param meshUnit what one unit of the mesh is; mm without it
 * @param pieces how many pieces, 1 to 100000; 1 without it
 * @param solidsPercent a film: what stays of the product by volume, 0.1 to 100
 * @param dryFilmMm a film: thickness of one dry coat, 0.0001 to 10 mm
 * @param uptakeGramsPerM2 absorbent concrete: what one coat takes, 0.001 to 100000 g/m²
 * @param densityKgPerM3 of that product, 100 to 10000, to say millilitres too
 * @param leafMm leaf: the side of a square sheet, 1 to 10000 mm
 * @param overlapMm leaf: by which each sheet lies on the next, at least 1 mm less than its side; 0
 *     without it
 * @param leavesPerBook sheets in a book of leaf, 1 to 10000; 25 without it
 * @param coats how many, 1 to 100; 1 without it
 * @param wastePercent of the product that ends in brush and cup, or of leaf that tears, 0 to 99; 0
 *     without it
 */
public record CoatWanted(
    OptionalDouble areaM2,
    List<ShapePart> shape,
    Optional<String> mesh,
    Optional<LengthUnit> meshUnit,
    OptionalInt pieces,
    OptionalDouble solidsPercent,
    OptionalDouble dryFilmMm,
    OptionalDouble uptakeGramsPerM2,
    OptionalDouble densityKgPerM3,
    OptionalDouble leafMm,
    OptionalDouble overlapMm,
    OptionalInt leavesPerBook,
    OptionalInt coats,
    OptionalDouble wastePercent) {

  private static final double MM2_PER_M2 = 1e6;
  private static final double MICRONS_PER_MM = 1000;
  private static final double KG_PER_M3_OF_G_PER_ML = 1000;
  private static final int USUAL_LEAVES = 25;

  /** Refuses what is out of range or does not go together. */
  public CoatWanted {
    int ways = (areaM2.isPresent() ? 1 : 0) + (shape.isEmpty() ? 0 : 1) + (mesh.isEmpty() ? 0 : 1);
    boolean film = solidsPercent.isPresent() || dryFilmMm.isPresent();
    boolean any = film || uptakeGramsPerM2.isPresent() || leafMm.isPresent();
    String both = "solidsPercent and dryFilmMm, or neither";
    Ranges ranges =
        new Ranges()
            .must(ways == 1, ".areaM2", ways + " areas", "one of areaM2, shape and mesh")
            .above(".areaM2", areaM2, 1e6, "an area in m²")
            .must(any, ".solidsPercent", "nothing to put on", "a film, an uptake or leaf")
            .must(!film || solidsPercent.isPresent(), ".solidsPercent", "nothing", both)
            .must(!film || dryFilmMm.isPresent(), ".dryFilmMm", "nothing", both)
            .within(".solidsPercent", solidsPercent, 0.1, 100, "a percentage")
            .within(".dryFilmMm", dryFilmMm, 1e-4, 10, "a thickness in mm")
            .within(".uptakeGramsPerM2", uptakeGramsPerM2, 1e-3, 1e5, "grams on a square metre")
            .within(".densityKgPerM3", densityKgPerM3, 100, 10_000, "a density in kg/m³")
            .within(".leafMm", leafMm, 1, 10_000, "a length in mm")
            .within(
                ".overlapMm",
                overlapMm,
                0,
                Math.max(0, leafMm.orElse(1) - 1),
                "a length in mm, at least 1 less than a sheet's side,")
            .within(".wastePercent", wastePercent, 0, 99, "a percentage");
    count(ranges, ".pieces", pieces, 100_000);
    count(ranges, ".leavesPerBook", leavesPerBook, 10_000);
    count(ranges, ".coats", coats, 100);
    ranges.done();
  }

  private static void count(Ranges ranges, String path, OptionalInt given, int most) {
    boolean good = given.stream().allMatch(n -> 1 <= n && n <= most);
    ranges.must(good, path, "" + given.orElse(0), "a whole number from 1 to " + most);
  }

  /**
   * What it takes.
   *
   * @param meshes those the studio keeps
   * @throws Faulty when there is no such area, with its place
   */
  CoatAnswer answer(Meshes meshes) {
    int many = pieces.orElse(1);
    return CoatAnswer.of(areaEach(meshes) * many, many, coating());
  }

  private double areaEach(Meshes meshes) {
    if (areaM2.isPresent()) {
      return areaM2.getAsDouble();
    }
    try {
      return mesh.isPresent()
          ? StlMesh.read(meshes.bytes(mesh.get())).areaMm2(meshUnit.orElse(LengthUnit.MM))
              / MM2_PER_M2
          : Surface.mm2(shape) / MM2_PER_M2;
    } catch (Faulty faulty) {
      String path = mesh.isPresent() ? ".mesh" : ".shape";
      throw new Faulty(faulty.faults().stream().map(fault -> fault.under(path)).toList());
    }
  }

  private CoatAnswer.Coating coating() {
    Optional<Film> film =
        solidsPercent.isPresent()
            ? Optional.of(
                new Film(solidsPercent.getAsDouble(), dryFilmMm.getAsDouble() * MICRONS_PER_MM))
            : Optional.empty();
    OptionalDouble gramsPerMl =
        densityKgPerM3.isPresent()
            ? OptionalDouble.of(densityKgPerM3.getAsDouble() / KG_PER_M3_OF_G_PER_ML)
            : OptionalDouble.empty();
    return new CoatAnswer.Coating(
        film,
        uptakeGramsPerM2.stream().mapToObj(Uptake::new).findFirst(),
        leafMm.stream().mapToObj(mm -> new Leaf(mm, mm, overlapMm.orElse(0))).findFirst(),
        coats.orElse(1),
        wastePercent.orElse(0),
        gramsPerMl,
        leavesPerBook.orElse(USUAL_LEAVES));
  }
}
