package strickle.mix;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.LongToDoubleFunction;
import strickle.book.Material;
import strickle.book.Mix;

/**
 * A mix worked out by mass: what share of the wet mass each material is, and how dense the wet mix
 * is. Materials stand in the order dry, pigment, water, each once, where it was named first.
 */
public final class Recipe {

  /** The reserved name that water goes by in shares and weigh-outs. */
  public static final String WATER = Material.WATER;

  private static final double MOST_GRAMS = 1e12;
  private static final double LEAST_STEP = 0.001;
  private static final double MOST_STEP = 100_000;
  private static final double MOST_STEPS = 1e15;

  private final Map<String, Double> masses;
  private final double dry;
  private final double wet;
  private final double wetDensityKgPerM3;
  private final OptionalDouble pigmentPercentOfCement;

  /** Takes masses on any one scale: only their ratios matter. */
  Recipe(
      Map<String, Double> masses,
      double dry,
      double wetDensityKgPerM3,
      OptionalDouble pigmentPercentOfCement) {
    this.masses = masses;
    this.dry = dry;
    this.wet = masses.values().stream().mapToDouble(Double::doubleValue).sum();
    this.wetDensityKgPerM3 = wetDensityKgPerM3;
    this.pigmentPercentOfCement = pigmentPercentOfCement;
  }

  /**
   * Works out a mix.
   *
   * @param materials finds a material by its id; null for an id it does not know
   * @throws strickle.book.Faulty with every material that is unknown or lacks the relative density
   *     or the cement content this mix needs, with paths relative to the mix
   */
  public static Recipe of(Mix mix, Function<String, Material> materials) {
    return new RecipeReader(mix, materials).read();
  }

  /**
   * Density of the wet mix in kg/m³: as measured, else by absolute volume, the masses over Σ mass /
   * (relative density x 1000 kg/m³) with {@code airPercent} of the whole being air (method of ASTM
   * C138 and ACI 211.1; water 1.0).
   */
  public double wetDensityKgPerM3() {
    return wetDensityKgPerM3;
  }

  /**
   * Pigment in percent of the cement's mass, the figure pigment limits are given in (ASTM C979
   * §1.4: at most 10); empty when the cement content of a dry material is not known or there is no
   * cement.
   */
  public OptionalDouble pigmentPercentOfCement() {
    return pigmentPercentOfCement;
  }

  /** Every material as a fraction of the wet mass; the fractions add up to 1. */
  public List<Share> shares() {
    List<Share> shares = new ArrayList<>();
    masses.forEach((material, mass) -> shares.add(new Share(material, mass / wet)));
    return List.copyOf(shares);
  }

  /**
   * What goes with so many grams of dry materials (pigment not counted), not rounded.
   *
   * @throws IllegalArgumentException unless grams are from 0 to 10¹²
   */
  public List<Portion> forDry(double dryGrams) {
    return scaled(usable(dryGrams), dry);
  }

  /**
   * What so many grams of wet mix consist of, not rounded.
   *
   * @throws IllegalArgumentException unless grams are from 0 to 10¹²
   */
  public List<Portion> forWet(double wetGrams) {
    return scaled(usable(wetGrams), wet);
  }

  /**
   * What so many grams of wet mix are weighed out from, each to 0.1 g. Tenths left over by rounding
   * down go to the materials that lost most by it, so that the portions add up exactly to {@code
   * wetGrams} rounded to 0.1 g.
   *
   * @throws IllegalArgumentException unless grams are from 0 to 10¹²
   */
  public List<Portion> weighOut(double wetGrams) {
    return split(Math.round(usable(wetGrams) * 10), tenths -> tenths / 10.0);
  }

  /**
   * What so many grams of wet mix are weighed out from on a scale that shows steps: whole steps,
   * each less than a step from what it should be, that add up to the least that is not below {@code
   * wetGrams}. A step may be too coarse for a material, which then weighs 0.
   *
   * @param stepGrams what the scale counts in, from 0.001 to 100000 grams
   * @throws IllegalArgumentException for a step outside, unless grams are from 0 to 10¹², or when
   *     that would be more than 10¹⁵ steps
   */
  public List<Portion> weighOut(double wetGrams, double stepGrams) {
    double steps = usable(wetGrams) / stepGrams;
    if (!(LEAST_STEP <= stepGrams && stepGrams <= MOST_STEP && steps <= MOST_STEPS)) {
      throw new IllegalArgumentException(
          "Cannot weigh out " + wetGrams + " g in steps of " + stepGrams + " g.");
    }
    BigDecimal step = BigDecimal.valueOf(stepGrams);
    long[] parts =
        LargestRemainder.atLeast(
            shares().stream().mapToDouble(share -> share.fraction() * steps).toArray());
    return portions(parts, count -> BigDecimal.valueOf(count).multiply(step).doubleValue());
  }

  private List<Portion> split(long steps, LongToDoubleFunction grams) {
    double[] fractions = shares().stream().mapToDouble(Share::fraction).toArray();
    return portions(LargestRemainder.split(steps, fractions), grams);
  }

  private List<Portion> portions(long[] parts, LongToDoubleFunction grams) {
    List<Share> shares = shares();
    List<Portion> portions = new ArrayList<>();
    for (int i = 0; i < parts.length; i++) {
      portions.add(new Portion(shares.get(i).material(), grams.applyAsDouble(parts[i])));
    }
    return List.copyOf(portions);
  }

  private List<Portion> scaled(double grams, double of) {
    List<Portion> portions = new ArrayList<>();
    masses.forEach((material, mass) -> portions.add(new Portion(material, mass * grams / of)));
    return List.copyOf(portions);
  }

  private static double usable(double grams) {
    if (!(grams >= 0 && grams <= MOST_GRAMS)) {
      throw new IllegalArgumentException(
          "Cannot weigh out " + grams + " g; it takes a number from 0 to 10¹².");
    }
    return grams;
  }
}
