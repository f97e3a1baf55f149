package strickle.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Piece;
import strickle.mix.Recipe;
import strickle.shop.Schedule;
import strickle.shop.Scheduler;
import strickle.shop.Shop;

/**
 * Finds what can never be made because of its mass or its most-waits. A most-wait is tried out: one
 * casting is laid out in an empty studio, with all the opening hours of the year to come.
 */
final class Feasibility {

  /** What rounding may add to a mass without anybody having to weigh it. */
  static final double TOLERANCE_GRAMS = 1e-6;

  private static final int YEAR_MINUTES = 366 * 24 * 60;
  private static final int HOUR = 60;

  private final Book book;
  private final StudioTime time;
  private final List<Fault> faults = new ArrayList<>();

  private Feasibility(Book book, StudioTime time) {
    this.book = book;
    this.time = time;
  }

  /** Every piece that can never be made, from minute 0 of {@code time} on. */
  static List<Fault> faults(Book book, StudioTime time) {
    Feasibility feasibility = new Feasibility(book, time);
    feasibility.masses();
    feasibility.waits();
    return feasibility.faults;
  }

  private void masses() {
    Map<String, Recipe> recipes = StudioShop.recipes(book);
    double limit = book.studio().batchLimitGrams();
    for (int i = 0; i < book.pieces().size(); i++) {
      double grams = StudioShop.gramsEach(book, book.pieces().get(i), recipes);
      if (grams > limit + TOLERANCE_GRAMS) {
        faults.add(
            new Fault(
                "$.pieces[" + i + "].mould",
                Math.round(grams) + " g of wet mix for one casting",
                "at most "
                    + Math.round(limit)
                    + " g, the batch limit; raise $.studio.batchLimitGrams or take a smaller mould"));
      }
    }
  }

  private void waits() {
    StudioShop all = Compiler.oneOfEach(book, time, YEAR_MINUTES);
    Map<String, Fault> found = new HashMap<>();
    for (int i = 0; i < all.pieces().size(); i++) {
      Shop alone = Limits.only(all.shop(), i);
      if (Scheduler.first(alone).isEmpty()) {
        for (Fault fault : missed(alone, i)) {
          if (found.putIfAbsent(fault.path(), fault) == null) {
            faults.add(fault);
          }
        }
      }
    }
  }

  /** The most-waits that stand in the way: one alone if it is to blame alone, else all of them. */
  private List<Fault> missed(Shop alone, int kind) {
    int activities = alone.kinds().get(kind).chain().size();
    for (int i = 1; i < activities; i++) {
      int only = i;
      Optional<Schedule> without = Scheduler.first(Limits.without(alone, kind, at -> at == only));
      if (without.isPresent() && hasLimit(alone, kind, i)) {
        return List.of(fault(alone, kind, i, without.get()));
      }
    }
    Optional<Schedule> without = Scheduler.first(Limits.without(alone, kind, at -> true));
    if (without.isEmpty()) {
      return List.of(noHours(kind));
    }
    List<Fault> all = new ArrayList<>();
    for (int i = 1; i < activities; i++) {
      if (hasLimit(alone, kind, i)) {
        all.add(fault(alone, kind, i, without.get()));
      }
    }
    return all;
  }

  private Fault fault(Shop alone, int kind, int activity, Schedule without) {
    Schedule.Lot lot = without.lots().get(0);
    List<Schedule.Placed> rest = lot.runs().get(0).rest();
    Piece piece = book.pieces().get(kind);
    int from =
        activity == 1
            ? lot.first().end() - book.mix(piece.mix()).washMinutes()
            : rest.get(activity - 2).end();
    int gap = rest.get(activity - 1).start() - from;
    int atMost = limit(alone, kind, activity).orElse(0);
    return new Fault(
        path(kind, activity),
        hours(atMost) + " h, which no opening hours can meet for " + piece.id(),
        "about "
            + hours((gap + HOUR - 1) / HOUR * HOUR)
            + " h with the hours as they are, or hours closer together");
  }

  private Fault noHours(int kind) {
    return new Fault(
        "$.pieces[" + kind + "].route",
        "no opening hours in the coming year that are long enough for every task",
        "somebody who may do each step and whose hours come again");
  }

  private String path(int kind, int activity) {
    Piece piece = book.pieces().get(kind);
    if (activity == 1) {
      int mould = book.moulds().indexOf(book.mould(piece.mould()));
      return "$.moulds[" + mould + "].setAtMostHours";
    }
    return "$.pieces[" + kind + "].route[" + (activity - 2) + "].after.atMostHours";
  }

  private static boolean hasLimit(Shop shop, int kind, int activity) {
    return limit(shop, kind, activity).isPresent();
  }

  private static OptionalInt limit(Shop shop, int kind, int activity) {
    return shop.kinds().get(kind).chain().get(activity).before().atMostMinutes();
  }

  private static String hours(int minutes) {
    return minutes % HOUR == 0
        ? String.valueOf(minutes / HOUR)
        : String.valueOf(Math.round(minutes * 100.0 / HOUR) / 100.0);
  }
}
