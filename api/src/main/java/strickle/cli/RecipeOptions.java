package strickle.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Supplier;
import picocli.CommandLine.Option;
import strickle.book.Amount;
import strickle.book.Basis;
import strickle.book.Book;
import strickle.book.Dose;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Material;
import strickle.book.Mix;
import strickle.book.Part;
import strickle.book.Water;

/** The options that say what mix a batch is of: one of the book, a recipe, or a past batch. */
final class RecipeOptions {

  private static final String OF = "of";
  private static final String PERCENT = "percent";
  private static final Map<String, Basis> BASES =
      Map.of(
          "dry", Basis.DRY,
          "cement", Basis.CEMENT,
          "dry+pigment", Basis.DRY_AND_PIGMENT,
          "water", Basis.WATER,
          "total", Basis.TOTAL);

  @Option(names = "--mix", paramLabel = "ID", description = "a mix of the book")
  private String mixId;

  @Option(
      names = "--dry",
      paramLabel = "MATERIAL",
      description = {
        "a dry material by its parts, such as sand:parts=2,density=2.65,cement=0; density is"
            + " relative to water, cement in percent of the material"
      })
  private List<String> dry = new ArrayList<>();

  @Option(
      names = "--pigment",
      paramLabel = "MATERIAL",
      description = {
        "a pigment, such as red:percent=3,of=cement,density=4.5,most=6; of is dry, cement, water or"
            + " total, and dry when left out; most is what its sheet allows in percent of the"
            + " cement"
      })
  private List<String> pigment = new ArrayList<>();

  @Option(
      names = "--water",
      paramLabel = "WATER",
      description = {
        "such as percent=40,of=cement; of is dry, cement, dry+pigment or total, and dry when left"
            + " out"
      })
  private String water;

  @Option(
      names = "--air",
      paramLabel = "PERCENT",
      description = "air in the wet mix by volume; 0 when left out")
  private String air;

  @Option(
      names = "--density",
      paramLabel = "DENSITY",
      description = {
        "the density of the wet mix as measured, kg/m³ or with its unit; by absolute volume when"
            + " left out"
      })
  private String density;

  /** Whether any of them was given. */
  boolean given() {
    return mixId != null || density != null || isWritten();
  }

  private boolean isWritten() {
    return !dry.isEmpty() || !pigment.isEmpty() || water != null || air != null;
  }

  /** The mix that was asked for; faults are noted, and then nothing is given. */
  Optional<Chosen> read(Given values, Optional<Book> book) {
    if (isWritten() == (mixId != null)) {
      String found = isWritten() ? "several mixes at once" : "no mix";
      values.fault(new Fault("batch", found, "--mix of a book, or --dry and --water, or --past"));
      return Optional.empty();
    }
    if (density != null && !isWritten()) {
      values.fault(
          new Fault("--density", "a density of a mix of the book", "none: it has its own"));
    }
    return isWritten() ? written(values, book) : ofBook(values, book);
  }

  private Optional<Chosen> ofBook(Given values, Optional<Book> book) {
    if (book.isEmpty()) {
      values.fault(new Fault("--mix", "no book", "the book that has the mix, as BOOK"));
      return Optional.empty();
    }
    List<String> ids = book.get().mixes().stream().map(Mix::id).toList();
    String right = "the id of a mix of the book: " + String.join(", ", ids);
    return values.must(ids.contains(mixId), "--mix", mixId, right)
        ? Optional.of(new Chosen(book.get().mix(mixId), materials(book.get())))
        : Optional.empty();
  }

  static Map<String, Material> materials(Book book) {
    Map<String, Material> materials = new LinkedHashMap<>();
    book.materials().forEach(material -> materials.put(material.id(), material));
    return materials;
  }

  private Optional<Chosen> written(Given values, Optional<Book> book) {
    Map<String, Material> known = book.map(RecipeOptions::materials).orElse(Map.of());
    Map<String, Material> materials = new LinkedHashMap<>();
    List<Part> parts = new ArrayList<>();
    List<Dose> doses = new ArrayList<>();
    for (String text : dry) {
      String named = "--dry " + MaterialSpec.nameIn(text);
      values.within(named, () -> parts.add(part(text, known, materials)));
    }
    for (String text : pigment) {
      String named = "--pigment " + MaterialSpec.nameIn(text);
      values.within(named, () -> doses.add(dose(text, known, materials)));
    }
    Optional<Water> wet = values.within("--water", this::water);
    double airPercent = values.decimal("--air", air).map(Number::doubleValue).orElse(0.0);
    Optional<Double> measured = values.amount("--density", density, Amount::density);
    String either = "either --air or --density: of a density as measured the air follows";
    values.must(air == null || density == null, "--air", air, either);
    if (dry.isEmpty()) {
      String right = "at least one dry material, such as sand:parts=2,density=2.65";
      values.fault(new Fault("--dry", "nothing", right));
    }
    // What is wrong with a part is told; that it is then missing is not wrong beside it.
    boolean whole =
        !parts.isEmpty() && parts.size() == dry.size() && doses.size() == pigment.size();
    return whole
        ? wet.flatMap(one -> mix(values, parts, doses, one, airPercent, measured, materials))
        : Optional.empty();
  }

  private static Optional<Chosen> mix(
      Given values,
      List<Part> parts,
      List<Dose> doses,
      Water water,
      double airPercent,
      Optional<Double> measured,
      Map<String, Material> materials) {
    OptionalDouble density =
        measured.isPresent() ? OptionalDouble.of(measured.get()) : OptionalDouble.empty();
    Supplier<Mix> making =
        () ->
            new Mix(
                "batch",
                "batch",
                Optional.empty(),
                parts,
                doses,
                water,
                airPercent,
                density,
                0,
                1,
                0);
    RecipeFaults faults =
        new RecipeFaults(
            parts.stream().map(Part::material).toList(),
            doses.stream().map(Dose::material).toList());
    return values.asOptions(() -> faults.told(making)).map(mix -> new Chosen(mix, materials));
  }

  private static Part part(
      String text, Map<String, Material> known, Map<String, Material> materials) {
    MaterialSpec spec =
        MaterialSpec.read(text, List.of("parts"), "sand:parts=2,density=2.65,cement=0");
    Part part = spec.named(() -> new Part(spec.name(), spec.number("parts")));
    materials.put(spec.name(), spec.material(Optional.ofNullable(known.get(spec.name()))));
    return part;
  }

  private static Dose dose(
      String text, Map<String, Material> known, Map<String, Material> materials) {
    MaterialSpec spec =
        MaterialSpec.read(
            text, List.of(PERCENT, OF, MaterialSpec.MOST), "red:percent=3,of=cement,density=4.5");
    Dose dose =
        spec.named(() -> new Dose(spec.name(), spec.number(PERCENT), basis(spec.value(OF))));
    materials.put(spec.name(), spec.material(Optional.ofNullable(known.get(spec.name()))));
    return dose;
  }

  private Water water() {
    String right = "water such as percent=40,of=cement";
    if (water == null) {
      throw new Faulty(List.of(new Fault("", "nothing", right)));
    }
    Spec spec = Spec.unnamed(water, Set.of(PERCENT, OF), right);
    Given values = new Given();
    if (spec.value(PERCENT).isEmpty()) {
      values.fault(new Fault("." + PERCENT, "nothing", "a number such as 40"));
    }
    double percent =
        values
            .decimal("." + PERCENT, spec.value(PERCENT).orElse(null))
            .map(Number::doubleValue)
            .orElse(0.0);
    values.done();
    return new Water(percent, basis(spec.value(OF)));
  }

  private static Basis basis(Optional<String> word) {
    Basis basis = BASES.get(word.orElse("dry"));
    if (basis == null) {
      String found = '"' + word.orElse("") + '"';
      throw new Faulty(
          List.of(new Fault("." + OF, found, "dry, cement, dry+pigment, water or total")));
    }
    return basis;
  }
}
