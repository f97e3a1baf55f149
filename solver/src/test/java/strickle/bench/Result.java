package strickle.bench;

/**
 * What a search has found.
 *
 * @param instance the problem
 * @param found the lateness of the best schedule found, or {@link #NONE}
 * @param seconds how long it took
 */
record Result(Instance instance, long found, double seconds) {

  /** Stands for no schedule, where none is found and where there is none: worse than any. */
  static final long NONE = Long.MAX_VALUE;

  /**
   * Refuses what cannot be.
   *
   * @throws IllegalStateException when it is better than what is proved to be the best
   */
  Result {
    if (found < instance.bound() && instance.bound() == NONE) {
      throw new IllegalStateException(
          "found " + found + ", where it is proved that there is no schedule");
    }
    if (found < instance.bound()) {
      throw new IllegalStateException(
          "found " + found + ", which is below the proved bound " + instance.bound());
    }
  }

  /** Whether there is a schedule. */
  boolean solved() {
    return found != NONE;
  }

  /** Whether it is as good as the best known. */
  boolean atBest() {
    return solved() && found <= instance.best();
  }

  /** How far it is above some value, in percent of it. */
  double percentOver(long value) {
    return 100.0 * (found - value) / value;
  }
}
