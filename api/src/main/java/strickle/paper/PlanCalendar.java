package strickle.paper;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import strickle.book.Book;
import strickle.book.Order;
import strickle.book.Person;
import strickle.plan.Lot;
import strickle.plan.Plan;
import strickle.plan.Run;
import strickle.plan.Task;
import strickle.plan.TaskKind;

/**
 * A plan as a calendar (RFC 5545): an event for every stretch of a task, and for every order one at
 * the moment it is due. Times are in UTC. An event's name in the calendar is made of studio and
 * task, so that importing a later plan moves the events of the earlier one.
 */
public final class PlanCalendar {

  private static final int NAME_DIGITS = 32;

  private final Book book;
  private final Plan plan;
  private final CalendarRequest request;
  private final Names names;
  private final CalendarText lines = new CalendarText();

  private PlanCalendar(Book book, Plan plan, CalendarRequest request) {
    this.book = book;
    this.plan = plan;
    this.request = request;
    this.names = new Names(book, plan);
  }

  /**
   * The calendar as a text, to be written in UTF-8.
   *
   * @param plan a valid plan of this book; it may be under way
   * @throws IllegalArgumentException when the request names a person who is not in the book
   */
  public static String text(Book book, Plan plan, CalendarRequest request) {
    request.person().ifPresent(book::person);
    PlanCalendar calendar = new PlanCalendar(book, plan, request);
    calendar.write();
    return calendar.lines.all();
  }

  private void write() {
    String studio = book.studio().name();
    String title = request.person().map(book::person).map(Person::name).orElse("pours and steps");
    lines.line("BEGIN", "VCALENDAR").line("VERSION", "2.0").line("PRODID", "-//Strickle//Plan//EN");
    lines.line("CALSCALE", "GREGORIAN").line("METHOD", "PUBLISH");
    lines.text("NAME", studio + ", " + title).text("X-WR-CALNAME", studio + ", " + title);
    for (Stint stint : Stint.of(book, plan, new Times(book.studio().timeZone()))) {
      if (request.person().stream().allMatch(stint.person()::equals)) {
        event(stint);
      }
    }
    if (request.person().isEmpty()) {
      book.orders().forEach(this::due);
    }
    lines.line("END", "VCALENDAR");
  }

  private void event(Stint stint) {
    Task task = stint.task();
    begin(task.id() + "\n" + stint.part());
    Instant start = stint.spell().start().toInstant();
    Instant end = stint.spell().end().toInstant();
    lines.moment("DTSTART", start);
    if (end.isAfter(start)) {
      lines.moment("DTEND", end);
    }
    lines.text("SUMMARY", summary(stint));
    lines.text("DESCRIPTION", String.join("\n", description(task)));
    lines.line("CATEGORIES", task.kind().name());
    lines.line("STATUS", "CONFIRMED").line("END", "VEVENT");
  }

  private void begin(String name) {
    lines.line("BEGIN", "VEVENT").line("UID", unique(name) + "@strickle");
    lines.moment("DTSTAMP", request.stamp()).line("SEQUENCE", "" + request.sequence());
  }

  private String summary(Stint stint) {
    String what = Names.capital(names.what(stint.task())) + stint.parts();
    List<Run> runs = names.runs(stint.task());
    String pieces = String.join(", ", runs.stream().map(names::pieces).toList());
    String who = book.person(stint.person()).name();
    return request.person().isPresent() ? what + ": " + pieces : who + ": " + what + ": " + pieces;
  }

  private List<String> description(Task task) {
    List<String> words = new ArrayList<>();
    for (Run run : names.runs(task)) {
      words.add(run.id() + ": " + names.pieces(run) + ", " + names.castings(run));
      if (task.kind() == TaskKind.POUR) {
        run.ballastGramsEach()
            .ifPresent(grams -> words.add("ballast " + grams + " g on the core of each casting"));
      }
    }
    if (task.kind() == TaskKind.POUR) {
      words.addAll(weighOut(names.lot(task.lot())));
    }
    return words;
  }

  private List<String> weighOut(Lot lot) {
    List<String> words = new ArrayList<>();
    lot.weighOut()
        .forEach(
            weighed ->
                words.add(
                    names.material(weighed.material())
                        + " "
                        + Names.grams(weighed.grams())
                        + " g"));
    words.add("wet mix, all together " + Names.grams(lot.wetGrams()) + " g");
    return words;
  }

  private void due(Order order) {
    begin("order\n" + order.id());
    lines.moment("DTSTART", order.due().atZone(book.studio().timeZone()).toInstant());
    String buyer = order.buyer().isEmpty() ? "" : " for " + order.buyer();
    lines.text("SUMMARY", "Due: " + order.id() + buyer);
    lines.line("TRANSP", "TRANSPARENT").line("CATEGORIES", "DUE").line("END", "VEVENT");
  }

  private String unique(String name) {
    try {
      byte[] whole = (book.studio().name() + "\n" + name).getBytes(UTF_8);
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(whole);
      return HexFormat.of().formatHex(digest).substring(0, NAME_DIGITS);
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("Every Java has SHA-256.", impossible);
    }
  }
}
