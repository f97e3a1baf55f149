package strickle.plan.audit;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import strickle.book.Line;
import strickle.book.Order;

/**
 * Serves all orders in the order of due, larger weight, id: first from stock, then from runs as
 * they become ready. As orders come one after another, an order has all it needs as soon as what
 * has arrived covers its own lines and those of all orders before it: on average or, when the plan
 * was made with a cover, in so many of a hundred cases.
 */
final class Serving {

  private static final double TOLERANCE_PIECES = 1e-9;

  private static final Comparator<Order> SERVED_FIRST =
      Comparator.comparing(Order::due)
          .thenComparing(Order::weight, Comparator.reverseOrder())
          .thenComparing(Order::id);

  /** A run ready at a minute. */
  private record Arrival(Course course, long ready) {

    String piece() {
      return course.piece().id();
    }
  }

  private final Facts facts;
  private final Map<String, List<Arrival>> arrivals;
  private final Map<String, Long> asked = new HashMap<>();

  private Serving(Facts facts) {
    this.facts = facts;
    arrivals =
        facts.courses().stream()
            .flatMap(course -> arrival(facts, course))
            .sorted(Comparator.comparingLong(Arrival::ready))
            .collect(Collectors.groupingBy(Arrival::piece));
  }

  /** Every order of the book as it is served, first served first. */
  static List<Service> of(Facts facts) {
    Serving serving = new Serving(facts);
    return facts.book().orders().stream().sorted(SERVED_FIRST).map(serving::serve).toList();
  }

  private static Stream<Arrival> arrival(Facts facts, Course course) {
    return facts.ready(course).stream().mapToObj(ready -> new Arrival(course, ready));
  }

  private Service serve(Order order) {
    List<OptionalLong> lines = order.lines().stream().map(this::covered).toList();
    if (lines.stream().anyMatch(OptionalLong::isEmpty)) {
      return Service.never(order);
    }
    long ready = lines.stream().mapToLong(OptionalLong::getAsLong).max().orElse(facts.from());
    return Service.of(order, ready, facts.time().minute(order.due()));
  }

  /** The minute from which this line and all asked for before it are there. */
  private OptionalLong covered(Line line) {
    long askedSoFar = asked.merge(line.piece(), (long) line.quantity(), Long::sum);
    long missing = askedSoFar - facts.book().piece(line.piece()).onHand();
    if (missing <= 0) {
      return OptionalLong.of(facts.from());
    }
    List<Arrival> runs = arrivals.getOrDefault(line.piece(), List.of());
    OptionalDouble cover = facts.plan().coverPercent();
    OptionalInt last =
        cover.isPresent()
            ? sure(runs, missing, cover.getAsDouble())
            : average(runs, (double) missing);
    return last.stream().mapToLong(at -> Math.max(facts.from(), runs.get(at).ready())).findFirst();
  }

  /** The first run with which so many good pieces are there on average. */
  private static OptionalInt average(List<Arrival> runs, double pieces) {
    double missing = pieces;
    for (int at = 0; at < runs.size(); at++) {
      missing -= runs.get(at).course().goodPieces();
      if (missing <= TOLERANCE_PIECES) {
        return OptionalInt.of(at);
      }
    }
    return OptionalInt.empty();
  }

  /** The first run with which they are there in so many of a hundred cases, found by halving. */
  private static OptionalInt sure(List<Arrival> runs, long pieces, double percent) {
    long[] left = runs.stream().mapToLong(run -> run.course().piecesLeft()).toArray();
    Arrays.parallelPrefix(left, Long::sum);
    int low = 0;
    int high = runs.size();
    while (low < high) {
      int middle = (low + high) / 2;
      Course one = runs.get(middle).course();
      boolean enough = Sure.covers(one.piece(), 1, left[middle], pieces, percent);
      low = enough ? low : middle + 1;
      high = enough ? middle : high;
    }
    return low < runs.size() ? OptionalInt.of(low) : OptionalInt.empty();
  }
}
