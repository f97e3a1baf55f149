package strickle.cli;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import strickle.book.Book;
import strickle.book.Piece;
import strickle.plan.Lot;
import strickle.plan.Plan;
import strickle.plan.Run;
import strickle.plan.Task;

/** A plan beside its book, with names for its ids. */
final class PlanView {

  private final Book book;
  private final Plan plan;
  private final Map<String, Lot> lots = new HashMap<>();
  private final Map<String, Run> runs = new HashMap<>();

  /** A valid plan of this book. */
  PlanView(Book book, Plan plan) {
    this.book = book;
    this.plan = plan;
    for (Lot lot : plan.lots()) {
      lots.put(lot.id(), lot);
      lot.runs().forEach(run -> runs.put(run.id(), run));
    }
  }

  Book book() {
    return book;
  }

  Plan plan() {
    return plan;
  }

  /** The lot with this id. */
  Lot lot(String id) {
    return lots.get(id);
  }

  /** The runs a task is about: all of its lot for a pour, else its own. */
  List<Run> runs(Task task) {
    return task.run()
        .map(run -> List.of(runs.get(run)))
        .orElseGet(() -> lots.get(task.lot()).runs());
  }

  /** All runs of the plan. */
  Stream<Run> runs() {
    return plan.lots().stream().flatMap(lot -> lot.runs().stream());
  }

  /** The pieces of a run in words: "8 x tealight cup". */
  String pieces(Run run) {
    Piece piece = book.piece(run.piece());
    return run.castings() * book.mould(piece.mould()).cavities() + " x " + piece.name();
  }

  /** The name of a weighed material, water included. */
  String material(String id) {
    return strickle.book.Material.WATER.equals(id) ? id : book.material(id).name();
  }
}
