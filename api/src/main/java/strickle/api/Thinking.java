package strickle.api;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import strickle.book.Fault;
import strickle.book.Faulty;

/** Answers that take a second or more: few at a time, so that everybody else is answered too. */
final class Thinking {

  private static final int AT_ONCE = 1;
  private static final long LONGEST_WAIT_SECONDS = 30;

  private final Semaphore places = new Semaphore(AT_ONCE, true);

  /**
   * Thinks, once it is its turn.
   *
   * @throws Refusal when that takes too long
   */
  <T> T of(Supplier<T> work) {
    enter();
    try {
      return told(work);
    } finally {
      places.release();
    }
  }

  private void enter() {
    try {
      if (!places.tryAcquire(LONGEST_WAIT_SECONDS, TimeUnit.SECONDS)) {
        String detail = "Too many ask at once for what takes a while. Ask again in a moment.";
        throw new Refusal(Problem.of(Status.TOO_OFTEN, "Too many ask", detail));
      }
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(ended);
    }
  }

  /** Tells faults of what was asked with their place in the body. */
  static <T> T told(Supplier<T> work) {
    try {
      return work.get();
    } catch (Faulty faulty) {
      List<Fault> faults = new ArrayList<>();
      for (Fault fault : faulty.faults()) {
        faults.add(fault.path().startsWith(".") ? fault.under("$") : fault);
      }
      throw new Faulty(faults);
    }
  }
}
