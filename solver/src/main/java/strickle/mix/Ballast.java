package strickle.mix;

import strickle.book.Core;

/** What has to lie on a core so that it does not float. */
public final class Ballast {

  private Ballast() {}

  /**
   * Grams of ballast for one casting: (wet density in g/ml x displaced ml − the core's own grams) x
   * safety factor, and 0 for a core that stays down by itself.
   *
   * <p>Archimedes, with the mix able to get under the whole core. Of a core sealed on the mould's
   * floor the column over the sealed base does not lift ({@link Uplift#sealed}): leave it out of
   * {@code displacedMl}.
   *
   * @param wetDensityKgPerM3 density of the wet mix in kg/m³, above 0
   * @throws IllegalArgumentException when the density is not above 0
   */
  public static double grams(Core core, double wetDensityKgPerM3) {
    if (!(wetDensityKgPerM3 > 0) || Double.isInfinite(wetDensityKgPerM3)) {
      throw new IllegalArgumentException(
          "A wet density of " + wetDensityKgPerM3 + " kg/m³ cannot be; it is above 0.");
    }
    return Uplift.hung(wetDensityKgPerM3, core.displacedMl(), core.massGrams())
        .ballastGrams(core.safetyFactor());
  }
}
