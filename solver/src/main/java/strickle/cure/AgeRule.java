package strickle.cure;

import java.util.List;

/**
 * How much age an hour at a temperature counts for. Hours of age are hours at 20 °C; none of the
 * rules is by nature more accurate than another (Lee and Hover, ACI Materials Journal 112-6, 2015),
 * so the studio's own records decide.
 */
public sealed interface AgeRule {

  /** The temperature at which an hour is an hour, in °C. */
  double REFERENCE_C = 20;

  /**
   * Hours of age gained in one hour at {@code temperatureC}; never less the warmer it is.
   *
   * @param temperatureC −50 to 100 °C
   * @return 0 or more
   * @throws IllegalArgumentException outside that range
   */
  double factor(double temperatureC);

  /** Hours of age gained over some stretches. */
  default double hours(List<Stretch> stretches) {
    return stretches.stream().mapToDouble(one -> one.hours() * factor(one.temperatureC())).sum();
  }

  /** EN 1992-1-1 Annex B, Eq. B.10, as {@link EquivalentAge}; at 20 °C its factor is 0.998. */
  record En1992() implements AgeRule {
    @Override
    public double factor(double temperatureC) {
      return EquivalentAge.factor(temperatureC);
    }
  }

  /**
   * An activation energy of one's own: exp(−Q (1/T − 1/T20)), T in kelvin, Q = E/R (ASTM C1074; its
   * usual 5000 K and 40 to 45 kJ/mol for Type I cement are values from memory).
   *
   * @param kelvin Q, 0 to 20,000 K
   */
  record Arrhenius(double kelvin) implements AgeRule {

    /** The gas constant in J/(mol K). */
    public static final double GAS_CONSTANT = 8.314462618;

    private static final double ZERO_CELSIUS = 273.15;
    private static final double MOST_KELVIN = 20_000;

    /**
     * Checks the activation.
     *
     * @throws strickle.book.Faulty when it is out of range
     */
    public Arrhenius {
      Checks checks = new Checks();
      checks.between(".kelvin", kelvin, 0, MOST_KELVIN);
      checks.done();
    }

    /** The rule of an activation energy in kJ/mol, 0 to 166. */
    public static Arrhenius ofEnergy(double kilojoulesPerMol) {
      return new Arrhenius(kilojoulesPerMol * 1000 / GAS_CONSTANT);
    }

    @Override
    public double factor(double temperatureC) {
      return Math.exp(-kelvin * inverseKelvin(temperatureC));
    }

    /** 1/T − 1/T20 in 1/K, above 0 when it is colder than 20 °C. */
    static double inverseKelvin(double temperatureC) {
      EquivalentAge.mustBePossible(temperatureC);
      return 1 / (ZERO_CELSIUS + temperatureC) - 1 / (ZERO_CELSIUS + REFERENCE_C);
    }
  }

  /**
   * Nurse and Saul: age grows with the degrees above a datum, and not at all below it. Datums in
   * use: 0 °C for Type I cement (ASTM C1074, value from memory), −10 °C and −11.7 °C (second-hand).
   *
   * @param datumC −50 to 15 °C
   */
  record NurseSaul(double datumC) implements AgeRule {

    /**
     * Checks the datum.
     *
     * @throws strickle.book.Faulty when it is out of range
     */
    public NurseSaul {
      Checks checks = new Checks();
      checks.between(".datumC", datumC, -50, 15);
      checks.done();
    }

    @Override
    public double factor(double temperatureC) {
      return degrees(temperatureC) / (REFERENCE_C - datumC);
    }

    /** Degree hours (°C·h) gathered over some stretches: Σ (T − T0) Δt, none below the datum. */
    public double degreeHours(List<Stretch> stretches) {
      return stretches.stream().mapToDouble(one -> one.hours() * degrees(one.temperatureC())).sum();
    }

    private double degrees(double temperatureC) {
      EquivalentAge.mustBePossible(temperatureC);
      return Math.max(0, temperatureC - datumC);
    }
  }
}
