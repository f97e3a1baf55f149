package strickle.plan.why;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strickle.book.Book;
import strickle.book.Order;
import strickle.book.Piece;
import strickle.plan.Cover;
import strickle.plan.Goods;
import strickle.plan.Needs;

/**
 * Which run's pieces go to which order: orders by due, larger weight, id; first from stock, then
 * from runs in the order they become ready. An order waits for as much as the plan's cover asks
 * for; whose pieces they are goes by what they bring on average, fractions carried. Lost pieces
 * serve nobody.
 */
final class Serving {

  private static final double TOLERANCE_PIECES = 1e-9;

  /**
   * How an order is served.
   *
   * @param order the order
   * @param ready the minute it has everything
   * @param last the run that brings what it has to wait for longest; empty when all is from stock
   * @param elders orders that are served before it and without which it would be sooner
   * @param first the minute it would have everything if it were served before them
   */
  record Service(Order order, int ready, Optional<Course> last, List<Order> elders, int first) {}

  private final Book book;
  private final Goods goods;
  private final Goods usual;
  private final Map<String, List<Course>> supplies = new HashMap<>();
  private final Map<String, Service> services = new HashMap<>();
  private final Map<String, Set<String>> servedBy = new HashMap<>();
  private final Map<String, Long> asked = new HashMap<>();
  private final Map<String, List<Order>> askers = new HashMap<>();

  private Serving(Floor floor) {
    book = floor.book();
    goods = new Goods(book, floor.cover());
    usual = new Goods(book, Cover.AVERAGE);
    floor.courses().stream()
        .filter(one -> of(one, usual) > 0)
        .sorted(Comparator.comparingInt(Course::ready))
        .forEach(
            one -> supplies.computeIfAbsent(one.piece().id(), id -> new ArrayList<>()).add(one));
    for (Order order : Needs.serving(book)) {
      services.put(order.id(), serve(order));
    }
  }

  static Serving of(Floor floor) {
    return new Serving(floor);
  }

  /** How an order of the book is served. */
  Service of(String order) {
    return services.get(order);
  }

  /** Ids of the orders that get pieces of a run, first served first. */
  List<String> servedBy(Course course) {
    return List.copyOf(servedBy.getOrDefault(course.run(), Set.of()));
  }

  /** The runs that an order gets pieces of, first ready first. */
  List<Course> runs(String order) {
    return supplies.values().stream()
        .flatMap(List::stream)
        .filter(run -> servedBy(run).contains(order))
        .sorted(Comparator.comparingInt(Course::ready).thenComparing(Course::run))
        .toList();
  }

  private Service serve(Order order) {
    Map<String, Long> own = new LinkedHashMap<>();
    order.lines().forEach(one -> own.merge(one.piece(), (long) one.quantity(), Long::sum));
    Set<Order> elders = new LinkedHashSet<>();
    Course last = null;
    int first = 0;
    for (Map.Entry<String, Long> wanted : own.entrySet()) {
      Piece piece = book.piece(wanted.getKey());
      long to = asked.merge(piece.id(), wanted.getValue(), Long::sum);
      Course brings = bring(order, piece, to - wanted.getValue(), to);
      int alone = covered(piece, wanted.getValue());
      if (brings != null && brings.ready() > alone) {
        elders.addAll(askers.getOrDefault(piece.id(), List.of()));
      }
      last = later(last, brings);
      first = Math.max(first, alone);
    }
    own.keySet().forEach(id -> askers.computeIfAbsent(id, one -> new ArrayList<>()).add(order));
    int ready = last == null ? 0 : last.ready();
    return new Service(order, ready, Optional.ofNullable(last), List.copyOf(elders), first);
  }

  private static Course later(Course one, Course other) {
    if (one == null || other == null) {
      return one == null ? other : one;
    }
    return other.ready() > one.ready() ? other : one;
  }

  /** The run that brings the last of the pieces asked for from one count to another. */
  private Course bring(Order order, Piece piece, long from, long to) {
    double low = from - piece.onHand();
    double needed = goods.needed(piece, to);
    Course last = null;
    double brought = 0;
    double sum = 0;
    for (Course course : supplies.getOrDefault(piece.id(), List.of())) {
      if (Goods.suffices(brought, needed)) {
        break;
      }
      brought += of(course, goods);
      sum += of(course, usual);
      if (sum > low + TOLERANCE_PIECES) {
        servedBy.computeIfAbsent(course.run(), run -> new LinkedHashSet<>()).add(order.id());
      }
      last = course;
    }
    return last;
  }

  /** The minute at which stock and runs have brought so many of a piece. */
  private int covered(Piece piece, long wanted) {
    double needed = goods.needed(piece, wanted);
    double brought = 0;
    int ready = 0;
    for (Course course : supplies.getOrDefault(piece.id(), List.of())) {
      if (Goods.suffices(brought, needed)) {
        break;
      }
      brought += of(course, goods);
      ready = Math.max(ready, course.ready());
    }
    return ready;
  }

  private static double of(Course course, Goods goods) {
    return goods.of(course.piece(), course.chain().castings(), course.scrapped());
  }
}
