package strickle.shop;

import java.time.Duration;
import java.util.List;
import java.util.function.Consumer;

/** Decodes every order that is tried, counts them, and remembers the best. */
final class Watch {

  private final Decoder decoder;
  private final Consumer<Report> listener;
  private final long began = System.nanoTime();
  private final int[] order;
  private final int[] bestOrder;
  private long late;
  private long attended;
  private long flow;
  private Value best = new Value(Long.MAX_VALUE, Long.MAX_VALUE, Long.MAX_VALUE);

  Watch(Decoder decoder, Consumer<Report> listener) {
    this.decoder = decoder;
    this.listener = listener;
    this.order = new int[decoder.claims().count()];
    this.bestOrder = new int[order.length];
  }

  /** Decodes the order of the claims, keeps it if it is the best so far; false if it has no room. */
  boolean tryOrder(List<Claim> claims) {
    for (int i = 0; i < order.length; i++) {
      order[i] = claims.get(i).index();
    }
    return tryOrder(order);
  }

  /** Decodes the order, keeps it if it is the best so far; false if it has no room. */
  boolean tryOrder(int[] claims) {
    if (!decoder.decode(claims)) {
      return false;
    }
    late = decoder.late();
    attended = decoder.timetable().attended;
    flow = decoder.flow();
    if (better()) {
      best = new Value(late, attended, flow);
      System.arraycopy(claims, 0, bestOrder, 0, claims.length);
      listener.accept(new Report(System.nanoTime() - began, decoder.decoded(), best));
    }
    return true;
  }

  /** Time since the search began. */
  Duration elapsed() {
    return Duration.ofNanos(System.nanoTime() - began);
  }

  /** Whether any order tried had room for everything. */
  boolean found() {
    return best.late() != Long.MAX_VALUE;
  }

  /** Lateness of the order tried last. */
  long late() {
    return late;
  }

  /** Attended minutes of the order tried last. */
  long attended() {
    return attended;
  }

  /** Flow of the order tried last. */
  long flow() {
    return flow;
  }

  /** The value of the best order tried. */
  Value best() {
    return best;
  }

  /** The best order tried. */
  int[] bestOrder() {
    return bestOrder;
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
