package strickle.mix;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.stream.Stream;
import strickle.book.Dose;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Material;
import strickle.book.Mix;
import strickle.book.Part;

/**
 * A batch of a mix, worked out to the last figure a maker looks for.
 *
 * @param wetDensityKgPerM3 density of the wet mix, measured or by absolute volume
 * @param airFreeKgPerM3 the density without any air, by absolute volume; empty when a relative
 *     density is unknown
 * @param airPercent air by volume, 100 (T − D)/T with T without air and D as it is (ASTM C138,
 *     second-hand); below 0 when the measured density cannot be right; empty as above
 * @param cementKgPerM3 cement in a cubic metre of the wet mix; empty when it is unknown
 * @param neededGrams what the moulds take, waste included
 * @param wetGrams what is weighed out
 * @param wetMl what that fills
 * @param leftoverGrams what is weighed out beyond what is needed, 0 or more
 * @param lines every material, dry, pigment, water
 * @param pigment the pigment against dry mix and cement
 */
public record Batch(
    double wetDensityKgPerM3,
    OptionalDouble airFreeKgPerM3,
    OptionalDouble airPercent,
    OptionalDouble cementKgPerM3,
    double neededGrams,
    double wetGrams,
    double wetMl,
    double leftoverGrams,
    List<BatchLine> lines,
    PigmentCheck pigment) {

  private static final double ML_PER_LITRE = 1000;

  /** Copies the list. */
  public Batch {
    lines = List.copyOf(lines);
  }

  /**
   * Works a batch out. On the scale of a plan, to 0.1 g, it is weighed as a plan weighs it, rounded
   * to the nearest. On any other scale, or rounded up, what is weighed is never less than what is
   * needed: the scale's step rounds the whole up.
   *
   * @param materials finds a material by its id; null for an id it does not know
   * @param neededGrams what the moulds take, waste included, 0 to 10⁹
   * @throws Faulty when the mix cannot be worked out, paths relative to it; and with path {@code
   *     .stepGrams} for every material of which the scale's step would weigh nothing
   */
  public static Batch of(
      Mix mix, Function<String, Material> materials, double neededGrams, Weighing weighing) {
    Recipe recipe = Recipe.of(mix, materials);
    double mixed = weighing.roundedUp(neededGrams);
    List<Portion> exact = recipe.forWet(mixed);
    List<Portion> weighed = weighed(recipe, mixed, weighing);
    mustBeWeighed(exact, weighed, weighing.stepGrams());
    double total = weighed.stream().mapToDouble(Portion::grams).sum();
    double density = recipe.wetDensityKgPerM3();
    OptionalDouble airFree = airFree(mix, materials);
    Bases bases = Bases.of(mix, materials, weighed);
    OptionalDouble cement = Bases.of(mix, materials, exact).cement();
    List<BatchLine> lines = new ArrayList<>();
    for (int i = 0; i < exact.size(); i++) {
      lines.add(bases.line(exact.get(i), weighed.get(i)));
    }
    return new Batch(
        density,
        airFree,
        mapped(airFree, free -> 100 * (free - density) / free),
        mapped(cement, grams -> mixed == 0 ? 0 : grams / mixed * density),
        neededGrams,
        total,
        total / density * ML_PER_LITRE,
        Math.max(0, total - neededGrams),
        lines,
        PigmentCheck.of(mix, materials));
  }

  private static List<Portion> weighed(Recipe recipe, double grams, Weighing weighing) {
    return weighing.equals(Weighing.USUAL)
        ? recipe.weighOut(grams)
        : recipe.weighOut(grams, weighing.stepGrams());
  }

  private static void mustBeWeighed(List<Portion> exact, List<Portion> weighed, double step) {
    double least =
        exact.stream().mapToDouble(Portion::grams).filter(grams -> grams > 0).min().orElse(0);
    List<Fault> faults = new ArrayList<>();
    for (int i = 0; i < exact.size(); i++) {
      if (exact.get(i).grams() > 0 && weighed.get(i).grams() == 0) {
        String found =
            shown(step, RoundingMode.HALF_EVEN)
                + " g, which weighs none of the "
                + shown(exact.get(i).grams(), RoundingMode.HALF_EVEN)
                + " g of "
                + exact.get(i).material();
        String finer = "at most " + shown(least, RoundingMode.DOWN) + " g, or ";
        String right = (least < Weighing.LEAST_STEP ? "" : finer) + "more mixed at once";
        faults.add(new Fault(".stepGrams", found, right));
      }
    }
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
  }

  private static String shown(double grams, RoundingMode rounding) {
    return new BigDecimal(grams, new MathContext(3, rounding)).stripTrailingZeros().toPlainString();
  }

  /** By absolute volume with no air, whatever was measured. */
  private static OptionalDouble airFree(Mix mix, Function<String, Material> materials) {
    boolean known =
        Stream.concat(
                mix.dry().stream().map(Part::material), mix.pigment().stream().map(Dose::material))
            .allMatch(id -> materials.apply(id).relativeDensity().isPresent());
    if (!known) {
      return OptionalDouble.empty();
    }
    Mix without =
        new Mix(
            mix.id(),
            mix.name(),
            mix.swatch(),
            mix.dry(),
            mix.pigment(),
            mix.water(),
            0,
            OptionalDouble.empty(),
            mix.mixMinutes(),
            mix.workingMinutes(),
            mix.washMinutes());
    return OptionalDouble.of(Recipe.of(without, materials).wetDensityKgPerM3());
  }

  private static OptionalDouble mapped(OptionalDouble value, DoubleUnaryOperator to) {
    return value.isPresent()
        ? OptionalDouble.of(to.applyAsDouble(value.getAsDouble()))
        : OptionalDouble.empty();
  }
}
