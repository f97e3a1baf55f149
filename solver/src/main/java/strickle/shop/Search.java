package strickle.shop;

import ai.timefold.solver.core.api.solver.Solver;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import ai.timefold.solver.core.config.localsearch.LocalSearchPhaseConfig;
import ai.timefold.solver.core.config.localsearch.decider.acceptor.AcceptorType;
import ai.timefold.solver.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import ai.timefold.solver.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import ai.timefold.solver.core.config.score.director.ScoreDirectorFactoryConfig;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Consumer;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;

/**
 * One search over the orders of a shop's claims. Timefold's local search moves the list, each time
 * to a better order; which orders are tried on the way there is a {@link Walk}'s.
 */
final class Search {

  /** A search soon runs so many times faster than its first few schedules. */
  private static final int WARMING_UP = 5;

  private final Tables tables;
  private final Trials trials;
  private final Budget budget;
  private final long seed;
  private final List<Schedule.Lot> present;

  /** The good orders it began with. */
  private final List<int[]> begun = new ArrayList<>();

  /**
   * A search.
   *
   * @param present lots of another schedule to begin from besides the good orders; may be none
   * @param near lots of a schedule to stay near to, rather than to save minutes and flow; or none
   */
  Search(
      Tables tables,
      Budget budget,
      long seed,
      List<Schedule.Lot> present,
      List<Schedule.Lot> near,
      Consumer<Report> listener) {
    this.tables = tables;
    this.present = present;
    Optional<Nearness> nearness =
        near.isEmpty() ? Optional.empty() : Optional.of(new Nearness(tables, near));
    this.trials = new Trials(tables, budget, nearness, listener);
    this.budget = budget;
    this.seed = seed;
  }

  /**
   * Searches until the budget is used up, {@link #stop} is called or every order has been tried.
   *
   * @return the best schedule found; nothing when no order has room for everything
   */
  Optional<Schedule> run() {
    Decoder decoder = trials.decoder();
    Present.tryAgain(tables, trials, present);
    new Starts(tables, decoder.claims()).orders().forEach(this::begin);
    boolean guided = tables.distances.tethered > 0 && !tables.distances.contradictory;
    if (decoder.claims().jobClaims > 1 && !trials.spent() && (trials.found() || guided)) {
      goOn();
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
    begun.add(order);
  }

  /** Ends the search soon; what has been found so far is kept. */
  void stop() {
    trials.stop();
  }

  /**
   * Looks at what the good orders have left: nothing where all orders are alike, each order where
   * they are few, and else as many as there is time for.
   */
  private void goOn() {
    AllOrders all = new AllOrders(trials.decoder().claims());
    boolean byOrderAlone = tables.distances.tethered == 0 && !trials.justifies();
    if (byOrderAlone && all.areAlike()) {
      return;
    }
    if (byOrderAlone && all.areWithin(trials.left())) {
      all.tryWith(trials);
    } else {
      searchFrom(trials.bestOrder().clone());
    }
  }

  private void searchFrom(int[] order) {
    List<Claim> claims = IntStream.range(0, order.length).mapToObj(Claim::new).toList();
    List<Claim> sequence = new ArrayList<>(order.length);
    Arrays.stream(order).forEach(index -> sequence.add(claims.get(index)));
    Solver<Priority> solver = SolverFactory.<Priority>create(config()).buildSolver();
    trials.whenSpent(solver::terminateEarly);
    solver.solve(new Priority(claims, new Sequence(sequence), trials, walk()));
  }

  private Walk walk() {
    RandomGenerator random = new Random(seed);
    Neighbours neighbours = new Neighbours(tables, trials.decoder().claims());
    if (!trials.justifies()) {
      return new LateAcceptance(trials, neighbours, LateAcceptance.QUICK, random);
    }
    boolean machines = tables.shop.resources().stream().allMatch(one -> one.capacity() == 1);
    return machines
        ? new LateAcceptance(trials, neighbours, LateAcceptance.STEADY, random)
        : new Population(trials, neighbours, begun, stepsLeft(), random);
  }

  private static SolverConfig config() {
    return new SolverConfig()
        .withSolutionClass(Priority.class)
        .withEntityClasses(Sequence.class)
        .withScoreDirectorFactory(
            new ScoreDirectorFactoryConfig().withEasyScoreCalculatorClass(TrialScore.class))
        .withEnvironmentMode(EnvironmentMode.NO_ASSERT)
        .withPhases(localSearch());
  }

  private static LocalSearchPhaseConfig localSearch() {
    return new LocalSearchPhaseConfig()
        .withMoveSelectorConfig(
            new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(Rearrangements.class))
        .withAcceptorConfig(
            new LocalSearchAcceptorConfig()
                .withAcceptorTypeList(List.of(AcceptorType.HILL_CLIMBING)))
        .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1));
  }

  /** As many as are allowed, or as there is likely to be time for. */
  private long stepsLeft() {
    long schedules = budget.schedules().orElseGet(this::schedulesInTime) - trials.schedules();
    return Math.max(1, schedules / trials.schedulesPerStep());
  }

  private long schedulesInTime() {
    double each = (double) trials.elapsed().toNanos() / Math.max(1, trials.schedules());
    return (long) (budget.time().orElseThrow().toNanos() / each * WARMING_UP);
  }
}
