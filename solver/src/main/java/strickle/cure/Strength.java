package strickle.cure;

import java.util.List;
import java.util.Optional;

/**
 * How much of its strength at 28 days concrete has at an age. Information only: the curves are of
 * building concrete under moist cure, and a studio's mix is another.
 *
 * @param low part of the strength at 28 days, at the least
 * @param high at the most
 * @param early whether the age is below a day, for which the curves are not meant
 */
public record Strength(double low, double high, boolean early) {

  private static final double DAYS = 28;
  private static final double HOURS_PER_DAY = 24;

  /** Mean over characteristic strength in MPa, EN 1992-1-1 Table 3.1. */
  private static final double MEAN_ABOVE_MPA = 8;

  /**
   * β_cc(t) = exp(s (1 − √(28/t))), EN 1992-1-1 §3.1.2(6) Eq. 3.2: the mean strength at an age over
   * that at 28 days, at 20 °C.
   *
   * @param days age at 20 °C, above 0
   */
  public static double fraction(double days, CementClass cement) {
    mustBeAnAge(days);
    return Math.exp(cement.gain() * (1 - Math.sqrt(DAYS / days)));
  }

  /**
   * The characteristic strength at an age in MPa: β_cc (f_ck + 8) − 8, and f_ck from 28 days on.
   *
   * @param characteristicMpa f_ck at 28 days, above 0
   * @param days age at 20 °C, above 3
   * @throws IllegalArgumentException at 3 days or before, for which the rule is not meant
   */
  public static double characteristicMpa(
      double characteristicMpa, double days, CementClass cement) {
    if (!(days > 3) || !(characteristicMpa > 0)) {
      throw new IllegalArgumentException(
          characteristicMpa
              + " MPa at "
              + days
              + " days cannot be told; the strength is above 0 and the age above 3 days.");
    }
    return days >= DAYS
        ? characteristicMpa
        : fraction(days, cement) * (characteristicMpa + MEAN_ABOVE_MPA) - MEAN_ABOVE_MPA;
  }

  /**
   * The curve t/(a + b t) of ACI 209R-92 with a = 4.0 and b = 0.85, Type I cement, moist cure; at
   * 28 days it gives 1.007, not 1.
   *
   * @param days age, above 0
   */
  public static double aci209(double days) {
    mustBeAnAge(days);
    return days / (4.0 + 0.85 * days);
  }

  /**
   * The band in which the part of the strength lies: an age that may be wrong by {@link Ready#BAND}
   * either way, by every curve here: ACI 209R's, and EN 1992-1-1's of the cement, or from the
   * slowest to the fastest cement unless it is known.
   *
   * @param ageHours hours at 20 °C, above 0
   */
  public static Strength band(double ageHours, Optional<CementClass> cement) {
    double days = ageHours / HOURS_PER_DAY;
    // Until 28 days the slowest cement is the weakest, and from then on the strongest.
    List<CementClass> classes = cement.map(List::of).orElse(List.of(CementClass.values()));
    double low = aci209(days * (1 - Ready.BAND));
    double high = aci209(days * (1 + Ready.BAND));
    for (CementClass one : classes) {
      low = Math.min(low, fraction(days * (1 - Ready.BAND), one));
      high = Math.max(high, fraction(days * (1 + Ready.BAND), one));
    }
    return new Strength(low, high, days < 1);
  }

  private static void mustBeAnAge(double days) {
    if (!(days > 0) || Double.isInfinite(days)) {
      throw new IllegalArgumentException(
          "An age of " + days + " days cannot be; it is above 0 days.");
    }
  }
}
