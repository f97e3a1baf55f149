package strickle.paper;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import strickle.book.Book;
import strickle.book.Material;
import strickle.book.Piece;
import strickle.plan.FormHold;
import strickle.plan.Lot;
import strickle.plan.Plan;
import strickle.plan.Run;
import strickle.plan.Task;

/** What the ids of a plan stand for, in the words of its book. */
final class Names {

  private final Book book;
  private final Map<String, Lot> lots = new HashMap<>();
  private final Map<String, Run> runs = new HashMap<>();

  Names(Book book, Plan plan) {
    this.book = book;
    for (Lot lot : plan.lots()) {
      lots.put(lot.id(), lot);
      lot.runs().forEach(run -> runs.put(run.id(), run));
    }
  }

  Lot lot(String id) {
    return lots.get(id);
  }

  Run run(String id) {
    return runs.get(id);
  }

  /** The runs a task is about: all of its lot for a pour, else its own. */
  List<Run> runs(Task task) {
    return task.run().map(id -> List.of(runs.get(id))).orElseGet(() -> lots.get(task.lot()).runs());
  }

  /** "2 x doorstop, brick", counted in pieces. */
  String pieces(Run run) {
    Piece piece = book.piece(run.piece());
    return run.castings() * book.mould(piece.mould()).cavities() + " x " + piece.name();
  }

  /** "2 castings in bar form 1 and 2". */
  String castings(Run run) {
    String forms = String.join(", ", run.forms().stream().map(this::form).toList());
    String castings = run.castings() + (run.castings() == 1 ? " casting" : " castings");
    return forms.isEmpty() ? castings : castings + " in " + forms;
  }

  private String form(FormHold hold) {
    String name = book.form(hold.form()).name();
    Stream<String> units = hold.units().stream().map(String::valueOf);
    return book.form(hold.form()).count() == 1
        ? name
        : name + " " + String.join(" and ", units.toList());
  }

  /** "pour brick", "demould", or the step in the maker's own words. */
  String what(Task task) {
    return switch (task.kind()) {
      case POUR -> "pour " + mix(lot(task.lot()));
      case DEMOULD -> "demould";
      case STEP -> step(task);
    };
  }

  private String step(Task task) {
    Piece piece = book.piece(runs(task).get(0).piece());
    return piece.route().get(task.step().orElseThrow() - 1).step();
  }

  String mix(Lot lot) {
    return book.mix(lot.mix()).name();
  }

  /** The name of a weighed material, water included. */
  String material(String id) {
    return Material.WATER.equals(id) ? id : book.material(id).name();
  }

  /** Grams as the scale shows them: "1937.3". */
  static String grams(double grams) {
    return String.format(Locale.ROOT, "%.1f", grams);
  }

  /** The same text with a capital at its beginning. */
  static String capital(String text) {
    int first = text.isEmpty() ? 0 : text.offsetByCodePoints(0, 1);
    return text.substring(0, first).toUpperCase(Locale.ROOT) + text.substring(first);
  }
}
