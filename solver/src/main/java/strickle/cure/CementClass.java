package strickle.cure;

/** How fast a cement gains strength, EN 1992-1-1 §3.1.2(6). */
public enum CementClass {
  /** Rapid. */
  R(0.20),
  /** Normal. */
  N(0.25),
  /** Slow. */
  S(0.38);

  private final double gain;

  CementClass(double gain) {
    this.gain = gain;
  }

  /** The coefficient s of Eq. 3.2. */
  public double gain() {
    return gain;
  }
}
