package strickle.shop;

/**
 * A clock that runs faster or slower than the wall clock, at a constant rate from each change to
 * the next; a wait measured on it ends when the clock, not the wall, has gone round.
 */
public final class Clock {

  /** Rounding slack of a sum of rates, in hours: far below a minute, far above double's error. */
  private static final double SLACK_HOURS = 1e-9;

  private static final int MINUTES = 60;

  /** Far beyond any horizon, yet far enough from overflow to be added up. */
  private static final double LATEST = 5e8;

  private final int[] starts;
  private final double[] rates;
  private final double[] shown;
  private final double fastest;

  private Clock(int[] starts, double[] rates) {
    this.starts = starts;
    this.rates = rates;
    this.shown = new double[starts.length];
    double most = rates[0];
    for (int i = 1; i < starts.length; i++) {
      shown[i] = shown[i - 1] + (starts[i] - starts[i - 1]) * rates[i - 1];
      most = Math.max(most, rates[i]);
    }
    this.fastest = most;
  }

  /** The wall clock itself. */
  public static Clock wall() {
    return of(new int[] {0}, new double[] {1.0});
  }

  /**
   * A clock with the rates given.
   *
   * @param starts minutes from the start of planning at which each rate begins; the first is 0,
   *     strictly ascending
   * @param rates clock minutes per wall minute, each above 0
   * @throws IllegalArgumentException when that is not so
   */
  public static Clock of(int[] starts, double[] rates) {
    if (starts.length == 0 || starts.length != rates.length || starts[0] != 0) {
      throw new IllegalArgumentException("a rate for each start, and the first start 0");
    }
    for (int i = 0; i < starts.length; i++) {
      if (!(rates[i] > 0) || Double.isInfinite(rates[i]) || (i > 0 && starts[i] <= starts[i - 1])) {
        throw new IllegalArgumentException(
            "rate " + rates[i] + " at minute " + starts[i] + ": rates above 0, starts ascending");
      }
    }
    return new Clock(starts.clone(), rates.clone());
  }

  /**
   * The first whole minute at which {@code hours} of this clock have gone by since {@code from}.
   */
  public int end(int from, double hours) {
    int i = piece(from);
    double target = shown[i] + (from - starts[i]) * rates[i] + (hours - SLACK_HOURS) * MINUTES;
    while (i + 1 < starts.length && shown[i + 1] < target) {
      i++;
    }
    double minutes = starts[i] + (target - shown[i]) / rates[i];
    return Math.max(from, (int) Math.min(LATEST, Math.ceil(minutes)));
  }

  /** The least whole minutes {@code hours} of this clock can ever take. */
  public int atLeast(double hours) {
    double minutes = Math.ceil((hours - SLACK_HOURS) * MINUTES / fastest);
    return (int) Math.max(0, Math.min(LATEST, minutes));
  }

  private int piece(int at) {
    int i = starts.length - 1;
    while (i > 0 && starts[i] > at) {
      i--;
    }
    return i;
  }
}
