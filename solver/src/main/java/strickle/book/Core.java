package strickle.book;

/**
 * An inner core that displaces wet mix, floats in it, and so needs ballast.
 *
 * @param displacedMl volume of wet mix pushed aside, above 0, in millilitres
 * @param massGrams mass of the empty core, 0 or more, in grams
 * @param safetyFactor by how much the ballast exceeds the buoyancy, 1 to 100
 */
public record Core(double displacedMl, double massGrams, double safetyFactor) {

  /**
   * Checks the core.
   *
   * @throws Faulty with every fault, paths relative to the core
   */
  public Core {
    Check check = new Check();
    check.positive(".displacedMl", displacedMl, Check.MOST_ML_OR_GRAMS);
    check.number(".massGrams", massGrams, 0, Check.MOST_ML_OR_GRAMS);
    check.number(".safetyFactor", safetyFactor, 1, 100);
    check.done();
  }
}
