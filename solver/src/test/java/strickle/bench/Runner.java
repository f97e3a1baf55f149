package strickle.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import strickle.shop.Budget;
import strickle.shop.NoRoomException;
import strickle.shop.Scheduler;

/** Schedules problems side by side, each on one thread and from the same seed. */
final class Runner {

  private static final double NANOS = 1e9;

  private final int threads;
  private final long seed;

  /** Schedules on so many threads; what is found does not depend on how many. */
  Runner(int threads, long seed) {
    this.threads = threads;
    this.seed = seed;
  }

  /**
   * Schedules all problems.
   *
   * @param schedules how many schedules each search may generate
   * @param listener told of every result, in the order of the problems
   * @return the results in the same order
   */
  List<Result> run(List<Instance> instances, long schedules, Consumer<Result> listener) {
    List<Result> results = new ArrayList<>();
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      List<Future<Result>> searches =
          instances.stream().map(one -> pool.submit(() -> search(one, schedules))).toList();
      for (Future<Result> search : searches) {
        results.add(search.get());
        listener.accept(results.getLast());
      }
    } catch (ExecutionException failed) {
      Throwable cause = failed.getCause();
      String why = cause instanceof IllegalStateException ? cause.getMessage() : cause.toString();
      throw new IllegalStateException(instances.get(results.size()).name() + ": " + why, cause);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", stopped);
    } finally {
      pool.shutdownNow();
    }
    return results;
  }

  private Result search(Instance instance, long schedules) {
    long began = System.nanoTime();
    Budget budget = Budget.ofSchedules(schedules);
    long found = found(new Scheduler(instance.shop(), budget, seed, report -> {}));
    return new Result(instance, found, (System.nanoTime() - began) / NANOS);
  }

  private static long found(Scheduler scheduler) {
    try {
      return scheduler.run().value().late();
    } catch (NoRoomException none) {
      return Result.NONE;
    }
  }
}
