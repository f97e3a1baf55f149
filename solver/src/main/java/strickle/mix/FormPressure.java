package strickle.mix;

/** How hard a wet mix presses on what holds it: as a liquid of its density, with the full head. */
public final class FormPressure {

  /** Standard gravity in m/s², exact by convention. */
  public static final double GRAVITY = 9.80665;

  private static final double MM_PER_M = 1000;

  private FormPressure() {}

  /**
   * The pressure at a depth below the surface: p = ρ g h (ACI 347-04, Eq. 2.1), the full liquid
   * head. That is the rule for a slump above 175 mm (7 in.), self-compacting mixes and fast fills
   * (letter of its author in Concrete Construction, "Use updated wall pressure formulas"), and so
   * for fluid mixes poured in one go; stiffer mixes press less.
   *
   * @param wetDensityKgPerM3 density of the wet mix in kg/m³, above 0
   * @param depthMm depth below the surface in millimetres, 0 or more
   * @return pascals, 0 or more
   * @throws IllegalArgumentException for a density or a depth outside that
   */
  public static double pascals(double wetDensityKgPerM3, double depthMm) {
    if (!(wetDensityKgPerM3 > 0) || Double.isInfinite(wetDensityKgPerM3)) {
      throw new IllegalArgumentException(
          "A wet density of " + wetDensityKgPerM3 + " kg/m³ cannot be; it is above 0.");
    }
    if (!(depthMm >= 0) || Double.isInfinite(depthMm)) {
      throw new IllegalArgumentException(
          "A depth of " + depthMm + " mm cannot be; it is 0 or more.");
    }
    return wetDensityKgPerM3 * GRAVITY * (depthMm / MM_PER_M);
  }

  /**
   * The push on an upright wall from the surface down to a depth: the mean pressure, half of that
   * at the bottom, on the wall's area. It acts a third of the depth above the bottom.
   *
   * @param wetDensityKgPerM3 density of the wet mix in kg/m³, above 0
   * @param depthMm depth of the mix at the wall in millimetres, 0 or more
   * @param widthMm width of the wall in millimetres, 0 or more
   * @return newtons, 0 or more
   * @throws IllegalArgumentException for a measure outside that
   */
  public static double wallNewtons(double wetDensityKgPerM3, double depthMm, double widthMm) {
    if (!(widthMm >= 0) || Double.isInfinite(widthMm)) {
      throw new IllegalArgumentException(
          "A wall " + widthMm + " mm wide cannot be; its width is 0 or more.");
    }
    double squareMetres = depthMm / MM_PER_M * (widthMm / MM_PER_M);
    return pascals(wetDensityKgPerM3, depthMm) / 2 * squareMetres;
  }
}
