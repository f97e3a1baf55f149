package strickle.api;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import strickle.json.Message;
import strickle.store.KeptPlan;
import strickle.store.PlanQueue;
import strickle.store.StudioStore;

/**
 * Tells what becomes of a plan while it is laid out, as server-sent events (HTML Living Standard,
 * 9.2): {@code progress} whenever something has changed, and {@code done} once it is over.
 */
final class PlanEvents {

  /** The media type of such a body. */
  static final String MEDIA_TYPE = "text/event-stream";

  private static final int MOST_LISTENERS = 200;
  private static final Duration LOOK = Duration.ofMillis(250);
  private static final Duration HEARTBEAT = Duration.ofSeconds(10);
  private static final String BEGIN = "retry: 2000\n\n";
  private static final String ALIVE = ": still here\n\n";

  private final PlanQueue queue;
  private final Semaphore listeners = new Semaphore(MOST_LISTENERS);

  /** Events of the plans of a queue. */
  PlanEvents(PlanQueue queue) {
    this.queue = queue;
  }

  /**
   * The events of a plan.
   *
   * @throws Refusal when there is no such plan, or too many listen already
   */
  Reply of(StudioStore studio, String id) {
    KeptPlan plan = studio.plans().find(id).orElseThrow(() -> Refusal.notThere("plan " + id));
    if (listeners.availablePermits() == 0) {
      String detail = "As many listen to plans as may. Close some, or ask for the plan's state.";
      throw new Refusal(Problem.of(Status.TOO_OFTEN, "Too many listen", detail));
    }
    return Reply.pouring(MEDIA_TYPE, out -> listen(studio, plan, out))
        .with("X-Accel-Buffering", "no");
  }

  private void listen(StudioStore studio, KeptPlan plan, OutputStream out) throws IOException {
    listeners.acquireUninterruptibly();
    try {
      write(out, BEGIN);
      tell(studio, plan, out);
    } finally {
      listeners.release();
    }
  }

  private void tell(StudioStore studio, KeptPlan first, OutputStream out) throws IOException {
    Optional<KeptPlan> plan = Optional.of(first);
    String told = "";
    long at = System.nanoTime();
    while (plan.isPresent()) {
      String data = Message.line(plan.get());
      if (plan.get().isOver()) {
        write(out, "event: done\ndata: " + data + "\n\n");
        return;
      }
      if (!data.equals(told)) {
        write(out, "event: progress\ndata: " + data + "\n\n");
        told = data;
        at = System.nanoTime();
      } else if (System.nanoTime() - at > HEARTBEAT.toNanos()) {
        write(out, ALIVE);
        at = System.nanoTime();
      }
      plan = pause() ? studio.plans().find(first.id()) : Optional.empty();
    }
  }

  // A service that ends lets its listeners go; they ask again elsewhere or later.
  private boolean pause() {
    try {
      Thread.sleep(LOOK);
      return !queue.isClosed();
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  private static void write(OutputStream out, String text) throws IOException {
    out.write(text.getBytes(StandardCharsets.UTF_8));
    out.flush();
  }
}
