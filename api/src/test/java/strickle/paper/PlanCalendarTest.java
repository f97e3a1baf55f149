package strickle.paper;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import strickle.book.Book;
import strickle.book.Order;
import strickle.plan.Plan;
import strickle.plan.Task;

/** Calendars, read again by a library that had no part in writing them. */
class PlanCalendarTest {

  private static final Instant NOW = Instant.parse("2027-03-01T12:00:30Z");
  private static final CalendarRequest ALL = new CalendarRequest(Optional.empty(), NOW);
  private static final String TEXT = PlanCalendar.text(Papers.BOOK, Papers.PLAN, ALL);

  private static List<VEvent> events(String text) {
    ICalendar calendar = Biweekly.parse(text).first();
    return calendar.getEvents();
  }

  private static List<Stint> stints() {
    return Stint.of(Papers.BOOK, Papers.PLAN, new Times(Papers.BOOK.studio().timeZone()));
  }

  @Test
  void everyStretchOfATaskIsAnEventAtItsTime() {
    List<VEvent> events = events(TEXT);
    List<Stint> stints = stints();
    assertEquals(stints.size() + Papers.BOOK.orders().size(), events.size());
    for (int i = 0; i < stints.size(); i++) {
      Stint stint = stints.get(i);
      VEvent event = events.get(i);
      assertEquals(stint.spell().start().toInstant(), event.getDateStart().getValue().toInstant());
      assertEquals(stint.spell().end().toInstant(), event.getDateEnd().getValue().toInstant());
      String who = Papers.BOOK.person(stint.person()).name();
      assertTrue(event.getSummary().getValue().startsWith(who + ": "), event.toString());
    }
  }

  @Test
  void everyOrderIsDueAtItsMoment() {
    List<VEvent> events = events(TEXT);
    List<Order> orders = Papers.BOOK.orders();
    List<VEvent> due = events.subList(events.size() - orders.size(), events.size());
    for (int i = 0; i < orders.size(); i++) {
      Instant moment = orders.get(i).due().atZone(Papers.BOOK.studio().timeZone()).toInstant();
      assertEquals(moment, due.get(i).getDateStart().getValue().toInstant());
      assertTrue(due.get(i).getSummary().getValue().contains(orders.get(i).id()));
    }
  }

  @Test
  void aPourSaysWhatToWeigh() {
    Names names = new Names(Papers.BOOK, Papers.PLAN);
    List<VEvent> events = events(TEXT);
    List<Stint> stints = stints();
    for (int i = 0; i < stints.size(); i++) {
      Task task = stints.get(i).task();
      if (task.run().isEmpty()) {
        String told = events.get(i).getDescription().getValue();
        names.lot(task.lot()).weighOut().stream()
            .map(one -> names.material(one.material()) + " " + Names.grams(one.grams()) + " g")
            .forEach(row -> assertTrue(told.lines().anyMatch(row::equals), row + " in " + told));
      }
    }
  }

  @Test
  void linesAreFoldedAfterSeventyFiveOctetsAndEndInCrlf() {
    Book book = Papers.renamed(Papers.BOOK, name -> "Ünïcode 🪨, " + name.repeat(3));
    String text = PlanCalendar.text(book, Papers.PLAN, ALL);
    assertTrue(text.endsWith("END:VCALENDAR\r\n"));
    for (String line : text.split("\r\n", -1)) {
      assertTrue(line.getBytes(UTF_8).length <= 75, line);
      assertFalse(line.contains("\n") || line.contains("\r"), line);
      assertFalse(line.contains("\uFFFD"), line);
    }
    assertTrue(text.contains("\r\n "));
  }

  @Test
  void namesComeBackAsTheyWere() {
    String name = "a;b,c\\n\\;\"d\" : é 🪨 " + "long".repeat(30);
    Book book = Papers.renamed(Papers.BOOK, old -> name);
    List<VEvent> events = events(PlanCalendar.text(book, Papers.PLAN, ALL));
    assertTrue(events.get(0).getSummary().getValue().endsWith(" x " + name), events.get(0) + "");
  }

  @Test
  void everyEventHasANameOfItsOwnThatALaterPlanKeeps() {
    List<VEvent> before = events(TEXT);
    assertEquals(before.size(), before.stream().map(PlanCalendarTest::name).distinct().count());
    Plan other = Papers.plan(Papers.BOOK, 60);
    CalendarRequest later = new CalendarRequest(Optional.empty(), NOW.plusSeconds(60));
    Map<String, VEvent> after = new HashMap<>();
    events(PlanCalendar.text(Papers.BOOK, other, later))
        .forEach(event -> after.put(name(event), event));
    List<VEvent> both = before.stream().filter(event -> after.containsKey(name(event))).toList();
    assertTrue(both.size() > before.size() / 2, both.size() + " of " + before.size());
    for (VEvent event : both) {
      int sequence = event.getSequence().getValue();
      assertEquals(sequence + 1, after.get(name(event)).getSequence().getValue());
    }
  }

  private static String name(VEvent event) {
    return event.getUid().getValue();
  }

  @Test
  void onePersonHasTheirOwnTasksAndNoOthers() {
    String person = Papers.BOOK.people().get(0).id();
    CalendarRequest theirs = new CalendarRequest(Optional.of(person), NOW);
    List<VEvent> events = events(PlanCalendar.text(Papers.BOOK, Papers.PLAN, theirs));
    List<Instant> starts =
        stints().stream()
            .filter(stint -> stint.person().equals(person))
            .map(stint -> stint.spell().start().toInstant())
            .collect(Collectors.toList());
    assertEquals(
        starts, events.stream().map(e -> e.getDateStart().getValue().toInstant()).toList());
  }

  @Test
  void aPlanOfNothingIsACalendarAllTheSame() {
    Plan empty = Papers.empty(Papers.BOOK);
    assertEquals(
        Papers.BOOK.orders().size(), events(PlanCalendar.text(Papers.BOOK, empty, ALL)).size());
  }

  @Test
  void whoIsNotThereAndWhenItCannotBeIsRefused() {
    CalendarRequest nobody = new CalendarRequest(Optional.of("nobody"), NOW);
    assertThrows(
        IllegalArgumentException.class, () -> PlanCalendar.text(Papers.BOOK, Papers.PLAN, nobody));
    assertThrows(
        IllegalArgumentException.class, () -> new CalendarRequest(Optional.empty(), Instant.EPOCH));
  }
}
