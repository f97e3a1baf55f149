package strickle.mix;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import strickle.book.Basis;
import strickle.book.Dose;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Material;
import strickle.book.Mix;
import strickle.book.Part;

/** Turns a mix of the book into masses, on the scale of its parts, collecting what is missing. */
final class RecipeReader {

  private static final double WATER_KG_PER_M3 = 1000;

  private final Mix mix;
  private final Function<String, Material> materials;
  private final List<Fault> faults = new ArrayList<>();
  private final Map<String, Double> masses = new LinkedHashMap<>();
  private double relativeVolume;
  private double dry;
  private double cement;
  private boolean dryKnown = true;
  private boolean cementKnown = true;
  private double pigment;
  private Masses solved = Masses.NONE;

  RecipeReader(Mix mix, Function<String, Material> materials) {
    this.mix = mix;
    this.materials = materials;
  }

  Recipe read() {
    readDry();
    solve();
    readPigment();
    double water = mix.water().percent() / 100 * basis(mix.water().of(), ".water.of");
    masses.merge(Recipe.WATER, water, Double::sum);
    relativeVolume += water;
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
    return new Recipe(
        Collections.unmodifiableMap(masses), dry, density(), pigmentPercentOfCement());
  }

  private void readDry() {
    for (int i = 0; i < mix.dry().size(); i++) {
      Part part = mix.dry().get(i);
      Material material = add(".dry[" + i + "].material", part.material(), part.parts());
      dry += part.parts();
      if (material == null) {
        dryKnown = false;
      } else {
        addCement(material, part.parts());
      }
    }
  }

  // Only then, so that all other mixes are worked out without the rounding of a division.
  private void solve() {
    boolean back = mix.water().of() == Basis.TOTAL;
    for (Dose dose : mix.pigment()) {
      back |= dose.of() == Basis.TOTAL || dose.of() == Basis.WATER;
    }
    if (back && faults.isEmpty()) {
      solved = Masses.of(mix, dry, cement);
    }
  }

  private void readPigment() {
    for (int i = 0; i < mix.pigment().size(); i++) {
      Dose dose = mix.pigment().get(i);
      String path = ".pigment[" + i + "]";
      double mass = dose.percent() / 100 * basis(dose.of(), path + ".of");
      add(path + ".material", dose.material(), mass);
      pigment += mass;
    }
  }

  private Material add(String path, String id, double mass) {
    Material material = Recipe.WATER.equals(id) ? null : materials.apply(id);
    if (material == null) {
      faults.add(new Fault(path, '"' + id + '"', "the id of a material in the book"));
      return null;
    }
    masses.merge(id, mass, Double::sum);
    if (mix.wetDensityKgPerM3().isEmpty()) {
      addVolume(path, material, mass);
    }
    return material;
  }

  private void addVolume(String path, Material material, double mass) {
    if (material.relativeDensity().isEmpty()) {
      faults.add(
          new Fault(
              path,
              '"' + material.id() + "\", which has no relativeDensity",
              "a material with its relativeDensity, "
                  + "or else the mix's measured wetDensityKgPerM3"));
      return;
    }
    relativeVolume += mass / material.relativeDensity().getAsDouble();
  }

  /**
   * A blend may hold any share of cement, so none is assumed: each material has to tell its own.
   */
  private void addCement(Material material, double mass) {
    cementKnown &= material.cementPercent().isPresent();
    cement += mass * material.cementPercent().orElse(0) / 100;
  }

  private double basis(Basis of, String path) {
    if (of == Basis.CEMENT && dryKnown && !(cementKnown && cement > 0)) {
      faults.add(
          new Fault(
              path,
              cementKnown ? "\"cement\" in a mix without any" : "\"cement\" in unknown amount",
              "the cementPercent of every dry material, one of them above 0, or \"dry\" here"));
    }
    return switch (of) {
      case DRY -> dry;
      case CEMENT -> cement;
      case DRY_AND_PIGMENT -> dry + pigment;
      case WATER -> solved.water();
      case TOTAL -> dry + solved.pigment() + solved.water();
    };
  }

  private double density() {
    double wet = masses.values().stream().mapToDouble(Double::doubleValue).sum();
    return mix.wetDensityKgPerM3()
        .orElseGet(() -> WATER_KG_PER_M3 * wet / relativeVolume * (1 - mix.airPercent() / 100));
  }

  private OptionalDouble pigmentPercentOfCement() {
    return cementKnown && cement > 0
        ? OptionalDouble.of(100 * pigment / cement)
        : OptionalDouble.empty();
  }
}
