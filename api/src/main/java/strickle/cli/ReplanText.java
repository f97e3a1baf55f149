package strickle.cli;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strickle.book.Book;
import strickle.cli.Table.Column;
import strickle.plan.History;
import strickle.plan.OrderOutcome;
import strickle.plan.Plan;
import strickle.plan.Run;
import strickle.plan.Task;
import strickle.plan.replan.Move;
import strickle.plan.replan.OrderShift;
import strickle.plan.replan.ReplanRequest;
import strickle.plan.replan.Replanned;
import strickle.plan.replan.Thawed;

/** What has moved in a plan laid out anew, and then the plan. */
final class ReplanText {

  private final Book book;
  private final PlanView before;
  private final PlanView after;
  private final ReplanRequest request;
  private final Replanned replanned;
  private final Map<String, Task> tasks = new HashMap<>();
  private final List<String> lines = new ArrayList<>();

  private ReplanText(Book book, Plan present, ReplanRequest request, Replanned replanned) {
    this.book = book;
    this.before = new PlanView(book, present);
    this.after = new PlanView(book, replanned.plan());
    this.request = request;
    this.replanned = replanned;
    present.tasks().forEach(task -> tasks.put(task.id(), task));
    replanned.plan().tasks().forEach(task -> tasks.putIfAbsent(task.id(), task));
  }

  /** The page, with a newline behind each line. */
  static String of(Book book, Plan present, ReplanRequest request, Replanned replanned) {
    ReplanText text = new ReplanText(book, present, request, replanned);
    text.summary();
    text.orders();
    text.moves();
    text.thawed();
    text.exceeded();
    text.lines.add("");
    return String.join("\n", text.lines) + "\n" + PlanText.of(book, replanned.plan());
  }

  private void summary() {
    String now = Moments.full(request.now());
    String until = Moments.full(request.frozenUntil());
    long moved = replanned.moved();
    String what = moved == 0 ? "Nothing moves." : Words.count(moved, "task") + " moved.";
    add("Laid out anew as things stand on " + now + "; nothing before " + until + " was to move.");
    lines.add("");
    add(what + " " + (replanned.orders().isEmpty() ? "No order gets later or earlier." : ""));
    int fresh = replanned.newOrders().size();
    if (fresh > 0) {
      long late = replanned.newOrders().stream().filter(one -> one.lateMinutes() > 0).count();
      String of = Words.count(fresh, "order") + (fresh == 1 ? " is" : " are") + " new to the plan";
      add(of + (late == 0 ? "." : ", " + late + " of them late."));
    }
  }

  private void add(String text) {
    lines.addAll(Lines.wrap(text.strip(), Lines.WIDEST));
  }

  private void section(String title, List<String> body) {
    if (!body.isEmpty()) {
      lines.add("");
      lines.add(title);
      lines.addAll(body);
    }
  }

  private void orders() {
    Table table =
        new Table("  ", Column.left(16), Column.left(18), Column.left(22), Column.left(22));
    for (OrderShift shift : replanned.orders()) {
      table.row(shift.order(), by(shift), "ready " + near(shift.after()), late(shift.lateAfter()));
    }
    for (OrderOutcome fresh : replanned.newOrders()) {
      String late = late(fresh.lateMinutes());
      table.row(fresh.order(), "new", "ready " + near(fresh.ready()), late);
    }
    replanned.goneOrders().forEach(order -> table.row(order, "in the book no more", "", ""));
    boolean nobody =
        replanned.orders().isEmpty()
            && replanned.newOrders().isEmpty()
            && replanned.goneOrders().isEmpty();
    section("Orders that feel it", nobody ? List.of() : table.lines());
  }

  private static String by(OrderShift shift) {
    if (shift.minutes() == 0) {
      return "due otherwise";
    }
    return Words.span(Math.abs(shift.minutes())) + (shift.minutes() > 0 ? " later" : " earlier");
  }

  private static String late(long minutes) {
    return minutes == 0 ? "on time" : "late by " + Words.span(minutes);
  }

  private void moves() {
    Table table =
        new Table("  ", Column.left(26), Column.left(7), Column.left(24), Column.left(24));
    List<Move> moves = replanned.moves().stream().filter(move -> move.change().isMove()).toList();
    for (Move move : moves) {
      Task task = tasks.get(move.task());
      String of = task.run().orElse(task.lot());
      String was = move.before().map(this::slot).orElse("new");
      String is = move.after().map(this::slot).orElse("gone");
      table.row(what(task), of, was, is.equals("gone") ? is : "now " + is);
    }
    section("What has moved", moves.isEmpty() ? List.of() : table.lines());
  }

  private String what(Task task) {
    PlanView view = has(after, task) ? after : before;
    return switch (task.kind()) {
      case POUR -> "pour " + book.mix(view.lot(task.lot()).mix()).name();
      case DEMOULD -> "demould";
      case STEP -> {
        Run run = view.runs(task).get(0);
        yield book.piece(run.piece()).route().get(task.step().orElseThrow() - 1).step();
      }
    };
  }

  private static boolean has(PlanView view, Task task) {
    return Optional.ofNullable(view.lot(task.lot()))
        .map(lot -> lot.runs().stream().map(Run::id).toList())
        .filter(runs -> task.run().map(runs::contains).orElse(true))
        .isPresent();
  }

  private String slot(Move.Slot slot) {
    return near(slot.start()) + " " + book.person(slot.person()).name();
  }

  private String near(OffsetDateTime at) {
    return Moments.near(at, request.now());
  }

  private void thawed() {
    Table table = new Table("  ", Column.left(26), Column.left(7), Column.left(52));
    for (Thawed one : replanned.thawed()) {
      Task task = tasks.get(one.task());
      table.row(what(task), task.run().orElse(task.lot()), one.reason());
    }
    section(
        "What was about to begin and could not stay",
        replanned.thawed().isEmpty() ? List.of() : table.lines());
  }

  private void exceeded() {
    Table table = new Table("  ", Column.left(26), Column.left(7), Column.left(40));
    List<History.Exceeded> all =
        replanned.plan().history().map(History::exceeded).orElse(List.of());
    for (History.Exceeded one : all) {
      Task task = tasks.get(one.task());
      table.row(
          what(task),
          task.run().orElse(task.lot()),
          Words.span(one.minutes()) + " after its wait was to be over at the latest");
    }
    section("Waits that grew too long", all.isEmpty() ? List.of() : table.lines());
  }
}
