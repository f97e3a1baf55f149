package strickle.mix;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import strickle.book.Basis;
import strickle.book.Dose;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Mix;
import strickle.book.Part;
import strickle.book.Water;

/**
 * A batch that was mixed once, as it was weighed: the mix it was, and its density from what it
 * filled.
 *
 * @param dry grams of each dry material, at least one
 * @param pigment grams of each pigment, together at most those of the dry materials
 * @param waterGrams grams of water, 0 to ten times those of the dry materials
 * @param filledMl what it filled, above 0, in millilitres
 * @param leftGrams what was left of it, in grams
 */
public record PastBatch(
    List<Portion> dry,
    List<Portion> pigment,
    double waterGrams,
    double filledMl,
    double leftGrams) {

  private static final double ML_PER_LITRE = 1000;
  private static final double LEAST_DENSITY = 200;
  private static final double MOST_DENSITY = 5000;
  private static final double MOST_WATER = 10;

  /**
   * Checks the batch and copies its lists.
   *
   * @throws Faulty with a path of the first part that cannot be: {@code .dry}, {@code .waterGrams},
   *     {@code .pigment}, {@code .filledMl} or {@code .leftGrams}
   */
  public PastBatch {
    dry = List.copyOf(dry);
    pigment = List.copyOf(pigment);
    must(sum(dry) > 0, ".dry", "no dry material", "at least one, with its grams");
    must(filledMl > 0, ".filledMl", shown(filledMl) + " ml", "what the batch filled, above 0");
    must(
        waterGrams >= 0 && waterGrams <= MOST_WATER * sum(dry),
        ".waterGrams",
        shown(waterGrams) + " g",
        "at most ten times the " + shown(sum(dry)) + " g of the dry materials");
    must(
        sum(pigment) <= sum(dry),
        ".pigment",
        shown(sum(pigment)) + " g of pigment",
        "at most the " + shown(sum(dry)) + " g of the dry materials");
    double grams = sum(dry) + sum(pigment) + waterGrams;
    must(
        leftGrams >= 0 && leftGrams < grams,
        ".leftGrams",
        shown(leftGrams) + " g",
        "less than the " + Math.round(grams) + " g that were mixed");
    long density = Math.round((grams - leftGrams) / filledMl * ML_PER_LITRE);
    must(
        LEAST_DENSITY <= density && density <= MOST_DENSITY,
        ".filledMl",
        shown(filledMl) + " ml, which makes a density of " + density + " kg/m³",
        "a volume that makes one from 200 to 5000 kg/m³");
  }

  /** What all of it weighed, in grams. */
  public double grams() {
    return sum(dry) + sum(pigment) + waterGrams;
  }

  /** Its density in kg/m³: what went into the mould over what that filled. */
  public double densityKgPerM3() {
    return (grams() - leftGrams) / filledMl * ML_PER_LITRE;
  }

  /** The mix it was, in percent of the dry grams weighed, with its density as measured. */
  public Mix mix() {
    double base = sum(dry);
    List<Part> parts = new ArrayList<>();
    dry.forEach(portion -> parts.add(new Part(portion.material(), 100 * portion.grams() / base)));
    List<Dose> doses = new ArrayList<>();
    for (Portion portion : pigment) {
      doses.add(new Dose(portion.material(), 100 * portion.grams() / base, Basis.DRY));
    }
    return new Mix(
        "past",
        "past batch",
        Optional.empty(),
        parts,
        doses,
        new Water(100 * waterGrams / base, Basis.DRY),
        0,
        OptionalDouble.of(densityKgPerM3()),
        0,
        1,
        0);
  }

  private static double sum(List<Portion> portions) {
    return portions.stream().mapToDouble(Portion::grams).sum();
  }

  private static String shown(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }

  private static void must(boolean holds, String path, String found, String right) {
    if (!holds) {
      throw new Faulty(List.of(new Fault(path, found, right)));
    }
  }
}
