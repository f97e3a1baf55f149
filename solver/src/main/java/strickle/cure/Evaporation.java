package strickle.cure;

/**
 * Water that leaves a freshly filled surface. When it leaves faster than it rises from below, the
 * surface shrinks and cracks while it is still soft.
 *
 * @param kgPerM2Hour the estimate, 0 or more; what really happens may be 40 % less or more
 */
public record Evaporation(double kgPerM2Hour) {

  /** From here on precautions are due: 0.2 lb/ft²/h, rounded (ACI 305R as quoted). */
  public static final double HIGH = 1.0;

  /** About one half of {@link #HIGH}, for rich and fine mixes (same source). */
  public static final double RAISED = 0.5;

  /** How far the truth may be from an estimate, as a fraction (Hover, ACI SP-338, 2020). */
  public static final double UNCERTAINTY = 0.4;

  /** The coldest air and concrete the estimate is made for, in °C. */
  public static final double COLDEST_C = 0;

  /** The warmest, in °C. */
  public static final double WARMEST_C = 60;

  /** The strongest wind the estimate is made for, in km/h. */
  public static final double MOST_WIND_KM_PER_HOUR = 100;

  private static final double SHIFT_C = 18;
  private static final double POWER = 2.5;
  private static final double STILL_AIR = 4;
  private static final double SCALE = 5e-6;
  private static final double PERCENT = 100;

  /** How much there is to mind. */
  public enum Level {
    /** Below {@link #RAISED}, also if the truth is as high as the estimate allows. */
    LOW,
    /** Below {@link #RAISED}, but the truth may be above it. */
    NEAR,
    /** {@link #RAISED} or more. */
    RAISED,
    /** {@link #HIGH} or more. */
    HIGH
  }

  /** Refuses a rate below 0. */
  public Evaporation {
    within("A rate of evaporation", kgPerM2Hour, 0, Double.MAX_VALUE);
  }

  /**
   * The estimate by Uno (ACI Materials Journal 95-M34, 1998), E = 5((Tc + 18)^2.5 − r(Ta +
   * 18)^2.5)(V + 4)·10⁻⁶; below 0, where water would settle on the surface, 0.
   *
   * @param concreteC temperature of the surface, 0 to 60 °C
   * @param airC temperature of the air, 0 to 60 °C
   * @param humidityPercent relative humidity, 0 to 100
   * @param windKmPerHour about half a metre above the surface, 0 to 100 km/h
   * @throws IllegalArgumentException for anything outside these ranges
   */
  public static Evaporation of(
      double concreteC, double airC, double humidityPercent, double windKmPerHour) {
    within("A wind in km/h", windKmPerHour, 0, MOST_WIND_KM_PER_HOUR);
    double drive = drive(concreteC, airC, humidityPercent);
    return new Evaporation(Math.max(0, SCALE * drive * (windKmPerHour + STILL_AIR)));
  }

  /**
   * The wind at which the estimate reaches a rate, in km/h; 0 when still air does, infinite when no
   * wind can.
   *
   * @param rate in kg/m²/h, above 0
   */
  public static double windReaching(
      double rate, double concreteC, double airC, double humidityPercent) {
    double drive = drive(concreteC, airC, humidityPercent);
    return drive <= 0 ? Double.POSITIVE_INFINITY : Math.max(0, rate / (SCALE * drive) - STILL_AIR);
  }

  private static double drive(double concreteC, double airC, double humidityPercent) {
    within("A temperature of concrete in °C", concreteC, COLDEST_C, WARMEST_C);
    within("A temperature of air in °C", airC, COLDEST_C, WARMEST_C);
    within("A humidity in percent", humidityPercent, 0, PERCENT);
    return Math.pow(concreteC + SHIFT_C, POWER)
        - humidityPercent / PERCENT * Math.pow(airC + SHIFT_C, POWER);
  }

  private static void within(String what, double value, double lowest, double highest) {
    if (!(lowest <= value && value <= highest)) {
      throw new IllegalArgumentException(
          what + " of " + value + " cannot be used; it is from " + lowest + " to " + highest + ".");
    }
  }

  /** The least it may really be, in kg/m²/h. */
  public double least() {
    return kgPerM2Hour * (1 - UNCERTAINTY);
  }

  /** The most it may really be, in kg/m²/h. */
  public double most() {
    return kgPerM2Hour * (1 + UNCERTAINTY);
  }

  /** How much there is to mind. */
  public Level level() {
    if (kgPerM2Hour >= HIGH) {
      return Level.HIGH;
    }
    if (kgPerM2Hour >= RAISED) {
      return Level.RAISED;
    }
    return most() >= RAISED ? Level.NEAR : Level.LOW;
  }
}
