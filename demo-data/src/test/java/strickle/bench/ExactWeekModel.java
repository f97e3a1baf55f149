package strickle.bench;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import strickle.book.Book;
import strickle.shop.Calendar;

/**
 * The model of a week: runs, lots, tasks and waits as formats.md has them. A lot is named after the
 * run in it with the lowest number, so no lot can be written in two ways; the runs of a piece are
 * numbered in the order they are poured, and those not needed come last.
 */
final class ExactWeekModel {

  final CpModel model = new CpModel();
  final Book book;
  final ExactWeekTime time;
  final int horizon;
  final List<Calendar> calendars;
  final List<ExactWeekKind> kinds;
  final ExactWeekAges ages;
  final List<ExactWeekRun> runs = new ArrayList<>();
  final ExactWeekLots lots;
  private final List<ExactWeekReach> reaches;
  private final ExactWeekOrders orders;
  private final LinearExpr flow;

  /**
   * The model of all plans whose runs are all ready by the horizon.
   *
   * @param horizon minutes from the beginning of the plan
   */
  ExactWeekModel(Book book, ExactWeekTime time, int horizon) {
    this.book = book;
    this.time = time;
    this.horizon = horizon;
    calendars = book.people().stream().map(person -> time.calendar(person, horizon)).toList();
    ages = new ExactWeekAges(book, time, horizon);
    kinds = ExactWeekBook.kinds(book);
    reaches = kinds.stream().map(kind -> new ExactWeekReach(kind, calendars, ages)).toList();
    lots = new ExactWeekLots(this);
    lots.places().forEach(place -> runs.add(run(place)));
    lots.tie();
    for (ExactWeekKind kind : kinds) {
      addTurns(runsOf(kind));
    }
    new ExactWeekWaits(this).add();
    new ExactWeekRoom(this).add();
    orders = new ExactWeekOrders(this);
    flow = ExactWeekFlow.of(this);
  }

  /** Weight x started late hours of all orders, the weights made whole. */
  LinearExpr late() {
    return orders.late();
  }

  /** By what the weights of the orders were multiplied. */
  long weightScale() {
    return orders.weightScale();
  }

  /** Attended minutes, all of them. */
  LinearExpr attended() {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    for (ExactWeekRun run : runs) {
      sum.addTerm(run.pour.present, run.kind.lotMinutes());
      sum.addTerm(run.present, run.kind.setupMinutes());
      int each = run.kind.stages().stream().mapToInt(ExactWeekKind.Stage::eachMinutes).sum();
      sum.addTerm(run.castings, run.kind.fillMinutes() + each);
    }
    return sum.build();
  }

  /** Castings x minutes until they are ready, all of them. */
  LinearExpr flow() {
    return flow;
  }

  /** The runs of a piece, in the order they are poured. */
  List<ExactWeekRun> runsOf(ExactWeekKind kind) {
    return runs.stream().filter(run -> run.kind.equals(kind)).toList();
  }

  Optional<ExactWeekKind> kindOf(String piece) {
    return kinds.stream().filter(kind -> kind.piece().id().equals(piece)).findFirst();
  }

  /** Between which minutes the tasks of a piece can lie. */
  ExactWeekReach reach(ExactWeekKind kind) {
    return reaches.get(kinds.indexOf(kind));
  }

  private ExactWeekRun run(ExactWeekRun.Place place) {
    ExactWeekKind kind = place.kind();
    int certain = Math.ceilDiv(kind.castings(), kind.mostInRun());
    Literal present =
        place.turn() < certain ? model.trueLiteral() : model.newBoolVar(place.name() + " is");
    int least = place.turn() < certain ? 1 : 0;
    IntVar castings = model.newIntVar(least, kind.mostInRun(), place.name() + " castings");
    ExactWeekTask pour = lots.pour(place);
    ExactWeekRun run = new ExactWeekRun(place, present, castings, pour, lots.poured(place, pour));
    for (int stage = 0; stage < kind.stages().size(); stage++) {
      run.stages.add(stage(run, stage));
    }
    return run;
  }

  private ExactWeekTask stage(ExactWeekRun run, int number) {
    ExactWeekKind.Stage stage = run.kind.stages().get(number);
    ExactWeekReach reach = reach(run.kind);
    ExactWeekTask.Minutes minutes =
        new ExactWeekTask.Minutes(
            LinearExpr.affine(run.castings, stage.eachMinutes(), stage.setupMinutes()),
            stage.minutes(1),
            stage.minutes(run.kind.mostInRun()));
    ExactWeekTask.Room room =
        new ExactWeekTask.Room(
            stage.people(), true, reach.earliestStart[number + 1], reach.latestEnd[number + 1]);
    String name = run.name() + "/" + number;
    return new ExactWeekTask(model, calendars, name, run.present, minutes, room);
  }

  /** The castings of a piece, spread over its runs. */
  private void addTurns(List<ExactWeekRun> turns) {
    ExactWeekKind kind = turns.getFirst().kind;
    LinearExpr[] castings =
        turns.stream().map(run -> LinearExpr.term(run.castings, 1)).toArray(LinearExpr[]::new);
    model.addEquality(LinearExpr.sum(castings), kind.castings());
    for (ExactWeekRun run : turns) {
      model.addLessOrEqual(run.castings, LinearExpr.term(run.present, kind.mostInRun()));
      model.addGreaterOrEqual(run.castings, run.present);
    }
    IntStream.range(1, turns.size()).forEach(i -> addNext(turns.get(i - 1), turns.get(i)));
  }

  private void addNext(ExactWeekRun one, ExactWeekRun next) {
    model.addImplication(next.present, one.present);
    boolean apart =
        one.kind.formsEach().entrySet().stream()
            .anyMatch(form -> 2 * form.getValue() > units(form.getKey()));
    model
        .addGreaterOrEqual(next.pourStart, apart ? one.stages.getFirst().end : one.pourStart)
        .onlyEnforceIf(next.present);
  }

  int units(String form) {
    return book.forms().stream().filter(f -> f.id().equals(form)).findFirst().orElseThrow().count();
  }
}
