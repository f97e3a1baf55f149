package strickle.shop;

import ai.timefold.solver.core.api.solver.Solver;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.heuristic.selector.move.composite.UnionMoveSelectorConfig;
import ai.timefold.solver.core.config.heuristic.selector.move.generic.list.ListChangeMoveSelectorConfig;
import ai.timefold.solver.core.config.heuristic.selector.move.generic.list.ListSwapMoveSelectorConfig;
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
import java.util.function.Consumer;
import java.util.stream.IntStream;

/** One search over the orders of a shop's claims: Timefold's local search moves the list. */
final class Search {

  /** How many steps late acceptance looks back. */
  private static final int LATE_ACCEPTANCE = 400;

  private final Tables tables;
  private final Decoder decoder;
  private final Watch watch;
  private final Budget budget;
  private final long seed;
  private Solver<Priority> solver;
  private boolean stopped;

  Search(Tables tables, Budget budget, long seed, Consumer<Report> listener) {
    this.tables = tables;
    this.decoder = new Decoder(tables);
    this.watch = new Watch(decoder, listener);
    this.budget = budget;
    this.seed = seed;
  }

  /**
   * Searches until the budget is used up or {@link #stop} is called.
   *
   * @return the best schedule found
   * @throws NoRoomException when no order has room for everything within the horizon
   */
  Schedule run() {
    for (int[] order : new Starts(tables, decoder.claims()).orders()) {
      if (spent() < budget.schedules().orElse(Long.MAX_VALUE)) {
        watch.tryOrder(order);
      }
    }
    if (!watch.found()) {
      throw new NoRoomException(decoder.failedSettled());
    }
    if (decoder.claims().jobClaims > 1 && spent() < budget.schedules().orElse(Long.MAX_VALUE)) {
      searchFrom(watch.bestOrder().clone());
    }
    long schedules = decoder.decoded();
    decoder.decode(watch.bestOrder());
    return Reader.read(tables, decoder, watch.best(), schedules);
  }

  /** Ends the search soon; what has been found so far is kept. */
  synchronized void stop() {
    stopped = true;
    if (solver != null) {
      solver.terminateEarly();
    }
  }

  private synchronized Solver<Priority> begin() {
    SolverFactory<Priority> factory = SolverFactory.create(config());
    solver = factory.buildSolver();
    return solver;
  }

  private void searchFrom(int[] order) {
    List<Claim> claims = IntStream.range(0, order.length).mapToObj(Claim::new).toList();
    List<Claim> sequence = new ArrayList<>(order.length);
    Arrays.stream(order).forEach(index -> sequence.add(claims.get(index)));
    Solver<Priority> mine = begin();
    if (!stopped) {
      mine.solve(new Priority(claims, new Sequence(sequence), watch));
    }
  }

  private long spent() {
    return decoder.decoded();
  }

  private SolverConfig config() {
    return new SolverConfig()
        .withSolutionClass(Priority.class)
        .withEntityClasses(Sequence.class)
        .withScoreDirectorFactory(
            new ScoreDirectorFactoryConfig().withEasyScoreCalculatorClass(TrialScore.class))
        .withEnvironmentMode(EnvironmentMode.NO_ASSERT)
        .withRandomSeed(seed)
        .withTerminationConfig(termination())
        .withPhases(localSearch());
  }

  private TerminationConfig termination() {
    TerminationConfig config = new TerminationConfig();
    budget.schedules().ifPresent(most -> config.setScoreCalculationCountLimit(most - spent()));
    budget.time().ifPresent(time -> config.setSpentLimit(rest(time)));
    return config;
  }

  private Duration rest(Duration time) {
    // Timefold takes whole milliseconds only.
    return Duration.ofMillis(Math.max(1, time.minus(watch.elapsed()).toMillis()));
  }

  private static LocalSearchPhaseConfig localSearch() {
    return new LocalSearchPhaseConfig()
        .withMoveSelectorConfig(
            new UnionMoveSelectorConfig()
                .withMoveSelectors(
                    new ListChangeMoveSelectorConfig(), new ListSwapMoveSelectorConfig()))
        .withAcceptorConfig(new LocalSearchAcceptorConfig().withLateAcceptanceSize(LATE_ACCEPTANCE))
        .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1));
  }
}
