package strickle.cure;

/**
 * A figure and the band that holds it in 90 of 100 such cases, as far as the model is right.
 *
 * @param low at the least
 * @param likely the best estimate
 * @param high at the most
 */
public record Between(double low, double likely, double high) {

  /** The band that holds this one and another figure with its own. */
  Between and(double figure, double stray) {
    return new Between(Math.min(low, figure - stray), likely, Math.max(high, figure + stray));
  }
}
