package strickle.store;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.function.Consumer;
import strickle.plan.Progress;

/** Goes on until it is stopped. */
final class HeldWork extends RealWork {

  final List<Long> seeds = new ArrayList<>();
  int atOnce;
  int mostAtOnce;

  @Override
  public Running begin(PlanJob job, Consumer<Progress> listener) {
    Running real = super.begin(job, listener);
    CountDownLatch stopped = new CountDownLatch(1);
    return new Running() {
      @Override
      public Outcome run() {
        entered(job.asked().seed());
        try {
          stopped.await();
          return real.run();
        } catch (InterruptedException ended) {
          throw new IllegalStateException(ended);
        } finally {
          left();
        }
      }

      @Override
      public void stop() {
        stopped.countDown();
        real.stop();
      }
    };
  }

  private synchronized void entered(long seed) {
    seeds.add(seed);
    atOnce++;
    mostAtOnce = Math.max(mostAtOnce, atOnce);
  }

  private synchronized void left() {
    atOnce--;
  }
}
