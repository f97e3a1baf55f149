package strickle.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import strickle.book.Book;

/**
 * Reads routes for sense: what is sealed too soon, laid on a wet coat, painted damp, or glued too
 * late. It advises; a route it finds fault with can be planned all the same. The hours below which
 * something counts as fresh are common practice, no source.
 */
public final class RouteSense {

  /** A piece this short out of the mould, or out of water, counts as damp; hours. */
  static final double DAMP_HOURS = 48;

  /** A coat touched sooner than this may still be wet; hours. */
  static final double WET_COAT_HOURS = 2;

  private RouteSense() {}

  /** What makes no sense in the routes of a book, piece by piece in their order. */
  public static List<Advice> of(Book book) {
    List<Advice> advice = new ArrayList<>();
    for (Course course : Course.of(book)) {
      advice.addAll(SealRule.of(course));
      advice.addAll(DampRule.of(course));
      advice.addAll(WetCoatRule.of(course));
      advice.addAll(GlueRule.of(course));
    }
    return advice;
  }

  /** The steps of a book that were not judged, as none of their words is known; each once. */
  public static List<String> unread(Book book) {
    return steps(book, doing -> doing.acts().isEmpty() && !doing.passesOver());
  }

  /**
   * The steps of a book that name a coat, a leaf or a glue and were read as something else, such as
   * "pack and seal the carton"; each once.
   */
  public static List<String> passedOver(Book book) {
    return steps(book, Doing::passesOver);
  }

  private static List<String> steps(Book book, Predicate<Doing> which) {
    return Course.of(book).stream()
        .flatMap(course -> course.doings().stream())
        .filter(which)
        .map(doing -> doing.step().step())
        .distinct()
        .toList();
  }

  /** Hours in words: "4 h", "1.5 h". */
  static String hours(double hours) {
    return hours == Math.rint(hours)
        ? String.format(Locale.ROOT, "%.0f h", hours)
        : String.format(Locale.ROOT, "%.1f h", hours);
  }
}
