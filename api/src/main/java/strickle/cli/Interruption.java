package strickle.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Lets Ctrl-C end the planning and not the program: while armed, the first one asks the planning to
 * stop, waits until the best plan so far is printed, and ends the program with the exit code that
 * the command gives itself.
 */
final class Interruption {

  /** After this long without an end the program is cut off, as it would be without us. */
  private static final long PATIENCE_SECONDS = 30;

  private static final long BREATH_MILLIS = 200;

  private final CountDownLatch finished = new CountDownLatch(1);
  private volatile int code;
  private volatile boolean came;
  private Thread hook;

  /** From now on Ctrl-C calls {@code stop}. */
  void arm(Runnable stop) {
    hook = new Thread(() -> interrupted(stop), "interruption");
    Runtime.getRuntime().addShutdownHook(hook);
  }

  /** From now on Ctrl-C ends the program at once, unless it came already. */
  void disarm() {
    if (came) {
      return;
    }
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException onItsWay) {
      // It came between the two lines above; the hook waits for finished() all the same.
      came = true;
    }
  }

  /** Whether Ctrl-C came while armed. */
  boolean came() {
    return came;
  }

  /** Everything is printed: a program that Ctrl-C has begun to end may end, with this code. */
  void finished(int exitCode) {
    code = exitCode;
    finished.countDown();
  }

  // Runs as a shutdown hook, where only halt() can still choose the exit code. Stops more than
  // once,
  // as a search that is just about to begin may not hear the first.
  private void interrupted(Runnable stop) {
    came = true;
    long deadline = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
    try {
      while (System.nanoTime() < deadline) {
        stop.run();
        if (finished.await(BREATH_MILLIS, TimeUnit.MILLISECONDS)) {
          Runtime.getRuntime().halt(code);
        }
      }
    } catch (InterruptedException cutOff) {
      Thread.currentThread().interrupt();
    }
  }
}
