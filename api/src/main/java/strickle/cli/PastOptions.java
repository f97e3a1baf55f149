package strickle.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Option;
import strickle.book.Amount;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Material;
import strickle.book.Mix;
import strickle.mix.PastBatch;
import strickle.mix.Portion;
import strickle.mix.Recipe;

/** The options that tell of a batch that was mixed once, to be made again for other moulds. */
final class PastOptions {

  private static final String PIGMENT = "pigment";
  private static final String DRY = "dry";

  @Option(
      names = "--past",
      paramLabel = "MATERIAL",
      description = {
        "what went into a past batch, such as cement:mass=1kg,cement=100, water:mass=400 or"
            + " red:mass=30,kind=pigment"
      })
  private List<String> past = new ArrayList<>();

  @Option(
      names = "--past-filled-ml",
      paramLabel = "VOLUME",
      description = "what the past batch filled")
  private String filled;

  @Option(
      names = "--past-left-grams",
      paramLabel = "MASS",
      description = "what was left of it; nothing when left out")
  private String left;

  /** Whether a past batch was told of. */
  boolean given() {
    return !past.isEmpty() || filled != null || left != null;
  }

  /** The mix it was; faults are noted, and then nothing is given. */
  Optional<Chosen> read(Given values, Optional<Book> book) {
    Map<String, Material> known = book.map(RecipeOptions::materials).orElse(Map.of());
    Map<String, Material> materials = new LinkedHashMap<>();
    List<Portion> dry = new ArrayList<>();
    List<Portion> pigment = new ArrayList<>();
    List<Portion> water = new ArrayList<>();
    for (String text : past) {
      values.within(
          "--past " + MaterialSpec.nameIn(text),
          () -> {
            MaterialSpec spec =
                MaterialSpec.read(
                    text, List.of("mass", "kind", MaterialSpec.MOST), "cement:mass=1kg,cement=100");
            Portion portion = new Portion(spec.name(), mass(spec));
            if (spec.name().equals(Recipe.WATER)) {
              return water.add(portion);
            }
            Optional<Material> one = Optional.ofNullable(known.get(spec.name()));
            Material material = spec.material(one);
            materials.put(spec.name(), material);
            return (isPigment(spec, material) ? pigment : dry).add(portion);
          });
    }
    if (filled == null) {
      values.fault(new Fault("--past-filled-ml", "nothing", "what the past batch filled"));
    }
    double ml = values.amount("--past-filled-ml", filled, Amount::volume).orElse(1.0);
    double rest = values.amount("--past-left-grams", left, Amount::mass).orElse(0.0);
    double wet = water.stream().mapToDouble(Portion::grams).sum();
    if (values.isFaulty()) {
      return Optional.empty();
    }
    return values
        .asOptions(() -> told(() -> new PastBatch(dry, pigment, wet, ml, rest).mix()))
        .map(mix -> new Chosen(mix, materials));
  }

  private static Mix told(Supplier<Mix> making) {
    try {
      return making.get();
    } catch (Faulty faulty) {
      throw new Faulty(faulty.faults().stream().map(PastOptions::told).toList());
    }
  }

  private static Fault told(Fault fault) {
    String path =
        switch (fault.path()) {
          case ".filledMl" -> ".pastFilledMl";
          case ".leftGrams" -> ".pastLeftGrams";
          case ".waterGrams" -> ".past water";
          default -> ".past";
        };
    return new Fault(path, fault.found(), fault.right());
  }

  private static double mass(MaterialSpec spec) {
    Given values = new Given();
    if (spec.value("mass").isEmpty()) {
      values.fault(new Fault(".mass", "nothing", "a mass such as 250 g, 1.5 kg or 8 oz"));
    }
    Optional<Double> mass =
        values.amountAboveZero(
            ".mass", spec.value("mass").orElse(null), Amount::mass, "a mass above 0");
    values.done();
    return mass.orElseThrow();
  }

  private static boolean isPigment(MaterialSpec spec, Material material) {
    String kind = spec.value("kind").orElse(material.kind().equals(PIGMENT) ? PIGMENT : DRY);
    Given values = new Given();
    values.must(kind.equals(PIGMENT) || kind.equals(DRY), ".kind", kind, "dry or pigment");
    values.done();
    return kind.equals(PIGMENT);
  }
}
