package strickle.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntUnaryOperator;
import strickle.book.Book;
import strickle.book.Line;
import strickle.book.Order;
import strickle.book.Piece;
import strickle.plan.Bounds.OrderBound;
import strickle.plan.bound.ShopBound;
import strickle.shop.Calendar;
import strickle.shop.Due;

/**
 * Works out what no plan can beat that goes on from one under way. Each run that is poured is
 * looked at as if nothing else were to be done, and what is still to be poured as if no run were
 * under way; an order cannot be ready before the sooner of all ways to put these together.
 */
final class RestBounding {

  private static final long HOUR = 60;
  private static final int NEVER = Integer.MAX_VALUE / 4;

  /** A run under way: how much it brings, and the minute before which it is not ready. */
  private record Coming(double goods, int ready) {}

  private final Standing standing;
  private final Book book;
  private final Owed owed;
  private final Goods goods;
  private final RestShop rest;
  private final TaskRules rules;
  private final ShopBound bound;
  private final StudioShop studio;
  private final Map<String, List<Coming>> coming = new HashMap<>();

  /** Bounds as things stand. */
  RestBounding(Standing standing) {
    this.standing = standing;
    this.book = standing.book();
    this.owed = Owed.of(standing);
    this.goods = standing.goods();
    int horizon = standing.now() + Planning.horizon(book, standing.time());
    this.rest = new RestShop(standing, owed, horizon);
    this.rules = new TaskRules(standing, rest.oneOfEach().shop().clocks());
    this.studio = rest.toPour();
    this.bound = new ShopBound(studio.shop());
    for (Lot lot : standing.present().lots()) {
      if (standing.isBegun(lot)) {
        lot.runs().forEach(run -> add(lot, standing.withLosses(run)));
      }
    }
    coming.values().forEach(runs -> runs.sort(Comparator.comparingInt(Coming::ready)));
  }

  private void add(Lot lot, Run run) {
    if (!Goods.isLost(book, run)) {
      coming
          .computeIfAbsent(run.piece(), piece -> new ArrayList<>())
          .add(new Coming(goods.of(run), ready(lot, run)));
    }
  }

  /** The minute before which a run under way is not ready, whoever does the rest of it. */
  private int ready(Lot lot, Run run) {
    Task before = standing.history(Tasks.pour(lot.id())).orElseThrow();
    int end = standing.end(before);
    Tasks planned = new Tasks(standing.present());
    for (String id : Tasks.needed(book, run)) {
      Task task = standing.history(id).or(() -> planned.get(id)).orElseThrow();
      if (task.isHistory()) {
        end = standing.end(task);
      } else {
        int start = Math.max(standing.now(), rules.over(task, ending(before, end)));
        end = soonest(task, start);
      }
      before = task;
    }
    int dry = Chains.minutesOfAtLeast(book.piece(run.piece()).finalDryHours());
    return end + Math.max(0, dry);
  }

  /** The task as if it ended at a minute. */
  private Task ending(Task task, int end) {
    Spell spell = new Spell(standing.time().at(end - 1), standing.time().at(end));
    return new Task(
        task.id(), task.kind(), task.lot(), task.run(), task.step(), task.person(), List.of(spell));
  }

  /** The first minute at which anybody could be done with it. */
  private int soonest(Task task, int start) {
    int minutes = rules.minutes(task);
    List<String> people = book.people().stream().map(one -> one.id()).toList();
    int soonest = NEVER;
    for (String person : rules.may(task)) {
      Calendar hours = rest.hours().get(people.indexOf(person));
      int worked = hours.worked(start) + minutes;
      if (worked <= hours.workingMinutes()) {
        soonest = Math.min(soonest, hours.endOf(worked));
      }
    }
    return soonest;
  }

  /** The bounds; those of the orders in the order of the book. */
  Bounds bounds() {
    Map<String, Integer> served = served();
    List<OrderBound> orders = new ArrayList<>();
    for (Order order : book.orders()) {
      Map<String, Long> own = new HashMap<>();
      order.lines().forEach(line -> own.merge(line.piece(), (long) line.quantity(), Long::sum));
      int alone = ready(own);
      int inTurn = Math.max(alone, served.get(order.id()));
      orders.add(new OrderBound(order.id(), standing.time().at(alone), standing.time().at(inTurn)));
    }
    return new Bounds(
        standing.time().at(standing.now()), orders, lateHours(served), attendedMinutes());
  }

  /** The fewest weighted late hours. */
  BigDecimal lateHours() {
    return lateHours(served());
  }

  private BigDecimal lateHours(Map<String, Integer> served) {
    BigDecimal each = BigDecimal.ZERO;
    for (Order order : book.orders()) {
      long late = Math.max(0, served.get(order.id()) - standing.time().minute(order.due()));
      each = each.add(order.weight().multiply(BigDecimal.valueOf(Math.ceilDiv(late, HOUR))));
    }
    BigDecimal scale = BigDecimal.valueOf(studio.weightScale());
    BigDecimal together = BigDecimal.valueOf(bound.late()).divide(scale);
    BigDecimal most = together.max(each).stripTrailingZeros();
    return most.scale() < 0 ? most.setScale(0) : most;
  }

  /** The least minutes: what is done, what is left to do for it, and the least for the rest. */
  long attendedMinutes() {
    long minutes = bound.attended();
    for (Task task : standing.present().tasks()) {
      if (standing.history(Tasks.pour(task.lot())).isPresent()) {
        minutes += standing.history(Tasks.idOf(task)).orElse(task).minutes();
      }
    }
    return minutes;
  }

  /** The minute before which each order cannot be ready with those served before it. */
  private Map<String, Integer> served() {
    Map<String, Integer> served = new HashMap<>();
    Map<String, Long> asked = new HashMap<>();
    for (Order order : Needs.serving(book)) {
      Map<String, Long> sums = new HashMap<>();
      for (Line line : order.lines()) {
        sums.put(line.piece(), asked.merge(line.piece(), (long) line.quantity(), Long::sum));
      }
      served.put(order.id(), ready(sums));
    }
    return served;
  }

  /** The minute before which so many pieces of each sort cannot be there. */
  private int ready(Map<String, Long> asked) {
    int ready = standing.minute(standing.present().from());
    List<Due.Need> toPour = new ArrayList<>();
    for (Map.Entry<String, Long> one : asked.entrySet()) {
      Piece piece = book.piece(one.getKey());
      double needed = goods.needed(piece, one.getValue());
      ready = Math.max(ready, ready(piece, needed));
      int fewest = owed.fewestToPour(piece, needed);
      if (fewest > 0) {
        toPour.add(new Due.Need(book.pieces().indexOf(piece), fewest));
      }
    }
    return toPour.isEmpty() ? ready : Math.max(ready, bound.ready(toPour));
  }

  /**
   * The same for one sort: the more castings are new, the later they are and the sooner what is
   * under way is enough; the best is where the two meet.
   */
  private int ready(Piece piece, double needed) {
    int kind = book.pieces().indexOf(piece);
    IntUnaryOperator poured =
        castings ->
            castings == 0 ? Integer.MIN_VALUE : bound.ready(List.of(new Due.Need(kind, castings)));
    int low = 0;
    int high = owed.toPour().get(piece.id());
    while (low < high) {
      int middle = (low + high) / 2;
      boolean met = poured.applyAsInt(middle) >= underWay(piece, needed, middle);
      low = met ? low : middle + 1;
      high = met ? middle : high;
    }
    int best = Math.max(poured.applyAsInt(low), underWay(piece, needed, low));
    return low == 0
        ? best
        : Math.min(best, Math.max(poured.applyAsInt(low - 1), underWay(piece, needed, low - 1)));
  }

  /** The minute at which runs under way bring what so many new castings do not. */
  private int underWay(Piece piece, double needed, int castings) {
    double missing = needed - castings * goods.each(piece);
    for (Coming one : coming.getOrDefault(piece.id(), List.of())) {
      if (goods.castings(piece, missing) == 0) {
        break;
      }
      missing -= one.goods();
      if (goods.castings(piece, missing) == 0) {
        return one.ready();
      }
    }
    return goods.castings(piece, missing) == 0 ? Integer.MIN_VALUE : NEVER;
  }
}
