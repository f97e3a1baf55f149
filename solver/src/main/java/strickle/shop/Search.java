package strickle.shop;

import ai.timefold.solver.core.api.solver.Solver;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import ai.timefold.solver.core.config.localsearch.LocalSearchPhaseConfig;
import ai.timefold.solver.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import ai.timefold.solver.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import ai.timefold.solver.core.config.score.director.ScoreDirectorFactoryConfig;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/** One search over the orders of a shop's claims: Timefold's local search moves the list. */
final class Search {

  /**
   * Late acceptance looks back so many steps: this factor times a power of the steps there will be,
   * fitted to what was best from a thousand schedules to a million, on projects and job shops.
   */
  private static final double LOOK_BACK_FACTOR = 0.0007;

  private static final double LOOK_BACK_POWER = 1.35;

  /** A shop that is not justified takes few moves over, and its look back is a thousandth. */
  private static final double STEPS_PER_LOOK_BACK = 1000;

  private static final int SHORTEST_LOOK_BACK = 2;
  private static final int LONGEST_LOOK_BACK = 20_000;

  /** A search soon runs so many times faster than its first few schedules. */
  private static final int WARMING_UP = 5;

  private final Tables tables;
  private final Trials trials;
  private final Budget budget;
  private final long seed;
  private final List<Schedule.Lot> present;

  /**
   * A search.
   *
   * @param present lots of another schedule to begin from besides the good orders; may be none
   */
  Search(
      Tables tables,
      Budget budget,
      long seed,
      List<Schedule.Lot> present,
      Consumer<Report> listener) {
    this.tables = tables;
    this.present = present;
    this.trials = new Trials(tables, budget.schedules().orElse(Long.MAX_VALUE), listener);
    this.budget = budget;
    this.seed = seed;
  }

  /**
   * Searches until the budget is used up or {@link #stop} is called.
   *
   * @return the best schedule found; nothing when no order has room for everything
   */
  Optional<Schedule> run() {
    Decoder decoder = trials.decoder();
    Present.tryAgain(tables, trials, present);
    new Starts(tables, decoder.claims()).orders().forEach(this::begin);
    boolean guided = tables.distances.tethered > 0 && !tables.distances.contradictory;
    if (decoder.claims().jobClaims > 1 && !trials.spent() && (trials.found() || guided)) {
      searchFrom(trials.bestOrder().clone());
    }
    if (!trials.found()) {
      return Optional.empty();
    }
    long schedules = trials.schedules();
    decoder.decode(trials.bestOrder());
    return Optional.of(Reader.read(tables, decoder, trials.best(), schedules));
  }

  /** Why {@link #run} has found nothing. */
  NoRoomException noRoom() {
    return new NoRoomException(trials.decoder().failedSettled());
  }

  private void begin(int[] order) {
    trials.tryOrder(order);
    trials.refine(order);
  }

  /** Ends the search soon; what has been found so far is kept. */
  void stop() {
    trials.stop();
  }

  private void searchFrom(int[] order) {
    List<Claim> claims = IntStream.range(0, order.length).mapToObj(Claim::new).toList();
    List<Claim> sequence = new ArrayList<>(order.length);
    Arrays.stream(order).forEach(index -> sequence.add(claims.get(index)));
    Solver<Priority> solver = SolverFactory.<Priority>create(config()).buildSolver();
    trials.whenSpent(solver::terminateEarly);
    solver.solve(new Priority(claims, new Sequence(sequence), trials));
  }

  private SolverConfig config() {
    return new SolverConfig()
        .withSolutionClass(Priority.class)
        .withEntityClasses(Sequence.class)
        .withScoreDirectorFactory(
            new ScoreDirectorFactoryConfig().withEasyScoreCalculatorClass(TrialScore.class))
        .withEnvironmentMode(EnvironmentMode.NO_ASSERT)
        .withRandomSeed(seed)
        .withTerminationConfig(new TerminationConfig().withSpentLimit(timeLeft()))
        .withPhases(localSearch());
  }

  /** Without a time limit the number of schedules ends the search, and a thousand days never. */
  private Duration timeLeft() {
    Duration most = budget.time().orElse(Duration.ofDays(1000));
    // Timefold takes whole milliseconds only.
    return Duration.ofMillis(Math.max(1, most.minus(trials.elapsed()).toMillis()));
  }

  private LocalSearchPhaseConfig localSearch() {
    return new LocalSearchPhaseConfig()
        .withMoveSelectorConfig(
            new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(Rearrangements.class))
        .withAcceptorConfig(new LocalSearchAcceptorConfig().withLateAcceptanceSize(lookBack()))
        .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1));
  }

  private int lookBack() {
    long steps = schedulesLeft() / trials.schedulesPerStep();
    double look =
        trials.schedulesPerStep() == 1
            ? steps / STEPS_PER_LOOK_BACK
            : LOOK_BACK_FACTOR * Math.pow((double) steps, LOOK_BACK_POWER);
    return (int) Math.max(SHORTEST_LOOK_BACK, Math.min(LONGEST_LOOK_BACK, look));
  }

  /** As many as are allowed, or as there is likely to be time for. */
  private long schedulesLeft() {
    if (budget.schedules().isPresent()) {
      return budget.schedules().getAsLong() - trials.schedules();
    }
    double each = (double) trials.elapsed().toNanos() / trials.schedules();
    return (long) (timeLeft().toNanos() / each * WARMING_UP);
  }
}
