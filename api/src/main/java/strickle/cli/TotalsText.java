package strickle.cli;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import strickle.book.Person;
import strickle.cli.Table.Column;
import strickle.plan.Lot;
import strickle.plan.Plan;
import strickle.plan.Run;
import strickle.plan.Task;
import strickle.plan.Totals;

/** The plan in a few figures. */
final class TotalsText {

  private TotalsText() {}

  /** The lines of it. */
  static List<String> lines(PlanView view) {
    Plan plan = view.plan();
    Totals totals = plan.totals();
    Table table = new Table("  ", Column.left(12), Column.left(80));
    table.row("handwork", Words.work(totals.attendedMinutes()) + each(view));
    table.row("poured", poured(view));
    plan.coverPercent().ifPresent(percent -> table.row("cover", cover(percent)));
    plan.orderingFrom().ifPresent(at -> table.row("materials", waiting(at)));
    table.row("last ready", Moments.full(totals.lastReady()));
    if (totals.lateOrders() > 0) {
      String hours = totals.weightedLateHours().stripTrailingZeros().toPlainString();
      table.row(
          "late hours", hours + ", each begun hour counted as often as its order's weight says");
    }
    table.row("at best", AtBest.of(view.book(), plan));
    return table.lines();
  }

  private static String waiting(OffsetDateTime at) {
    return "nothing begins before what is short in stock can be there, ordered from "
        + Moments.full(at)
        + " on";
  }

  private static String cover(double percent) {
    return Words.percent(percent)
        + ": of each piece castings enough for its orders in so many of 100 cases";
  }

  private static String each(PlanView view) {
    Map<String, Long> minutes =
        view.plan().tasks().stream()
            .collect(Collectors.groupingBy(Task::person, Collectors.summingLong(Task::minutes)));
    List<String> busy =
        view.book().people().stream()
            .filter(person -> minutes.containsKey(person.id()))
            .map((Person one) -> one.name() + " " + Words.work(minutes.get(one.id())))
            .toList();
    return busy.size() < 2 ? "" : ": " + String.join(", ", busy);
  }

  private static String poured(PlanView view) {
    List<Lot> lots = view.plan().lots();
    int castings = view.runs().mapToInt(Run::castings).sum();
    double grams = lots.stream().mapToDouble(Lot::wetGrams).sum();
    return Words.count(lots.size(), "lot")
        + ", "
        + Words.count(castings, "casting")
        + ", "
        + Words.kilograms(grams)
        + " kg of wet mix";
  }
}
