package strickle.plan.learn;

/**
 * A figure with its band.
 *
 * @param mean the estimate
 * @param low the true figure is above this in 95 of 100 such cases, as far as the model is right
 * @param high it is below this in 95 of 100
 */
record Estimate(double mean, double low, double high) {

  /** The same figure in other units. */
  Estimate times(double factor) {
    return new Estimate(mean * factor, low * factor, high * factor);
  }

  /** Whether a figure lies outside the band. */
  boolean excludes(double figure) {
    return figure < low || figure > high;
  }
}
