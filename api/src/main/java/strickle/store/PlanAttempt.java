package strickle.store;

import java.math.BigDecimal;
import java.time.Clock;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.json.Message;
import strickle.json.PlanFile;
import strickle.plan.Progress;
import strickle.store.KeptPlan.State;
import strickle.store.RunTable.End;

/** One attempt to lay out one plan: takes it, notes how far it is, and what comes of it. */
final class PlanAttempt {

  private static final Logger LOG = LoggerFactory.getLogger(PlanAttempt.class);

  /** A book that ends the program is not tried for ever. */
  private static final int MOST_ATTEMPTS = 3;

  private static final long TICK_MILLIS = 400;
  private static final double NANOS_PER_TENTH = 1e8;
  private static final String BUG = "The program has a fault: it could not lay this plan out.";

  private final Database database;
  private final Clock clock;
  private final RunTable.Place place;
  private final BooleanSupplier closing;
  private final String name = UUID.randomUUID().toString();
  private final long begun = System.nanoTime();
  private final AtomicReference<Optional<Progress>> progress =
      new AtomicReference<>(Optional.empty());
  private final AtomicReference<Optional<PlanWork.Running>> running =
      new AtomicReference<>(Optional.empty());
  private volatile boolean stopAsked;
  private volatile boolean lost;

  /** An attempt that has not begun. */
  PlanAttempt(Database database, Clock clock, RunTable.Place place, BooleanSupplier closing) {
    this.database = database;
    this.clock = clock;
    this.place = place;
    this.closing = closing;
  }

  /**
   * Lays the plan out; does nothing when it is over or gone.
   *
   * @throws StoreTrouble when the database is in trouble: it has to be tried again
   * @throws IllegalStateException when it was put back: it has to be queued again
   */
  void run(PlanWork work, ScheduledExecutorService ticks) {
    OptionalInt attempts =
        database.write(handle -> RunTable.take(handle, place, name, clock.instant()));
    if (attempts.isEmpty()) {
      return;
    }
    if (attempts.getAsInt() > MOST_ATTEMPTS) {
      String often = "The program ended " + MOST_ATTEMPTS + " times while it laid this plan out.";
      end(End.failed(often + " The book may be too large for this machine."));
      return;
    }
    ScheduledFuture<?> ticking =
        ticks.scheduleWithFixedDelay(this::tick, TICK_MILLIS, TICK_MILLIS, TimeUnit.MILLISECONDS);
    try {
      settle(outcome(work));
    } finally {
      ticking.cancel(false);
    }
  }

  private End outcome(PlanWork work) {
    try {
      PlanJob job = new Plans(database, place.studio(), clock).job(place.id()).orElseThrow();
      PlanWork.Running begins = work.begin(job, better -> progress.set(Optional.of(better)));
      running.set(Optional.of(begins));
      if (isToEnd()) {
        begins.stop();
      }
      return ended(begins.run());
    } catch (Faulty faulty) {
      return End.failed(
          faulty.faults().stream().map(Fault::toString).collect(Collectors.joining("; ")));
    } catch (StoreTrouble trouble) {
      throw trouble;
    } catch (RuntimeException | OutOfMemoryError | StackOverflowError bug) {
      LOG.error("a plan could not be laid out", bug);
      return End.failed(BUG);
    }
  }

  private End ended(PlanWork.Outcome outcome) {
    return new End(
        stopAsked ? State.STOPPED : State.DONE,
        Optional.of(Message.write(outcome.plan().totals())),
        Optional.of(Message.write(new PlanTable.ThawedTasks(outcome.thawed()))),
        Optional.of(PlanFile.write(outcome.plan())),
        Optional.empty());
  }

  private void settle(End end) {
    if (closing.getAsBoolean() && !stopAsked) {
      database.write(
          handle -> {
            RunTable.putBack(handle, place, name, clock.instant());
            return end;
          });
      throw new IllegalStateException("put back, because the service ends");
    }
    end(end);
  }

  private void end(End end) {
    database.write(
        handle -> {
          RunTable.note(handle, place, name, noted());
          RunTable.end(handle, place, name, end, clock.instant());
          return end;
        });
  }

  private void tick() {
    try {
      Optional<Boolean> stop =
          database.write(handle -> RunTable.note(handle, place, name, noted()));
      lost = lost || stop.isEmpty();
      stopAsked = stopAsked || stop.orElse(false);
      if (isToEnd()) {
        end();
      }
    } catch (RuntimeException trouble) {
      LOG.warn("a plan's progress could not be noted", trouble);
    }
  }

  private boolean isToEnd() {
    return lost || stopAsked || closing.getAsBoolean();
  }

  private Optional<String> noted() {
    return progress
        .get()
        .map(
            best ->
                new PlanProgress(
                    BigDecimal.valueOf(
                        Math.round((System.nanoTime() - begun) / NANOS_PER_TENTH), 1),
                    best.schedules(),
                    best.weightedLateHours(),
                    best.attendedMinutes()))
        .map(Message::write);
  }

  /** Ends the search soon. */
  void end() {
    running.get().ifPresent(PlanWork.Running::stop);
  }
}
