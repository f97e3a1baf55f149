package strickle.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import strickle.book.Book;
import strickle.book.Mix;
import strickle.book.Studio;
import strickle.json.PigmentNote;
import strickle.mix.PigmentCheck;
import strickle.plan.Lot;
import strickle.plan.OrderOutcome;
import strickle.plan.Plan;
import strickle.safety.Cautions;
import strickle.safety.RoomAssumption;
import strickle.safety.RoomDay;
import strickle.safety.RoomDays;

/** A whole plan as a page of text: what comes of it first, then what is to be done. */
final class PlanText {

  private PlanText() {}

  /**
   * The page, with a newline behind each line.
   *
   * @param plan a plan of this book that has passed its audit
   */
  static String of(Book book, Plan plan) {
    PlanView view = new PlanView(book, plan);
    List<String> lines = new ArrayList<>(heading(book.studio(), plan));
    lines.add("");
    lines.addAll(Lines.wrap(summary(plan.orders()), Lines.WIDEST));
    if (!plan.lots().isEmpty()) {
      lines.add("");
      lines.addAll(CautionText.brief(Cautions.of(book, plan)));
      pigment(lines, book, plan);
      room(lines, book, plan);
      lines.addAll(WeekText.lines(view));
      section(lines, "Lots", LotText.lines(view));
    }
    if (!plan.orders().isEmpty()) {
      section(lines, "Orders", OrderText.lines(view));
    }
    section(lines, "In all", TotalsText.lines(view));
    return String.join("\n", lines) + "\n";
  }

  /** Of mixes that are poured, those with more pigment than their cement takes. */
  private static void pigment(List<String> lines, Book book, Plan plan) {
    List<String> notes = new ArrayList<>();
    for (String id : plan.lots().stream().map(Lot::mix).distinct().toList()) {
      Mix mix = book.mix(id);
      PigmentCheck check = PigmentCheck.of(mix, book::material);
      if (check.verdict() == PigmentCheck.Verdict.TOO_MUCH) {
        PigmentNote.of(check, one -> book.material(one).name())
            .map(note -> mix.name() + ": " + note)
            .ifPresent(note -> notes.addAll(Lines.paragraph("  ", "    ", note)));
      }
    }
    if (!notes.isEmpty()) {
      section(lines, "Pigment", notes);
    }
  }

  /** A book that says nothing of its room has no such section. */
  private static void room(List<String> lines, Book book, Plan plan) {
    List<RoomDay> days = RoomDays.of(book, plan, RoomAssumption.usual());
    List<LocalDate> dark =
        book.studio().climate().isEmpty() ? List.of() : RoomDays.unknown(book, plan);
    if (!days.isEmpty() || !dark.isEmpty()) {
      section(lines, "Room", RoomText.brief(days, dark, new RoomWords(false)));
    }
  }

  private static List<String> heading(Studio studio, Plan plan) {
    String anew =
        plan.history().map(history -> ", laid out anew " + Moments.full(history.now())).orElse("");
    String from = Moments.full(plan.from()) + anew;
    return Lines.wrap(
        studio.name() + ": plan from " + from + ", times in " + studio.timeZone(), Lines.WIDEST);
  }

  /** What becomes of the orders, in one sentence. */
  static String summary(List<OrderOutcome> orders) {
    long late = orders.stream().filter(order -> order.lateMinutes() > 0).count();
    long most = orders.stream().mapToLong(OrderOutcome::lateMinutes).max().orElse(0);
    if (orders.isEmpty()) {
      return "There are no orders, so there is nothing to pour.";
    }
    if (late == 0) {
      return orders.size() == 1
          ? "The order is on time."
          : "All " + orders.size() + " orders are on time.";
    }
    String who = late + " of " + Words.count(orders.size(), "order");
    return late == 1
        ? who + " is late, by " + Words.span(most) + "."
        : who + " are late, the latest by " + Words.span(most) + ".";
  }

  private static void section(List<String> lines, String title, List<String> body) {
    lines.add("");
    lines.add(title);
    lines.addAll(body);
  }
}
