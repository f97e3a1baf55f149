package strickle.plan.audit;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import strickle.book.Line;
import strickle.book.Order;

/**
 * Serves all orders in the order of due, larger weight, id: first from stock, then from runs as
 * they become ready. As orders come one after another, an order has all it needs as soon as what
 * has arrived covers its own lines and those of all orders before it.
 */
final class Serving {

  private static final double TOLERANCE_PIECES = 1e-9;

  private static final Comparator<Order> SERVED_FIRST =
      Comparator.comparing(Order::due)
          .thenComparing(Order::weight, Comparator.reverseOrder())
          .thenComparing(Order::id);

  /** So many good pieces, ready at a minute. */
  private record Arrival(String piece, long ready, double goodPieces) {}

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
    return facts.ready(course).stream()
        .mapToObj(ready -> new Arrival(course.piece().id(), ready, course.goodPieces()));
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
    double missing = askedSoFar - facts.book().piece(line.piece()).onHand();
    long ready = facts.from();
    for (Arrival arrival : arrivals.getOrDefault(line.piece(), List.of())) {
      if (missing <= TOLERANCE_PIECES) {
        break;
      }
      missing -= arrival.goodPieces();
      ready = Math.max(ready, arrival.ready());
    }
    return missing <= TOLERANCE_PIECES ? OptionalLong.of(ready) : OptionalLong.empty();
  }
}
