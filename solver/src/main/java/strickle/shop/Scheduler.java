package strickle.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/**
 * Schedules shops. With a number of schedules it searches once, and the same shop, seed and number
 * give the same schedule; with a time it searches on two processors from two seeds, and the better
 * schedule wins.
 */
public final class Scheduler {

  private static final int SEARCHES = 2;

  private final List<Search> searches = new ArrayList<>();

  /**
   * Makes ready to schedule.
   *
   * @param shop what there is to schedule
   * @param budget how long to search
   * @param seed where the search's chance begins
   * @param listener told of every better schedule, from one thread at a time
   */
  public Scheduler(Shop shop, Budget budget, long seed, Consumer<Report> listener) {
    this(shop, budget, seed, List.of(), listener);
  }

  /**
   * Makes ready to schedule, beginning from another schedule.
   *
   * @param shop what there is to schedule
   * @param budget how long to search
   * @param seed where the search's chance begins
   * @param present lots of a schedule that may have been made for somewhat other jobs, resources or
   *     hours; kinds and workers are this shop's; where its order still leads to a good schedule,
   *     the search begins there
   * @param listener told of every better schedule, from one thread at a time
   */
  public Scheduler(
      Shop shop, Budget budget, long seed, List<Schedule.Lot> present, Consumer<Report> listener) {
    this(shop, budget, seed, present, List.of(), listener);
  }

  /**
   * Makes ready to schedule near to another schedule: of two that are equally late, the better one
   * is that with fewer activities elsewhere, and then with fewer minutes moved. The parts of a
   * {@link Value} after lateness count those.
   *
   * @param near lots of the schedule to stay near to, settled ones of this shop first and in the
   *     same order; none: minutes and flow count as ever
   */
  public Scheduler(
      Shop shop,
      Budget budget,
      long seed,
      List<Schedule.Lot> present,
      List<Schedule.Lot> near,
      Consumer<Report> listener) {
    Tables tables = new Tables(shop);
    int count = budget.schedules().isPresent() ? 1 : SEARCHES;
    Best best = new Best(listener);
    for (int i = 0; i < count; i++) {
      searches.add(
          new Search(tables, budget, seed + i, List.copyOf(present), List.copyOf(near), best));
    }
  }

  /**
   * The schedule of a shop in the order its kinds come, without any search: whether there is room
   * at all.
   *
   * @return empty when there is no room for everything within the horizon
   */
  public static Optional<Schedule> first(Shop shop) {
    Tables tables = new Tables(shop);
    Decoder decoder = new Decoder(tables);
    int[] order = IntStream.range(0, decoder.claims().count()).toArray();
    if (!decoder.decode(order)) {
      return Optional.empty();
    }
    Value value = new Value(decoder.late(), decoder.timetable().attended, decoder.flow());
    return Optional.of(Reader.read(tables, decoder, value, decoder.decoded()));
  }

  /**
   * Searches until the budget is used up, {@link #stop} is called or every order has been tried.
   *
   * @return the best schedule found
   * @throws NoRoomException when no order was found that has room for everything
   */
  public Schedule run() {
    List<CompletableFuture<Optional<Schedule>>> others =
        searches.stream().skip(1).map(other -> CompletableFuture.supplyAsync(other::run)).toList();
    Optional<Schedule> best = searches.get(0).run();
    for (CompletableFuture<Optional<Schedule>> other : others) {
      best = better(best, other.join());
    }
    return best.orElseThrow(searches.get(0)::noRoom);
  }

  private static Optional<Schedule> better(Optional<Schedule> one, Optional<Schedule> other) {
    if (one.isEmpty() || other.isEmpty()) {
      return one.or(() -> other);
    }
    long schedules = one.get().schedules() + other.get().schedules();
    Schedule best = other.get().value().compareTo(one.get().value()) < 0 ? other.get() : one.get();
    return Optional.of(new Schedule(best.value(), best.lots(), best.met(), schedules));
  }

  /** Ends the search soon; what has been found so far is kept. */
  public void stop() {
    searches.forEach(Search::stop);
  }

  /** Passes on only what is better than anything any of the searches has found. */
  private static final class Best implements Consumer<Report> {

    private final Consumer<Report> listener;
    private Value best = new Value(Long.MAX_VALUE, Long.MAX_VALUE, Long.MAX_VALUE);

    Best(Consumer<Report> listener) {
      this.listener = listener;
    }

    @Override
    public synchronized void accept(Report report) {
      if (report.best().compareTo(best) < 0) {
        best = report.best();
        listener.accept(report);
      }
    }
  }
}
