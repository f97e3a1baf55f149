package strickle.price.fair;

import strickle.book.Demand;

/**
 * Demand that is a triangle of low, likely and high, read at the halves: P(D ≥ k) = 1 − F(k − 0.5),
 * F being the triangular distribution function.
 *
 * @param low the fewest
 * @param likely the likeliest, not below low
 * @param high the most, not below likely
 */
public record Triangle(double low, double likely, double high) implements Chances {

  private static final double HALF = 0.5;

  /** Refuses what is no triangle. */
  public Triangle {
    if (!(low <= likely && likely <= high)) {
      throw new IllegalArgumentException("low, likely, high: " + low + ", " + likely + ", " + high);
    }
  }

  /** The triangle of a demand. */
  public static Triangle of(Demand demand) {
    return new Triangle(demand.low(), demand.likely(), demand.high());
  }

  @Override
  public double atLeast(int pieces) {
    return 1 - below(pieces - HALF);
  }

  /**
   * F(x): (x − a)²/((b − a)(c − a)) up to the likeliest c, 1 − (b − x)²/((b − a)(b − c)) above it,
   * of a triangle from a to b. Source: the triangular distribution, value from memory.
   */
  double below(double amount) {
    if (amount <= low) {
      return 0;
    }
    if (amount >= high) {
      return 1;
    }
    double width = high - low;
    return amount <= likely
        ? (amount - low) * (amount - low) / (width * (likely - low))
        : 1 - (high - amount) * (high - amount) / (width * (high - likely));
  }
}
