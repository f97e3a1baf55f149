package strickle.plan;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import strickle.book.Book;
import strickle.book.Line;
import strickle.book.Material;
import strickle.book.Piece;

/**
 * Finds tasks of a plan that begin before the materials they use can be there: the stock goes to
 * whatever begins first, and what goes beyond it has to be ordered.
 */
public final class EarlyUse {

  /** A scale shows tenths; less than half of one is rounding. */
  private static final double TOLERANCE = 0.05;

  private record Draw(OffsetDateTime at, boolean isTask, Map<String, Double> used) {}

  private final Book book;
  private final List<Draw> draws = new ArrayList<>();

  private EarlyUse(Book book) {
    this.book = book;
  }

  /**
   * The materials that tasks begin too early for, in the order in which they are first missing.
   *
   * @param plan one of this book
   * @param ordered from when on materials can be ordered
   * @return their ids; none when every task can begin as planned
   */
  public static Set<String> of(Book book, Plan plan, OffsetDateTime ordered) {
    EarlyUse early = new EarlyUse(book);
    early.read(plan);
    early.draws.sort(Comparator.comparing(draw -> draw.at().toInstant()));
    return early.missing(ordered);
  }

  private void read(Plan plan) {
    Map<String, Lot> lots = new HashMap<>();
    Map<String, Run> runs = new HashMap<>();
    plan.lots().forEach(lot -> lots.put(lot.id(), lot));
    plan.lots().forEach(lot -> lot.runs().forEach(run -> runs.put(run.id(), run)));
    for (Task task : plan.tasks()) {
      if (task.kind() == TaskKind.POUR) {
        lots.get(task.lot()).runs().forEach(run -> pour(task, run));
      } else if (task.kind() == TaskKind.STEP) {
        step(task, runs.get(task.run().orElseThrow()));
      }
    }
    for (OrderOutcome outcome : plan.orders()) {
      for (Line line : book.order(outcome.order()).lines()) {
        Piece piece = book.piece(line.piece());
        draws.add(new Draw(outcome.ready(), false, MaterialUse.ofPacking(piece, line.quantity())));
      }
    }
  }

  private void pour(Task task, Run run) {
    Piece piece = book.piece(run.piece());
    draws.add(new Draw(task.start(), true, MaterialUse.ofPour(book, piece, run.castings())));
  }

  private void step(Task task, Run run) {
    Piece piece = book.piece(run.piece());
    int pieces = Goods.pieces(book, run);
    Map<String, Double> used = MaterialUse.ofStep(piece, task.step().orElseThrow(), pieces);
    draws.add(new Draw(task.start(), true, used));
  }

  private Set<String> missing(OffsetDateTime ordered) {
    Map<String, Double> left = new HashMap<>();
    book.materials().forEach(one -> left.put(one.id(), one.onHand().doubleValue()));
    Set<String> missing = new LinkedHashSet<>();
    for (Draw draw : draws) {
      draw.used()
          .forEach(
              (id, quantity) -> {
                double after = left.merge(id, -quantity, Double::sum);
                if (draw.isTask() && after < -TOLERANCE && !isThere(id, draw.at(), ordered)) {
                  missing.add(id);
                }
              });
    }
    return missing;
  }

  private boolean isThere(String id, OffsetDateTime at, OffsetDateTime ordered) {
    Material material = book.material(id);
    OffsetDateTime there = Arrival.of(material, ordered, book.studio().timeZone());
    return !at.toInstant().isBefore(there.toInstant());
  }
}
