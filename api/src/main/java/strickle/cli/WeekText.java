package strickle.cli;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import strickle.book.Person;
import strickle.cli.Table.Column;
import strickle.plan.PlanWait;
import strickle.plan.Run;
import strickle.plan.Spell;
import strickle.plan.Task;
import strickle.plan.Wait;

/** What everybody does, by day and person. */
final class WeekText {

  private final PlanView view;
  private final Map<String, Integer> place = new HashMap<>();
  private final Map<String, OffsetDateTime> setUntil = new HashMap<>();
  private final Table table =
      new Table(
          "    ",
          Column.left(11),
          Column.left(24),
          Column.left(28),
          Column.left(6),
          Column.left(19));

  private WeekText(PlanView view) {
    this.view = view;
    for (Person person : view.book().people()) {
      place.put(person.id(), place.size());
    }
    for (Wait wait : view.plan().waits()) {
      if (wait.kind() == PlanWait.SET) {
        setUntil.put(wait.run(), wait.to());
      }
    }
  }

  /** One spell of a task. */
  private record Stint(Task task, Spell spell, int part) {

    LocalDate date() {
      return spell.start().toLocalDate();
    }
  }

  /** The lines of it. */
  static List<String> lines(PlanView view) {
    WeekText text = new WeekText(view);
    Stint before = null;
    for (Stint stint : text.stints()) {
      text.headings(before, stint);
      text.row(stint);
      before = stint;
    }
    return text.table.lines();
  }

  private List<Stint> stints() {
    List<Stint> stints = new ArrayList<>();
    for (Task task : view.plan().tasks()) {
      for (int i = 0; i < task.spells().size(); i++) {
        stints.add(new Stint(task, task.spells().get(i), i + 1));
      }
    }
    stints.sort(
        Comparator.comparing(Stint::date)
            .thenComparing(stint -> place.get(stint.task().person()))
            .thenComparing(stint -> stint.spell().start()));
    return stints;
  }

  private void headings(Stint before, Stint stint) {
    boolean newDay = before == null || !before.date().equals(stint.date());
    if (newDay) {
      table.heading("");
      table.heading(Moments.day(stint.date()));
    }
    if (newDay || !before.task().person().equals(stint.task().person())) {
      table.heading("  " + view.book().person(stint.task().person()).name());
    }
  }

  private void row(Stint stint) {
    String time = Moments.spell(stint.spell().start(), stint.spell().end());
    String what = what(stint);
    for (Run run : view.runs(stint.task())) {
      table.row(time, what, view.pieces(run), run.id(), set(stint, run));
      time = "";
      what = "";
    }
  }

  private String what(Stint stint) {
    Task task = stint.task();
    String name =
        switch (task.kind()) {
          case POUR -> "pour " + view.book().mix(view.lot(task.lot()).mix()).name();
          case DEMOULD -> "demould";
          case STEP -> step(task);
        };
    int parts = task.spells().size();
    return parts == 1 ? name : name + " (part " + stint.part() + " of " + parts + ")";
  }

  private String step(Task task) {
    Run run = view.runs(task).get(0);
    return view.book().piece(run.piece()).route().get(task.step().orElseThrow() - 1).step();
  }

  private String set(Stint stint, Run run) {
    OffsetDateTime until = setUntil.get(run.id());
    boolean pour = stint.task().run().isEmpty();
    return pour && until != null ? "set until " + Moments.near(until, stint.spell().end()) : "";
  }
}
