package strickle.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import strickle.book.Book;
import strickle.cli.Table.Column;
import strickle.plan.Plan;
import strickle.plan.Planning;
import strickle.plan.Totals;
import strickle.plan.whatif.Answer;
import strickle.plan.whatif.Cost;
import strickle.plan.whatif.Helper;
import strickle.plan.whatif.Tried;

/** What would happen with each change, as a page of text. */
final class WhatIfText {

  private static final String SAME = "-";

  private final Book book;
  private final Answer answer;
  private final Totals alone;

  private WhatIfText(Book book, Answer answer) {
    this.book = book;
    this.answer = answer;
    this.alone = answer.alone().totals();
  }

  /** The page, with a newline behind each line; {@code book} is the unchanged one. */
  static String of(Book book, Answer answer) {
    return String.join("\n", new WhatIfText(book, answer).lines()) + "\n";
  }

  private List<String> lines() {
    List<String> lines = new ArrayList<>();
    paragraph(lines, book.studio().name() + ": what would happen to the plan " + from());
    lines.add("");
    paragraph(lines, "As planned: " + figures(answer.present()) + ".");
    paragraph(lines, planningAlone());
    List<Tried> telling = answer.tried().stream().filter(tried -> tried.changes(alone)).toList();
    if (!telling.isEmpty()) {
      lines.add("");
      lines.addAll(table(telling));
    }
    List<Tried> idle = answer.tried().stream().filter(tried -> !tried.changes(alone)).toList();
    if (!idle.isEmpty()) {
      lines.add("");
      List<String> words = idle.stream().map(Tried::words).toList();
      paragraph(lines, "Would change nothing: " + String.join("; ", words) + ".");
    }
    notes(lines);
    return lines;
  }

  private static void paragraph(List<String> lines, String text) {
    lines.addAll(Lines.wrap(text, Lines.WIDEST));
  }

  private String from() {
    Plan present = answer.present();
    String anew = present.history().isPresent() ? "laid out anew " : "from ";
    return anew
        + Moments.full(Planning.begins(present))
        + ", in "
        + book.studio().currency().getCode();
  }

  private static String figures(Plan plan) {
    Totals totals = plan.totals();
    return late(totals)
        + ", "
        + Words.work(totals.attendedMinutes())
        + " of handwork, last ready "
        + Moments.full(totals.lastReady());
  }

  private static String late(Totals totals) {
    if (totals.lateOrders() == 0) {
      return "nothing late";
    }
    return Words.count(totals.lateOrders(), "late order")
        + " with late hours of "
        + totals.weightedLateHours().toPlainString();
  }

  private String planningAlone() {
    boolean same = Tried.BY_HELP.compare(answer.present().totals(), alone) == 0;
    return same
        ? "More planning alone found nothing better."
        : "More planning alone would give: "
            + figures(answer.alone())
            + ". What follows is measured against that.";
  }

  private List<String> table(List<Tried> telling) {
    Table table =
        new Table(
            "  ",
            Column.left(31),
            Column.left(14),
            Column.left(13),
            Column.left(13),
            Column.left(24));
    table.row("with", "late hours", "handwork", "last ready", "cost");
    for (Tried tried : telling) {
      Totals totals = tried.plan().totals();
      table.row(
          tried.words(), lateHours(totals), handwork(totals), last(totals), cost(tried.cost()));
    }
    return table.lines();
  }

  private String lateHours(Totals totals) {
    BigDecimal more = totals.weightedLateHours().subtract(alone.weightedLateHours());
    String now =
        totals.lateOrders() == 0 ? "none late" : totals.weightedLateHours().toPlainString();
    return switch (more.signum()) {
      case 0 -> SAME;
      case 1 -> "+" + more.toPlainString() + ", to " + now;
      default -> more.toPlainString() + ", to " + now;
    };
  }

  private String handwork(Totals totals) {
    long more = totals.attendedMinutes() - alone.attendedMinutes();
    if (more == 0) {
      return SAME;
    }
    return (more > 0 ? "+" : "-") + Words.work(Math.abs(more));
  }

  private String last(Totals totals) {
    long later = Duration.between(alone.lastReady(), totals.lastReady()).toMinutes();
    if (later == 0) {
      return SAME;
    }
    return Words.span(Math.abs(later)) + (later > 0 ? " later" : " sooner");
  }

  private String cost(Cost cost) {
    String amount = cost.amount().map(one -> money(one) + ", ").orElse("");
    String each =
        cost.eachCasting().map(one -> "; " + one.toPlainString() + " a casting").orElse("");
    return amount + cost.how() + each;
  }

  private String money(BigDecimal amount) {
    int decimals = book.studio().currency().getDecimalPlaces();
    return amount.setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }

  private void notes(List<String> lines) {
    lines.add("");
    if (answer.tried().isEmpty()) {
      paragraph(lines, "Nothing is worth trying.");
      return;
    }
    paragraph(
        lines,
        "Late hours are begun ones, counted as often as their order's weight says. Hours cost their"
            + " whole time, whatever is done in them.");
    if (answer.tried().stream().anyMatch(tried -> tried.change() instanceof Helper)) {
      paragraph(
          lines, "A helper does what anybody may do; steps that only some may do stay with them.");
    }
  }
}
