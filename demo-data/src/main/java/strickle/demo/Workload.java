package strickle.demo;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import strickle.book.Form;
import strickle.book.FormUse;
import strickle.book.Line;
import strickle.book.Mould;
import strickle.book.Person;
import strickle.book.Piece;
import strickle.book.Step;
import strickle.book.WaitKind;

/**
 * Guesses when orders can be ready if they are worked off one after the other: first the people and
 * the forms have to get through the work so far, then comes the order's longest route. It is no
 * plan, only good enough to set due dates that are neither idle nor absurd.
 */
final class Workload {

  private static final double HOURS_A_WEEK = 168;

  /** Share of the open hours that is used, as tasks seldom fill a window to its end. */
  private static final double USED = 0.75;

  /** How much longer than at 20 degrees Celsius a set or cure usually takes. */
  private static final double COOL = 1.2;

  /** Attended minutes of a casting that its mixing and washing up comes to, in a shared lot. */
  private static final int SHARED_MINUTES = 10;

  private final Map<String, Piece> pieces;
  private final Map<String, Mould> moulds;
  private final Map<String, Integer> units;
  private final double minutesAWeek;
  private final double hoursUntilSomebodyComes;
  private final Map<String, Double> weeksOfForm = new HashMap<>();
  private double minutes;

  Workload(List<Person> people, List<Form> forms, List<Mould> moulds, List<Piece> pieces) {
    this.pieces = pieces.stream().collect(Collectors.toMap(Piece::id, p -> p));
    this.moulds = moulds.stream().collect(Collectors.toMap(Mould::id, m -> m));
    units = forms.stream().collect(Collectors.toMap(Form::id, Form::count));
    minutesAWeek = OpenHours.weeklyMinutes(people) * USED;
    hoursUntilSomebodyComes = HOURS_A_WEEK / OpenHours.weeklyDays(people) / 2;
  }

  /** Takes an order's lines on, after all before; hours from the start until it may be ready. */
  double hoursUntilReady(List<Line> lines) {
    double weeks = 0;
    double longestRoute = 0;
    for (Line line : lines) {
      Piece piece = pieces.get(line.piece());
      weeks = Math.max(weeks, takeOn(piece, line.quantity()));
      longestRoute = Math.max(longestRoute, routeHours(piece));
    }
    return weeks * HOURS_A_WEEK + longestRoute;
  }

  private double takeOn(Piece piece, int quantity) {
    Mould mould = moulds.get(piece.mould());
    double castings = quantity / (mould.cavities() * piece.goodPercent() / 100);
    minutes += castings * minutesOf(piece, mould);
    double weeks = minutes / minutesAWeek;
    double weeksHeld = (mould.setHours() * COOL + hoursUntilSomebodyComes) / HOURS_A_WEEK;
    for (FormUse use : mould.forms()) {
      double more = castings * use.count() * weeksHeld / units.get(use.form());
      weeks = Math.max(weeks, weeksOfForm.merge(use.form(), more, Double::sum));
    }
    return weeks;
  }

  private static double minutesOf(Piece piece, Mould mould) {
    double route = 0;
    for (Step step : piece.route()) {
      route += step.setupMinutes() / 2.0 + mould.cavities() * step.minutesEach();
    }
    int filling = mould.prepMinutes() + mould.pourMinutes() + mould.demouldMinutes();
    return SHARED_MINUTES + filling + route;
  }

  private double routeHours(Piece piece) {
    double hours = moulds.get(piece.mould()).setHours() * COOL + piece.finalDryHours();
    for (Step step : piece.route()) {
      double longer = step.after().kind() == WaitKind.CURE ? COOL : 1;
      hours += step.after().hours() * longer + hoursUntilSomebodyComes;
    }
    return hours + 2 * hoursUntilSomebodyComes;
  }
}
