package strickle.shop;

import java.util.Arrays;
import java.util.Random;

/** A clock as tests know it: its rates are multiples of an eighth, so sums of them are exact. */
final class Pace {

  static final Pace WALL = new Pace(new int[] {0}, new double[] {1});

  private final int[] starts;
  private final double[] rates;

  /** Rates in clock minutes per wall minute, and when each begins. */
  private Pace(int[] starts, double[] rates) {
    this.starts = starts;
    this.rates = rates;
  }

  /** A clock that changes its rate up to five times. */
  static Pace any(Random random, int apart) {
    int count = 1 + random.nextInt(6);
    int[] starts = new int[count];
    double[] rates = new double[count];
    for (int i = 0; i < count; i++) {
      starts[i] = i == 0 ? 0 : starts[i - 1] + 1 + random.nextInt(apart);
      rates[i] = (1 + random.nextInt(20)) / 8.0;
    }
    return new Pace(starts, rates);
  }

  @Override
  public String toString() {
    return Arrays.toString(starts) + Arrays.toString(rates);
  }

  Clock clock() {
    return Clock.of(starts, rates);
  }

  /** How far the clock goes in one wall minute. */
  double rateAt(int minute) {
    int i = 0;
    while (i + 1 < starts.length && starts[i + 1] <= minute) {
      i++;
    }
    return rates[i];
  }

  /** How far the clock goes from one minute to another, summed minute by minute. */
  double shown(int from, int to) {
    double sum = 0;
    for (int minute = from; minute < to; minute++) {
      sum += rateAt(minute);
    }
    return sum;
  }
}
