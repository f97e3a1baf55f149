package strickle.cli;

import java.util.ArrayList;
import java.util.List;
import strickle.cli.Table.Column;
import strickle.plan.FormHold;
import strickle.plan.Lot;
import strickle.plan.Run;
import strickle.plan.Task;
import strickle.plan.TaskKind;
import strickle.plan.Weighed;

/** What goes into each lot: the moulds to set up, the ballast, and what to weigh. */
final class LotText {

  private final PlanView view;
  private final List<String> lines = new ArrayList<>();

  private LotText(PlanView view) {
    this.view = view;
  }

  /** The lines of it, lots in the order they are poured. */
  static List<String> lines(PlanView view) {
    LotText text = new LotText(view);
    for (Task task : view.plan().tasks()) {
      if (task.kind() == TaskKind.POUR) {
        text.add(task, view.lot(task.lot()));
      }
    }
    return text.lines;
  }

  private void add(Task pour, Lot lot) {
    String when = Moments.full(pour.start());
    String who = view.book().person(pour.person()).name();
    String mix = view.book().mix(lot.mix()).name();
    lines.add("");
    lines.addAll(Lines.paragraph("  ", "    ", lot.id() + ": " + mix + ", " + when + ", " + who));
    lot.runs().forEach(this::add);
    weighOut(lot);
  }

  private void add(Run run) {
    StringBuilder text = new StringBuilder(run.id()).append(": ").append(view.pieces(run));
    text.append("; ").append(Words.count(run.castings(), "casting")).append(" in ");
    text.append(String.join(", ", run.forms().stream().map(this::form).toList()));
    lines.addAll(Lines.paragraph("    ", "      ", text.toString()));
    run.ballastGramsEach().ifPresent(this::ballast);
  }

  private void ballast(long grams) {
    lines.add(
        grams == 0
            ? "      the core needs no ballast"
            : "      lay " + grams + " g of ballast on the core of each casting");
  }

  private String form(FormHold hold) {
    String name = view.book().form(hold.form()).name();
    boolean onlyOne = view.book().form(hold.form()).count() == 1;
    String units = String.join(" and ", hold.units().stream().map(unit -> "" + unit).toList());
    return onlyOne ? name : name + " " + units;
  }

  private void weighOut(Lot lot) {
    Table table = new Table("        ", Column.left(40), Column.right(0, 12));
    for (Weighed weighed : lot.weighOut()) {
      table.row(view.material(weighed.material()), Words.grams(weighed.grams()) + " g");
    }
    table.row("wet mix, all together", Words.grams(lot.wetGrams()) + " g");
    lines.addAll(table.lines());
  }
}
