package strickle.cure;

/** Student's t, for how sure a few measurements make us. */
public final class StudentT {

  /** 95 of 100 lie below, for 1 to 30 degrees of freedom (any statistics table). */
  private static final double[] NINETY_FIVE = {
    6.314, 2.920, 2.353, 2.132, 2.015, 1.943, 1.895, 1.860, 1.833, 1.812,
    1.796, 1.782, 1.771, 1.761, 1.753, 1.746, 1.740, 1.734, 1.729, 1.725,
    1.721, 1.717, 1.714, 1.711, 1.708, 1.706, 1.703, 1.701, 1.699, 1.697
  };

  private static final double NORMAL = 1.644854;

  private StudentT() {}

  /**
   * The half width of a band that holds 90 of 100, in standard deviations.
   *
   * @param freedom degrees of freedom, 1 or more
   */
  public static double ninety(int freedom) {
    if (freedom <= NINETY_FIVE.length) {
      return NINETY_FIVE[freedom - 1];
    }
    // The first terms of its expansion about the normal distribution.
    double cubed = Math.pow(NORMAL, 3);
    double second = 5 * Math.pow(NORMAL, 5) + 16 * cubed + 3 * NORMAL;
    return NORMAL + (cubed + NORMAL) / (4.0 * freedom) + second / (96.0 * freedom * freedom);
  }
}
