package strickle.paper;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import strickle.book.Book;
import strickle.plan.Plan;
import strickle.plan.PlanWait;
import strickle.plan.Ready;
import strickle.plan.Run;
import strickle.plan.Task;
import strickle.plan.TaskKind;
import strickle.plan.Wait;
import strickle.safety.Caution;
import strickle.safety.RoomAssumption;
import strickle.safety.RoomDay;
import strickle.safety.RoomDays;
import strickle.safety.Shown;

/** The sheet of one person on one day. */
final class SheetPage {

  private static final int FEW = 4;

  private final Book book;
  private final Plan plan;
  private final LocalDate date;
  private final List<Stint> stints;
  private final Markup body;
  private final Names names;
  private final Times times;
  private final Map<String, Wait> sets = new HashMap<>();

  /**
   * A sheet.
   *
   * @param stints what the person does that day; empty when nobody does anything
   * @param body where it is written
   */
  SheetPage(Book book, Plan plan, LocalDate date, List<Stint> stints, Markup body) {
    this.book = book;
    this.plan = plan;
    this.date = date;
    this.stints = stints;
    this.body = body;
    this.names = new Names(book, plan);
    this.times = new Times(book.studio().timeZone());
    plan.waits().stream()
        .filter(wait -> wait.kind() == PlanWait.SET)
        .forEach(wait -> sets.put(wait.run(), wait));
  }

  /**
   * Writes it.
   *
   * @param first whether it is the first of the document
   * @param cautions what to be careful of in the document, for its first sheet
   */
  void write(boolean first, List<Shown> cautions) {
    body.open("div", first ? "sheet first" : "sheet");
    heading();
    care(cautions);
    room();
    tasks();
    cards();
    ready();
    body.close();
  }

  private void heading() {
    String who = stints.isEmpty() ? "" : book.person(stints.get(0).person()).name();
    String foot =
        book.studio().name() + " · " + Times.day(date) + (who.isEmpty() ? "" : " · " + who);
    body.leaf("div", "foot", foot);
    body.leaf("div", "day", Times.day(date));
    if (!who.isEmpty()) {
      body.leaf("div", "who", who);
    }
    body.leaf("div", "studio", book.studio().name() + ", times in " + book.studio().timeZone());
  }

  private void care(List<Shown> cautions) {
    if (cautions.isEmpty()) {
      return;
    }
    body.open("div", "care").leaf("p", "strong", "Take care");
    for (Shown shown : cautions) {
      Caution caution = shown.caution();
      String where = " (" + few(shown.where()) + ")";
      body.leaf("p", "small", Names.capital(caution.brief()) + where + ".");
    }
    body.leaf("p", "small", Caution.FOLLOW).close();
  }

  private static String few(List<String> where) {
    int more = where.size() - FEW;
    String first = String.join("; ", where.stream().limit(FEW).toList());
    return more > 0 ? first + " and " + more + " more" : first;
  }

  private void room() {
    for (RoomDay day : RoomDays.of(book, plan, RoomAssumption.usual())) {
      if (day.from().toLocalDate().equals(date)) {
        body.leaf("p", "note", RoomLine.of(day));
      }
    }
  }

  private void tasks() {
    if (stints.isEmpty()) {
      body.leaf("div", "part", "Tasks").leaf("p", "note", "Nobody has anything to do.");
    } else {
      table("Tasks", "tasks", stints, this::task);
    }
  }

  // The first row stays with the heading; the others may go to the next page.
  private <T> void table(String heading, String style, List<T> rows, Consumer<T> row) {
    body.open("div", "keep").leaf("div", "part", heading).open("table", style);
    row.accept(rows.get(0));
    body.close().close();
    if (rows.size() > 1) {
      body.open("table", style);
      rows.stream().skip(1).forEach(row);
      body.close();
    }
  }

  private void task(Stint stint) {
    Task task = stint.task();
    body.open("tr", "task");
    if (task.done()) {
      body.leaf("td", "done", "done");
    } else {
      body.tick();
    }
    body.leaf("td", "time", times.spell(stint.spell()));
    body.open("td", "what");
    body.leaf("div", "doing", Names.capital(names.what(task)) + stint.parts());
    names.runs(task).forEach(run -> body.leaf("div", "pieces", words(task, run)));
    body.close().close();
  }

  private String words(Task task, Run run) {
    String pieces = names.pieces(run) + " (" + run.id() + ")";
    Wait set = sets.get(run.id());
    return switch (task.kind()) {
      case POUR -> pieces + (set == null ? "" : ", set until " + times.full(set.to()));
      case DEMOULD -> pieces + ", " + names.castings(run);
      case STEP -> pieces;
    };
  }

  private void cards() {
    List<Stint> pours =
        stints.stream().filter(stint -> stint.task().kind() == TaskKind.POUR).toList();
    if (pours.isEmpty()) {
      return;
    }
    body.leaf("div", "part", "To weigh");
    WeighCard card = new WeighCard(book, names, times, body);
    pours.forEach(pour -> card.write(pour, names.lot(pour.task().lot())));
  }

  private void ready() {
    List<Ready> today =
        plan.ready().stream()
            .filter(ready -> times.date(ready.at()).equals(date))
            .sorted(Comparator.comparing(ready -> ready.at().toInstant()))
            .toList();
    if (!today.isEmpty()) {
      table("Ready today", "ready", today, this::ready);
    }
  }

  private void ready(Ready ready) {
    body.open("tr", "").tick().leaf("td", "time", times.clock(ready.at()));
    body.leaf("td", "", names.pieces(names.run(ready.run())) + " (" + ready.run() + ")").close();
  }
}
