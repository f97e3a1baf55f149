package strickle.json;

import java.util.List;
import java.util.OptionalInt;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.plan.Plan;
import strickle.plan.Run;
import strickle.safety.Advice;
import strickle.safety.RouteSense;

/**
 * What {@code check} found out, as its JSON says it.
 *
 * @param book as it was given
 * @param canBePlanned whether there is no fault
 * @param pieces how many the book has; missing with faults, as are orders and castings
 * @param orders how many it has
 * @param castings how many a plan pours
 * @param faults everything that is wrong
 * @param advice what makes no sense in its routes, which refuses nothing
 * @param notJudged steps whose words are not known
 * @param readAsOtherWork steps that name a coat, a leaf or a glue but were not read as putting it
 *     on
 */
public record CheckAnswer(
    String book,
    boolean canBePlanned,
    OptionalInt pieces,
    OptionalInt orders,
    OptionalInt castings,
    List<Fault> faults,
    List<Advice> advice,
    List<String> notJudged,
    List<String> readAsOtherWork) {

  /** The word of its format. */
  public static final String FORMAT = "strickle-check/1";

  /** Of a book that can be planned. */
  public static CheckAnswer of(String given, Book book, Plan plan) {
    return new CheckAnswer(
        given,
        true,
        OptionalInt.of(book.pieces().size()),
        OptionalInt.of(book.orders().size()),
        OptionalInt.of(castings(plan)),
        List.of(),
        RouteSense.of(book),
        RouteSense.unread(book),
        RouteSense.passedOver(book));
  }

  /** Of one that cannot. */
  public static CheckAnswer of(String given, List<Fault> faults) {
    OptionalInt none = OptionalInt.empty();
    return new CheckAnswer(given, false, none, none, none, faults, List.of(), List.of(), List.of());
  }

  /** How many castings a plan pours. */
  public static int castings(Plan plan) {
    return plan.lots().stream().flatMap(lot -> lot.runs().stream()).mapToInt(Run::castings).sum();
  }
}
