package strickle.bench;

import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;

/** A run in the model. It may stay empty: of a piece there are as many as it has castings. */
final class ExactWeekRun {

  /** Its number among all runs, from 0. */
  final int number;

  final ExactWeekKind kind;
  final Literal present;
  final IntVar castings;

  /** The lot it leads, if it is the first of the lot by number. */
  final ExactWeekTask pour;

  /** When the lot it is in is poured, and when its set begins. */
  final LinearArgument pourStart;

  final LinearArgument setStart;

  /** Its demould and its steps. */
  final List<ExactWeekTask> stages = new ArrayList<>();

  private final String name;

  ExactWeekRun(Place place, Literal present, IntVar castings, ExactWeekTask pour, Poured poured) {
    this.number = place.number();
    this.kind = place.kind();
    this.name = place.name();
    this.present = present;
    this.castings = castings;
    this.pour = pour;
    this.pourStart = poured.start();
    this.setStart = poured.set();
  }

  /**
   * Which run it is.
   *
   * @param number among all runs, from 0
   * @param kind its piece
   * @param turn among the runs of its piece, in order of the pour, from 0
   */
  record Place(int number, ExactWeekKind kind, int turn) {

    String name() {
      return kind.piece().id() + " " + turn;
    }
  }

  /** When a run's lot is poured, and when its set begins. */
  record Poured(LinearArgument start, LinearArgument set) {}

  String name() {
    return name;
  }

  /** When the run is ready, if it is present. */
  LinearExpr ready() {
    return LinearExpr.affine(stages.getLast().end, 1, kind.tailMinutes());
  }
}
