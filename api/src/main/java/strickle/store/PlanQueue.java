package strickle.store;

import com.github.kagkarlsson.scheduler.Scheduler;
import com.github.kagkarlsson.scheduler.SchedulerName;
import com.github.kagkarlsson.scheduler.task.helper.OneTimeTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Lays out the plans that are asked for, one at a time in each process. The queue lies in the
 * database, so that a plan outlives the process that took it: when that ends in order it puts the
 * plan back, and when it is killed another process, or the next one, takes the plan again.
 */
public final class PlanQueue implements AutoCloseable {

  private static final Logger LOG = LoggerFactory.getLogger(PlanQueue.class);

  private static final String TASK = "plan";
  private static final String BETWEEN = "/";

  /** Missed beats after which a process is taken to be dead; the library allows no fewer. */
  private static final int MISSED_BEATS = 4;

  private static final Duration SWEEP = Duration.ofSeconds(15);
  private static final Duration AGAIN = Duration.ofSeconds(1);
  private static final Duration LAST_WAIT = Duration.ofSeconds(4);

  private final Database database;
  private final Clock clock;
  private final PlanWork work;
  private final OneTimeTask<Void> task;
  private final Scheduler scheduler;
  private final ScheduledExecutorService ticks;
  private final Set<PlanAttempt> running = ConcurrentHashMap.newKeySet();
  private final AtomicBoolean closed = new AtomicBoolean();
  private Optional<ScheduledFuture<?>> sweeping = Optional.empty();

  /**
   * How often a queue looks and shows itself.
   *
   * @param look how often it looks for plans that others have asked for
   * @param beat how often it shows that it is alive; silent for four beats it is taken to be dead
   */
  public record Pace(Duration look, Duration beat) {

    /** Every second and every five. */
    public static final Pace USUAL = new Pace(Duration.ofSeconds(1), Duration.ofSeconds(5));
  }

  private PlanQueue(Database database, Clock clock, PlanWork work, Pace pace) {
    this.database = database;
    this.clock = clock;
    this.work = work;
    this.task =
        Tasks.oneTime(TASK)
            .onFailure((done, next) -> next.reschedule(done, Instant.now().plus(AGAIN)))
            .onDeadExecutionRevive()
            .execute((instance, context) -> layOut(place(instance.getId())));
    this.scheduler =
        Scheduler.create(database.source(), task)
            .threads(1)
            .schedulerName(new SchedulerName.Fixed(UUID.randomUUID().toString()))
            .pollUsingFetch(0, 1)
            .pollingInterval(pace.look())
            .heartbeatInterval(pace.beat())
            .missedHeartbeatsLimit(MISSED_BEATS)
            .shutdownMaxWait(LAST_WAIT)
            .build();
    this.ticks =
        Executors.newSingleThreadScheduledExecutor(
            Thread.ofPlatform().daemon().name("plan-ticks").factory());
  }

  /**
   * Starts to lay plans out.
   *
   * @param clock says when plans change
   * @param work how it is done
   */
  public static PlanQueue start(Database database, Clock clock, PlanWork work, Pace pace) {
    if (database.isOnesOwn()) {
      // Whoever was at a plan is gone for certain, so nobody need wait for silence.
      database.write(
          handle -> {
            RunTable.clearQueue(handle);
            return database;
          });
    }
    PlanQueue queue = new PlanQueue(database, clock, work, pace);
    queue.begin();
    return queue;
  }

  private void begin() {
    scheduler.start();
    sweep();
    long pause = SWEEP.toMillis();
    sweeping =
        Optional.of(ticks.scheduleWithFixedDelay(this::sweep, pause, pause, TimeUnit.MILLISECONDS));
  }

  /** Queues a plan that has been asked for; told twice it is queued once. */
  public void add(String studio, String plan) {
    try {
      scheduler.scheduleIfNotExists(task.instance(studio + BETWEEN + plan), Instant.now());
    } catch (RuntimeException trouble) {
      // Two at once: when the other's was laid out meanwhile, the library cannot see that it was.
      if (!Troubles.isThereAlready(trouble)) {
        throw Troubles.of(trouble);
      }
    }
    scheduler.triggerCheckForDueExecutions();
  }

  /** Whether it has been closed. */
  public boolean isClosed() {
    return closed.get();
  }

  // A process can be killed after a plan was written down and before it was queued.
  private void sweep() {
    try {
      database.read(RunTable::unfinished).forEach(place -> add(place.studio(), place.id()));
    } catch (RuntimeException trouble) {
      LOG.warn("the queue could not be looked through", trouble);
    }
  }

  private void layOut(RunTable.Place place) {
    PlanAttempt attempt = new PlanAttempt(database, clock, place, closed::get);
    running.add(attempt);
    try {
      attempt.run(work, ticks);
    } finally {
      running.remove(attempt);
    }
  }

  private static RunTable.Place place(String name) {
    int between = name.indexOf(BETWEEN);
    return new RunTable.Place(name.substring(0, between), name.substring(between + 1));
  }

  /** Ends soon: what is being laid out is put back to wait. */
  @Override
  public void close() {
    if (closed.getAndSet(true)) {
      return;
    }
    sweeping.ifPresent(regular -> regular.cancel(false));
    running.forEach(PlanAttempt::end);
    scheduler.stop();
    ticks.shutdownNow();
  }
}
