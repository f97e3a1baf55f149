package strickle.shop;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.random.RandomGenerator;

/**
 * Decodes the orders that are tried, counts the schedules, and remembers the best. The order tried
 * last is not decoded twice.
 */
final class Trials {

  /** So many changes without anything new to try, and there is nothing: two claims, say. */
  private static final int MOST_IDLE = 1000;

  private final Decoder decoder;
  private final Optional<Justification> justification;
  private final Neighbours neighbours;
  private final Critical critical;
  private final long most;
  private final boolean minded;
  private final boolean guided;
  private final Consumer<Report> listener;
  private final long began = System.nanoTime();
  private final int[] order;
  private final int[] last;
  private final int[] bestOrder;
  private Runnable whenSpent = () -> {};
  private volatile boolean stopped;
  private boolean lastKnown;
  private boolean lastRead;
  private boolean lastFits;
  private int idle;
  private long late;
  private long attended;
  private long flow;
  private long leastMissing = Long.MAX_VALUE;
  private Value best = new Value(Long.MAX_VALUE, Long.MAX_VALUE, Long.MAX_VALUE);

  /**
   * No trials yet.
   *
   * @param most the most schedules to generate
   * @param listener told whenever something better is found
   */
  Trials(Tables tables, long most, Consumer<Report> listener) {
    this.decoder = new Decoder(tables);
    this.justification = Justification.of(tables, decoder.claims());
    this.neighbours = new Neighbours(tables, decoder.claims());
    this.critical = new Critical(tables, decoder.claims(), decoder.timetable().start.length);
    this.most = most;
    this.guided = tables.distances.tethered > 0;
    this.minded = !tables.shop.workers().isEmpty();
    this.listener = listener;
    this.order = new int[decoder.claims().count()];
    this.last = new int[order.length];
    this.bestOrder = new int[order.length];
  }

  /** Tries the order of the claims; false if it has no room or the schedules are used up. */
  boolean tryOrder(List<Claim> claims) {
    for (int i = 0; i < order.length; i++) {
      order[i] = claims.get(i).index();
    }
    return tryOrder(order);
  }

  /** Tries the order; false if it has no room or the schedules are used up. */
  boolean tryOrder(int[] claims) {
    if (lastKnown && Arrays.equals(claims, last)) {
      return lastFits;
    }
    if (spent()) {
      whenSpent.run();
      return false;
    }
    lastFits = decoder.decode(claims);
    lastKnown = true;
    idle = 0;
    lastRead = false;
    System.arraycopy(claims, 0, last, 0, claims.length);
    if (lastFits) {
      judge();
    } else {
      nearer();
    }
    return lastFits;
  }

  /**
   * Tries the order and, where the shop allows it, what forward-backward justification makes of it;
   * if that is no worse, writes it into the order.
   */
  void refine(int[] claims) {
    if (justification.isEmpty() || !tryOrder(claims) || schedules() + 2 > most) {
      return;
    }
    long before = late;
    if (!justification.get().backAndForth(decoder.timetable())) {
      return;
    }
    int[] justified = justification.get().order();
    if (tryOrder(justified) && late <= before) {
      System.arraycopy(justified, 0, claims, 0, claims.length);
    }
  }

  /** Changes the order a little, and refines what comes of it. */
  void vary(int[] claims, RandomGenerator random) {
    idle++;
    if (idle > MOST_IDLE) {
      whenSpent.run();
    }
    if (lastKnown && lastFits && !lastRead && Arrays.equals(claims, last)) {
      // Only now is it known that the order tried last has been taken over.
      critical.read(decoder);
      lastRead = true;
    }
    neighbours.vary(claims, critical, random);
    refine(claims);
  }

  /** How many schedules have been generated so far. */
  long schedules() {
    return decoder.decoded() + justification.map(Justification::decoded).orElse(0L);
  }

  /** How many schedules may still be generated. */
  long left() {
    return most - schedules();
  }

  /** Lets no more schedule be generated once one is found; may be called from another thread. */
  void stop() {
    stopped = true;
  }

  /** Whether no more schedule may be generated. */
  boolean spent() {
    return schedules() >= most || (stopped && (found() || guided));
  }

  /** What to do when an order is to be tried and no more schedule may be generated. */
  void whenSpent(Runnable action) {
    whenSpent = action;
  }

  /** How many schedules one step of a search takes. */
  int schedulesPerStep() {
    return justification.isPresent() ? 3 : 1;
  }

  /** Time since the first trial could begin. */
  Duration elapsed() {
    return Duration.ofNanos(System.nanoTime() - began);
  }

  /** Whether any order tried had room for everything. */
  boolean found() {
    return best.late() != Long.MAX_VALUE;
  }

  Decoder decoder() {
    return decoder;
  }

  /** Lateness of the order tried last. */
  long late() {
    return late;
  }

  /** How far the order tried last is from being a schedule, if it has no room for everything. */
  long missing() {
    return spent() ? Long.MAX_VALUE / 2 : decoder.missing();
  }

  /** Attended minutes of the order tried last. */
  long attended() {
    return attended;
  }

  /**
   * Flow of the order tried last, as far as the search minds it: a shop of machines only, without
   * workers, is searched for its lateness alone, as minding its flow too was measured to lead
   * astray.
   */
  long flowSearched() {
    return minded ? flow : 0;
  }

  /** The value of the best order tried. */
  Value best() {
    return best;
  }

  /** The best order tried. */
  int[] bestOrder() {
    return bestOrder;
  }

  private void judge() {
    late = decoder.late();
    attended = decoder.timetable().attended;
    flow = decoder.flow();
    if (better()) {
      best = new Value(late, attended, flow);
      System.arraycopy(last, 0, bestOrder, 0, last.length);
      listener.accept(new Report(System.nanoTime() - began, schedules(), best));
    }
  }

  /** While no order has had room for everything, the one that came nearest is the best. */
  private void nearer() {
    if (!found() && decoder.missing() < leastMissing) {
      leastMissing = decoder.missing();
      System.arraycopy(last, 0, bestOrder, 0, last.length);
    }
  }

  private boolean better() {
    if (late != best.late()) {
      return late < best.late();
    }
    if (attended != best.attended()) {
      return attended < best.attended();
    }
    return flow < best.flow();
  }
}
