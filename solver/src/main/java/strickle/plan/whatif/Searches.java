package strickle.plan.whatif;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntConsumer;
import strickle.book.Book;
import strickle.plan.Effort;
import strickle.plan.Plan;
import strickle.plan.PlanRequest;
import strickle.plan.Planning;

/**
 * Plans several books, each from a plan to begin with: two at a time when the effort is a number of
 * schedules, one after the other when it is a time, as such a search uses two processors itself.
 * Can be stopped from another thread; then all end soon, also those that have not begun.
 */
final class Searches {

  private static final int AT_A_TIME = 2;

  private final Plan present;
  private final Effort all;
  private final long seed;
  private final IntConsumer listener;
  private final List<Planning> plannings = new ArrayList<>();
  private boolean stopped;
  private int done;

  /**
   * Makes ready to search.
   *
   * @param present where plans begin, how sure they have to be and whether they wait for materials
   *     is as in this one
   * @param all the effort that shares are taken of
   * @param listener told how many searches are over
   */
  Searches(Plan present, Effort all, long seed, IntConsumer listener) {
    this.present = present;
    this.all = all;
    this.seed = seed;
    this.listener = listener;
  }

  /**
   * One search.
   *
   * @param book what is planned
   * @param begin the plan whose order comes first
   */
  record Search(Book book, Plan begin) {}

  /**
   * The plan that each search finds.
   *
   * @param parts each gets one of so many parts of the whole effort
   */
  List<Plan> run(List<Search> searches, int parts) {
    List<Callable<Plan>> calls = new ArrayList<>();
    searches.forEach(search -> calls.add(() -> plan(search, share(parts))));
    boolean timed = all.time().isPresent();
    try (ExecutorService pool = Executors.newFixedThreadPool(timed ? 1 : AT_A_TIME)) {
      List<Plan> found = new ArrayList<>();
      for (Future<Plan> call : pool.invokeAll(calls)) {
        found.add(result(call));
      }
      return found;
    } catch (InterruptedException cutOff) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("cut off while trying changes", cutOff);
    }
  }

  /** Ends all searches soon. */
  synchronized void stop() {
    stopped = true;
    plannings.forEach(Planning::stop);
  }

  private Effort share(int parts) {
    return all.time()
        .map(time -> Effort.ofTime(atLeast(time.dividedBy(parts))))
        .orElseGet(() -> Effort.ofSchedules(Math.max(1, all.schedules().orElse(1) / parts)));
  }

  private static Duration atLeast(Duration time) {
    return time.isZero() ? Duration.ofMillis(1) : time;
  }

  private Plan plan(Search search, Effort effort) {
    PlanRequest request =
        new PlanRequest(present.from(), effort, seed)
            .covering(present.coverPercent())
            .waitingAs(present)
            .startingFrom(search.begin());
    Planning planning = Planning.of(search.book(), request, progress -> {});
    begin(planning);
    Plan plan = planning.run();
    tell(planning);
    return plan;
  }

  private synchronized void begin(Planning planning) {
    plannings.add(planning);
    if (stopped) {
      planning.stop();
    }
  }

  private synchronized void tell(Planning planning) {
    plannings.remove(planning);
    done++;
    listener.accept(done);
  }

  private static Plan result(Future<Plan> search) throws InterruptedException {
    try {
      return search.get();
    } catch (ExecutionException failed) {
      switch (failed.getCause()) {
        case RuntimeException thrown -> throw thrown;
        case Error thrown -> throw thrown;
        default -> throw new IllegalStateException(failed.getCause());
      }
    }
  }
}
