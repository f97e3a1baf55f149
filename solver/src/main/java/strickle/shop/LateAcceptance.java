package strickle.shop;

import java.util.Arrays;
import java.util.random.RandomGenerator;

/**
 * Goes from an order to a neighbour of it that is no worse than the present one, or no worse than
 * the one it was at so many steps ago. When it has found nothing better for long, it goes on from
 * the best order there is, after a few changes to it.
 *
 * <p>Source: E. K. Burke, Y. Bykov, The late acceptance hill-climbing heuristic, European Journal
 * of Operational Research 258 (2017) 70-78; the list turns with every order tried, also with those
 * that are not taken.
 */
final class LateAcceptance implements Walk {

  /**
   * How far to look back and how long to wait.
   *
   * @param lookBack how many steps it looks back
   * @param patience after so many steps for each claim without gain it starts afresh
   * @param changes made to the best order before a fresh start
   */
  record Manner(int lookBack, int patience, int changes) {}

  /** For studios and for machines with due dates of their own. */
  static final Manner QUICK = new Manner(10, 50, 10);

  /** For machines with one due date, where every order tried is justified. */
  static final Manner STEADY = new Manner(50, 30, 20);

  private static final int LEVELS = 3;

  private final Trials trials;
  private final Neighbours neighbours;
  private final RandomGenerator random;
  private final Manner manner;
  private final long[] past;
  private final long[] present = new long[LEVELS];
  private final long[] tried = new long[LEVELS];
  private final long[] bestOfRun = new long[LEVELS];
  private int[] order;
  private int[] candidate;
  private long steps;
  private long gained;

  /** A walk that begins at the best order tried so far. */
  LateAcceptance(Trials trials, Neighbours neighbours, Manner manner, RandomGenerator random) {
    this.manner = manner;
    this.past = new long[manner.lookBack * LEVELS];
    this.trials = trials;
    this.neighbours = neighbours;
    this.random = random;
    this.order = trials.bestOrder().clone();
    this.candidate = order.clone();
    begin();
  }

  @Override
  public void step() {
    if (steps - gained > (long) manner.patience * order.length) {
      afresh();
    }
    System.arraycopy(order, 0, candidate, 0, order.length);
    trials.vary(candidate, neighbours, random);
    trials.tryOrder(candidate);
    trials.read(tried);
    int at = (int) (steps % manner.lookBack) * LEVELS;
    if (noWorse(tried, present, 0) || noWorse(tried, past, at)) {
      takeOver();
    }
    System.arraycopy(present, 0, past, at, LEVELS);
    steps++;
  }

  private void takeOver() {
    int[] left = order;
    order = candidate;
    candidate = left;
    System.arraycopy(tried, 0, present, 0, LEVELS);
    if (!noWorse(bestOfRun, present, 0)) {
      System.arraycopy(present, 0, bestOfRun, 0, LEVELS);
      gained = steps;
    }
  }

  private void afresh() {
    System.arraycopy(trials.bestOrder(), 0, order, 0, order.length);
    for (int i = 0; i < manner.changes; i++) {
      neighbours.changeOne(order, random);
    }
    begin();
  }

  private void begin() {
    trials.tryOrder(order);
    trials.read(present);
    System.arraycopy(present, 0, bestOfRun, 0, LEVELS);
    for (int i = 0; i < manner.lookBack; i++) {
      System.arraycopy(present, 0, past, i * LEVELS, LEVELS);
    }
    gained = steps;
  }

  private static boolean noWorse(long[] one, long[] others, int at) {
    return Arrays.compare(one, 0, LEVELS, others, at, at + LEVELS) <= 0;
  }
}
