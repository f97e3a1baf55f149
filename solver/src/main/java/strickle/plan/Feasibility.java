package strickle.plan;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Piece;
import strickle.cure.Pace;
import strickle.cure.RoomPace;
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
  private static final int LONGEST_MINUTES = 100 * YEAR_MINUTES;
  private static final int HOUR = 60;

  private final Book book;
  private final StudioTime time;

  private Feasibility(Book book, StudioTime time) {
    this.book = book;
    this.time = time;
  }

  /** Every piece of which one casting alone is too heavy for a lot. */
  static List<Fault> masses(Book book) {
    Map<String, Recipe> recipes = StudioShop.recipes(book);
    double limit = book.studio().batchLimitGrams();
    List<Fault> faults = new ArrayList<>();
    for (int i = 0; i < book.pieces().size(); i++) {
      double grams = StudioShop.gramsEach(book, book.pieces().get(i), recipes);
      if (grams > limit + TOLERANCE_GRAMS) {
        faults.add(
            new Fault(
                "$.pieces[" + i + "].mould",
                grams(grams) + " g of wet mix for one casting",
                "at most "
                    + grams(limit)
                    + " g, the batch limit; raise $.studio.batchLimitGrams or take a smaller"
                    + " mould"));
      }
    }
    return faults;
  }

  /**
   * Every most-wait that no opening hours from minute 0 of {@code time} on can meet. The clock is
   * not changed for it: a most-wait that only the short night of the spring change can meet would
   * let one casting through in a year.
   *
   * @param book one that can be made but for that
   */
  static List<Fault> waits(Book book, StudioTime time) {
    return new Feasibility(book, time.withoutClockChanges()).waits();
  }

  /** Minutes that the waits of any one piece take together, at the room's slowest pace. */
  static int longestWaitMinutes(Book book) {
    double slowest =
        RoomPace.of(book.studio().climate(), book.studio().timeZone()).paces().stream()
            .mapToDouble(Pace::factor)
            .reduce(1, Math::min);
    double hours = 0;
    for (Piece piece : book.pieces()) {
      double steps = piece.route().stream().mapToDouble(step -> step.after().hours()).sum();
      hours = Math.max(hours, book.mould(piece.mould()).setHours() + steps);
    }
    return (int) Math.min(LONGEST_MINUTES, Math.ceil(hours * HOUR / slowest));
  }

  /** Grams as they are told: to the thousandth, without noughts at the end. */
  static String grams(double grams) {
    BigDecimal rounded = BigDecimal.valueOf(grams).setScale(3, RoundingMode.HALF_UP);
    return rounded.stripTrailingZeros().toPlainString();
  }

  private List<Fault> waits() {
    StudioShop all = Compiler.oneOfEach(book, time, YEAR_MINUTES + longestWaitMinutes(book));
    Map<String, Missed> found = new LinkedHashMap<>();
    for (int i = 0; i < all.pieces().size(); i++) {
      Shop alone = Limits.only(all.shop(), i);
      if (Scheduler.first(alone).isEmpty()) {
        // Of two pieces in one mould the one that needs the longer most-wait is told.
        missed(alone, i).forEach(one -> found.merge(one.path, one, Missed::longer));
      }
    }
    return found.values().stream().map(Missed::fault).toList();
  }

  /** A place in the book with what is wrong there, and the minutes that would be enough. */
  private record Missed(String path, int minutes, Fault fault) {

    Missed longer(Missed other) {
      return other.minutes > minutes ? other : this;
    }
  }

  /** The most-waits that stand in the way: one alone if it is to blame alone, else all of them. */
  private List<Missed> missed(Shop alone, int kind) {
    int activities = alone.kinds().get(kind).chain().size();
    for (int i = 1; i < activities; i++) {
      int only = i;
      if (hasLimit(alone, kind, i)) {
        Optional<Schedule> without = Scheduler.first(Limits.without(alone, kind, at -> at == only));
        if (without.isPresent()) {
          return List.of(missed(alone, kind, i, without.get()));
        }
      }
    }
    Optional<Schedule> without = Scheduler.first(Limits.without(alone, kind, at -> true));
    if (without.isEmpty()) {
      Fault none = noHours(kind);
      return List.of(new Missed(none.path(), 0, none));
    }
    return IntStream.range(1, activities)
        .filter(i -> hasLimit(alone, kind, i))
        .filter(i -> gap(kind, i, without.get()) > limit(alone, kind, i).getAsInt())
        .mapToObj(i -> missed(alone, kind, i, without.get()))
        .toList();
  }

  /** Minutes from the end of the activity before, or the beginning of the set, to an activity. */
  private int gap(int kind, int activity, Schedule schedule) {
    Schedule.Lot lot = schedule.lots().get(0);
    List<Schedule.Placed> rest = lot.runs().get(0).rest();
    int from =
        activity == 1
            ? lot.first().end() - book.mix(book.pieces().get(kind).mix()).washMinutes()
            : rest.get(activity - 2).end();
    return rest.get(activity - 1).start() - from;
  }

  private Missed missed(Shop alone, int kind, int activity, Schedule without) {
    int atMost = limit(alone, kind, activity).getAsInt();
    int enough = (gap(kind, activity, without) + HOUR - 1) / HOUR * HOUR;
    String path = path(kind, activity);
    String piece = book.pieces().get(kind).id();
    Fault fault =
        new Fault(
            path,
            hours(atMost) + " h, which no opening hours can meet for " + piece,
            "about " + hours(enough) + " h with the hours as they are, or hours closer together");
    return new Missed(path, enough, fault);
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
