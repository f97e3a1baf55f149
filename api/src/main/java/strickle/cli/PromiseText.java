package strickle.cli;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import strickle.book.Book;
import strickle.book.Order;
import strickle.plan.Lot;
import strickle.plan.Plan;
import strickle.plan.Run;
import strickle.plan.Task;
import strickle.plan.promise.Latest;
import strickle.plan.promise.Offer;
import strickle.plan.promise.Promise;
import strickle.plan.promise.Slip;
import strickle.plan.promise.Stock;

/** A promise as a page of text: the date first, then where it goes, then what more would cost. */
final class PromiseText {

  private static final String NOBODY = "no present order becomes later";
  private static final String NO_PLAN = "no plan was found in which it is ready then.";

  private final Book book;
  private final Promise promise;
  private final List<String> lines = new ArrayList<>();

  private PromiseText(Book book, Promise promise) {
    this.book = book;
    this.promise = promise;
  }

  /**
   * The page, with a newline behind each line.
   *
   * @param book the book without the new order
   */
  static String of(Book book, Promise promise) {
    PromiseText text = new PromiseText(book, promise);
    text.heading();
    promise.latest().ifPresent(text::latest);
    text.kept();
    promise.still().ifPresent(text::still);
    promise.kept().flatMap(Offer::stock).ifPresent(text::stock);
    promise.kept().filter(offer -> !offer.slips().isEmpty()).ifPresent(text::moved);
    promise.kept().ifPresent(text::place);
    promise.pressed().ifPresent(text::pressed);
    return String.join("\n", text.lines) + "\n";
  }

  private void heading() {
    String what = promise.quantity() + " x " + book.piece(promise.piece()).name();
    say(
        book.studio().name()
            + ": "
            + what
            + ", on top of the plan from "
            + Moments.full(promise.from())
            + ", times in "
            + book.studio().timeZone());
    lines.add("");
  }

  private void latest(Latest latest) {
    String by = "By " + Moments.full(latest.at()) + ": ";
    switch (latest.way()) {
      case KEPT -> say(by + "yes, and " + NOBODY + ".");
      case PRESSED -> {
        say(by + "only if others slip.");
        table(latest.offer().orElseThrow());
      }
      case IMPOSSIBLE -> say(by + latest.alone().map(PromiseText::alone).orElse(NO_PLAN));
    }
    lines.add("");
  }

  private static String alone(OffsetDateTime ready) {
    return "no. Even if the studio did nothing else, it would be ready "
        + Moments.full(ready)
        + ".";
  }

  private void kept() {
    Optional<Offer> kept = promise.kept();
    if (kept.isEmpty()) {
      say("No date was found that makes no present order later.");
    } else if (kept.get().runs().isEmpty()) {
      say("Ready at once, from stock: " + NOBODY + ".");
    } else {
      say("Ready " + Moments.full(kept.get().ready()) + ": " + NOBODY + ".");
    }
  }

  /** What it takes from stock, and what others get in its place. */
  private void stock(Stock stock) {
    say("From stock it takes " + stock.pieces() + " of the " + stock.onHand() + " on hand.");
    for (Stock.Meant meant : stock.meant()) {
      String runs = meant.runs().isEmpty() ? "" : " from " + String.join(", ", meant.runs());
      String one = meant.pieces() == 1 ? " of them was" : " of them were";
      say(
          meant.pieces()
              + one
              + " meant for "
              + meant.order()
              + ", which is now served"
              + runs
              + ".");
    }
  }

  private void still(Offer still) {
    say("With nothing at all moved: " + Moments.full(still.ready()) + ".");
  }

  /** Who waits longer without being late for it. */
  private void moved(Offer offer) {
    lines.add("");
    boolean late = offer.slips().stream().anyMatch(slip -> slip.lateMinutes() > 0);
    say(
        late
            ? "Later than planned, but no later past due:"
            : "Later than planned, but still in time:");
    Table table = orders();
    offer.slips().forEach(slip -> table.row(row(slip, spare(slip))));
    lines.addAll(table.lines());
  }

  private String spare(Slip slip) {
    if (slip.lateMinutes() > 0) {
      return "late by " + Words.span(slip.lateMinutes()) + " as before";
    }
    return "in time";
  }

  /** Where the new order goes, and what is made in the place of what it takes from stock. */
  private void place(Offer offer) {
    Set<String> runs = new HashSet<>(offer.runs());
    offer.stock().ifPresent(stock -> stock.meant().forEach(meant -> runs.addAll(meant.runs())));
    if (runs.isEmpty()) {
      return;
    }
    PlanView view = new PlanView(offer.book(), only(offer, runs));
    lines.add("");
    say("Where it goes");
    lines.addAll(WeekText.lines(view));
    lines.add("");
    say("Lots");
    lines.addAll(LotText.lines(view));
  }

  /** The plan with no other tasks than those of some runs. */
  private static Plan only(Offer offer, Set<String> runs) {
    Plan plan = offer.plan();
    Set<String> lots = new HashSet<>();
    for (Lot lot : plan.lots()) {
      lot.runs().stream().map(Run::id).filter(runs::contains).forEach(r -> lots.add(lot.id()));
    }
    List<Task> tasks =
        plan.tasks().stream()
            .filter(task -> lots.contains(task.lot()))
            .filter(task -> task.run().isEmpty() || runs.contains(task.run().get()))
            .toList();
    return new Plan(
        plan.book(),
        plan.from(),
        plan.seed(),
        plan.coverPercent(),
        plan.orderingFrom(),
        plan.lots(),
        tasks,
        plan.waits(),
        plan.ready(),
        plan.orders(),
        plan.totals(),
        plan.history());
  }

  private void pressed(Offer offer) {
    lines.add("");
    say("If others may slip: " + Moments.full(offer.ready()) + ", and then");
    table(offer);
  }

  private void table(Offer offer) {
    Table table = orders();
    for (Slip slip : offer.later()) {
      String before =
          slip.lateMinutesBefore() == 0 ? "" : ", not by " + Words.span(slip.lateMinutesBefore());
      table.row(row(slip, "late by " + Words.span(slip.lateMinutes()) + before));
    }
    lines.addAll(table.lines());
  }

  private static Table orders() {
    return new Table(
            "  ",
            Table.Column.left(11),
            Table.Column.left(19),
            Table.Column.left(21),
            Table.Column.left(21),
            Table.Column.left(18))
        .row("order", "for", "due", "ready", "");
  }

  private String[] row(Slip slip, String last) {
    Order order = book.order(slip.order());
    return new String[] {
      order.id(), order.buyer(), Moments.full(order.due()), Moments.full(slip.ready()), last
    };
  }

  private void say(String text) {
    lines.addAll(Lines.wrap(text, Lines.WIDEST));
  }
}
