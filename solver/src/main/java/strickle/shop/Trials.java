package strickle.shop;

import java.time.Duration;
import java.util.Arrays;
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

  /**
   * What holds up the late ones is read again after one step more for every so many claims: in a
   * large shop reading takes longer than decoding, and a step changes little of it.
   */
  private static final int CLAIMS_PER_REST = 200;

  /** The lateness of an order that has no room for everything. */
  private static final long WORST = Long.MAX_VALUE / 2;

  private final Decoder decoder;
  private final Optional<Justification> justification;
  private final Critical critical;
  private final long most;
  private final boolean minded;
  private final Optional<Nearness> near;
  private final boolean guided;
  private final Consumer<Report> listener;
  private final long began = System.nanoTime();
  private final long nanos;
  private final int[] last;
  private final int[] bestOrder;
  private Runnable whenSpent = () -> {};
  private volatile boolean stopped;
  private long improvements;
  private boolean lastKnown;
  private boolean lastRead;
  private boolean lastFits;
  private long sinceRead;
  private int idle;
  private long late;
  private long attended;
  private long flow;
  private long leastMissing = Long.MAX_VALUE;
  private Value best = new Value(Long.MAX_VALUE, Long.MAX_VALUE, Long.MAX_VALUE);

  /**
   * No trials yet.
   *
   * @param budget how many schedules may be generated, and for how long
   * @param near what a schedule should be near to rather than short of minutes and flow
   * @param listener told whenever something better is found
   */
  Trials(Tables tables, Budget budget, Optional<Nearness> near, Consumer<Report> listener) {
    this.decoder = new Decoder(tables);
    this.justification = Justification.of(tables, decoder.claims());
    this.critical = new Critical(tables, decoder.claims(), decoder.timetable().start.length);
    this.most = budget.schedules().orElse(Long.MAX_VALUE);
    this.nanos = budget.time().map(Duration::toNanos).orElse(Long.MAX_VALUE);
    this.guided = tables.distances.tethered > 0;
    this.minded = !tables.shop.workers().isEmpty();
    this.near = near;
    this.listener = listener;
    this.last = new int[decoder.claims().count()];
    this.bestOrder = new int[last.length];
  }

  /** Tries the order; false if it has no room or the schedules are used up. */
  boolean tryOrder(int[] claims) {
    if (lastKnown && Arrays.equals(claims, last)) {
      return lastFits;
    }
    if (spent()) {
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
  void vary(int[] claims, Neighbours neighbours, RandomGenerator random) {
    idle++;
    sinceRead++;
    // Only now is it known that the order tried last has been taken over.
    if (lastKnown && lastFits && Arrays.equals(claims, last)) {
      takenOver();
    }
    neighbours.vary(claims, critical, random);
    refine(claims);
  }

  private void takenOver() {
    if (justification.isEmpty()) {
      decoder.takenOver(last);
    }
    if (!lastRead && sinceRead > last.length / CLAIMS_PER_REST) {
      critical.read(decoder);
      lastRead = true;
      sinceRead = 0;
    }
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
    boolean enough = stopped || idle > MOST_IDLE || System.nanoTime() - began >= nanos;
    return schedules() >= most || (enough && (found() || guided));
  }

  /** What ends the search when no more schedule may be generated. */
  void whenSpent(Runnable action) {
    whenSpent = action;
  }

  /**
   * Walks on until there is a better order than before, or no more schedule may be generated.
   *
   * @return the best order there is; it is nobody else's
   */
  int[] walk(Walk walk) {
    long before = improvements;
    while (improvements == before && !spent()) {
      walk.step();
    }
    if (spent()) {
      whenSpent.run();
    }
    return bestOrder.clone();
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

  /** Whether the search justifies what it tries. */
  boolean justifies() {
    return justification.isPresent();
  }

  /**
   * Writes the value of the order tried last, as the search sees it: lateness, attended minutes and
   * flow, the less the better. A shop of machines only, without workers, is searched for its
   * lateness alone, as minding its flow too was measured to lead astray. An order that has no room
   * for everything is worse than any that has, by how far it is from that.
   */
  void read(long[] value) {
    value[0] = lastFits ? late : WORST;
    value[1] = lastFits ? attended : decoder.missing();
    value[2] = minded && lastFits ? flow : 0;
  }

  /** The value of the best order tried. */
  Value best() {
    return best;
  }

  /** How far the best order tried is from being a schedule, while none has been found. */
  long leastMissing() {
    return leastMissing;
  }

  /** The best order tried; while none had room for everything, the one that came nearest. */
  int[] bestOrder() {
    return bestOrder;
  }

  private void judge() {
    late = decoder.late();
    attended = near.isPresent() ? near.get().moved(decoder) : decoder.timetable().attended;
    flow = near.isPresent() ? near.get().minutes(decoder) : decoder.flow();
    if (better()) {
      best = new Value(late, attended, flow);
      improvements++;
      System.arraycopy(last, 0, bestOrder, 0, last.length);
      listener.accept(new Report(System.nanoTime() - began, schedules(), best));
    }
  }

  /** While no order has had room for everything, the one that came nearest is the best. */
  private void nearer() {
    if (!found() && decoder.missing() < leastMissing) {
      leastMissing = decoder.missing();
      improvements++;
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
