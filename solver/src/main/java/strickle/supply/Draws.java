package strickle.supply;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import strickle.book.Book;
import strickle.book.Line;
import strickle.book.Material;
import strickle.book.Use;
import strickle.plan.Lot;
import strickle.plan.MaterialUse;
import strickle.plan.OrderOutcome;
import strickle.plan.Plan;
import strickle.plan.Run;
import strickle.plan.Task;
import strickle.plan.TaskKind;
import strickle.plan.Weighed;

/** Reads off a plan what is taken from stock, in the order of time. */
final class Draws {

  private final Book book;
  private final Map<String, Lot> lots = new HashMap<>();
  private final Map<String, Run> runs = new HashMap<>();
  private final List<Draw> draws = new ArrayList<>();

  private Draws(Book book, Plan plan) {
    this.book = book;
    for (Lot lot : plan.lots()) {
      lots.put(lot.id(), lot);
      lot.runs().forEach(run -> runs.put(run.id(), run));
    }
  }

  /** The draws of a plan of a book; those of one moment in the order of the plan. */
  static List<Draw> of(Book book, Plan plan) {
    Draws draws = new Draws(book, plan);
    plan.tasks().forEach(draws::take);
    plan.orders().forEach(draws::pack);
    draws.draws.sort(Comparator.comparing(draw -> draw.at().toInstant()));
    return List.copyOf(draws.draws);
  }

  private void take(Task task) {
    if (task.kind() == TaskKind.POUR) {
      pour(task, lots.get(task.lot()));
    } else if (task.kind() == TaskKind.STEP) {
      Run run = runs.get(task.run().orElseThrow());
      int pieces = run.castings() * book.mould(book.piece(run.piece()).mould()).cavities();
      MaterialUse.ofStep(book.piece(run.piece()), task.step().orElseThrow(), pieces)
          .forEach((material, quantity) -> add(material, quantity, task));
    }
  }

  private void pour(Task task, Lot lot) {
    for (Weighed weighed : lot.weighOut()) {
      if (!weighed.material().equals(Material.WATER)) {
        add(weighed.material(), weighed.grams(), task);
      }
    }
    for (Run run : lot.runs()) {
      for (Use use : book.mould(book.piece(run.piece()).mould()).consumes()) {
        add(use.material(), run.castings() * use.quantity().doubleValue(), task);
      }
    }
  }

  private void pack(OrderOutcome outcome) {
    for (Line line : book.order(outcome.order()).lines()) {
      MaterialUse.ofPacking(book.piece(line.piece()), line.quantity())
          .forEach(
              (material, quantity) ->
                  draws.add(new Draw(material, quantity, outcome.ready(), outcome.order())));
    }
  }

  private void add(String material, double quantity, Task task) {
    draws.add(new Draw(material, quantity, task.start(), task.id()));
  }
}
