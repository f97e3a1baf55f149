package strickle.cli;

import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Supplier;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Material;
import strickle.book.Pack;

/**
 * A material as it is written on the command line: {@code NAME:amount,density=3.15,cement=100}.
 * What is left out is taken from the book's material of that id, when there is one.
 */
final class MaterialSpec {

  private static final String DENSITY = "density";
  private static final String CEMENT = "cement";

  /** The key of a pigment's own most. */
  static final String MOST = "most";

  private final Spec spec;

  private MaterialSpec(Spec spec) {
    this.spec = spec;
  }

  /** Reads one; keys of its own beside density and cement. */
  static MaterialSpec read(String text, List<String> own, String example) {
    Set<String> keys = new LinkedHashSet<>(own);
    keys.add(DENSITY);
    keys.add(CEMENT);
    return new MaterialSpec(Spec.named(text, keys, "a material such as " + example));
  }

  /** The name in a text that may be wrong otherwise. */
  static String nameIn(String text) {
    return text.contains(":") ? text.substring(0, text.indexOf(':')) : text;
  }

  /** Its name, which is its id. */
  String name() {
    return spec.name();
  }

  /** A value by its key. */
  Optional<String> value(String key) {
    return spec.value(key);
  }

  /** A number by its key, which has to be there. */
  double number(String key) {
    return number(key, spec.value(key).orElse(null)).orElseThrow();
  }

  private static OptionalDouble number(String key, String text) {
    Given values = new Given();
    if (text == null) {
      values.fault(new Fault("." + key, "nothing", "a number such as 30 or 0.99"));
    }
    Optional<BigDecimal> number = values.decimal("." + key, text);
    values.done();
    return OptionalDouble.of(number.orElseThrow().doubleValue());
  }

  /**
   * The material.
   *
   * @param known what the book knows of it
   * @throws Faulty with paths relative to the option
   */
  Material material(Optional<Material> known) {
    OptionalDouble density =
        optional(DENSITY, known.map(Material::relativeDensity).orElse(OptionalDouble.empty()));
    OptionalDouble cement =
        optional(CEMENT, known.map(Material::cementPercent).orElse(OptionalDouble.empty()));
    OptionalDouble most =
        optional(MOST, known.map(Material::mostPercentOfCement).orElse(OptionalDouble.empty()));
    return named(
        () ->
            new Material(
                spec.name(),
                known.map(Material::name).orElse(spec.name()),
                known.map(Material::kind).orElse("material"),
                "g",
                density,
                cement,
                most,
                known.map(Material::pack).orElse(new Pack(BigDecimal.ONE, BigDecimal.ZERO)),
                known.map(Material::onHand).orElse(BigDecimal.ZERO),
                0));
  }

  /**
   * Whatever is made of it.
   *
   * @throws Faulty with paths relative to the option
   */
  <T> T named(Supplier<T> making) {
    try {
      return making.get();
    } catch (Faulty faulty) {
      throw new Faulty(faulty.faults().stream().map(MaterialSpec::named).distinct().toList());
    }
  }

  private OptionalDouble optional(String key, OptionalDouble otherwise) {
    return spec.value(key).isPresent() ? number(key, spec.value(key).get()) : otherwise;
  }

  private static Fault named(Fault fault) {
    String path =
        switch (fault.path()) {
          case ".id", ".name", ".material" -> "";
          case ".relativeDensity" -> "." + DENSITY;
          case ".cementPercent" -> "." + CEMENT;
          case ".mostPercentOfCement" -> "." + MOST;
          default -> fault.path();
        };
    return new Fault(path, fault.found(), fault.right());
  }
}
