package strickle.paper;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import strickle.book.Book;
import strickle.plan.Lot;
import strickle.plan.Plan;
import strickle.plan.Ready;
import strickle.safety.Cautions;
import strickle.safety.Shown;

/**
 * Day sheets for the bench: for each day and person the tasks in order, a card to weigh by for
 * every pour, what becomes ready, what the room does, and, once, what to be careful of.
 */
public final class DaySheet {

  private final Book book;
  private final Plan plan;
  private final SheetRequest request;
  private final Times times;
  private final Markup body = new Markup();

  private DaySheet(Book book, Plan plan, SheetRequest request) {
    this.book = book;
    this.plan = plan;
    this.request = request;
    this.times = new Times(book.studio().timeZone());
  }

  /**
   * The sheets as a PDF with its fonts inside. The same book, plan and request give the same bytes.
   *
   * @param plan a valid plan of this book; it may be under way
   * @throws IllegalArgumentException when the request names a person who is not in the book
   */
  public static byte[] pdf(Book book, Plan plan, SheetRequest request) {
    request.person().ifPresent(book::person);
    DaySheet sheet = new DaySheet(book, plan, request);
    sheet.write();
    String title = book.studio().name() + ": day sheets";
    return Pdf.of(title, request.size(), plan.from().toInstant(), sheet.body);
  }

  private void write() {
    List<Stint> stints = Stint.of(book, plan, times).stream().filter(this::isWanted).toList();
    List<Shown> cautions = cautions(stints);
    boolean first = true;
    for (LocalDate date : dates(stints)) {
      List<Stint> ofDay = stints.stream().filter(stint -> stint.date().equals(date)).toList();
      for (List<Stint> ofPerson : byPerson(ofDay)) {
        SheetPage page = new SheetPage(book, plan, date, ofPerson, body);
        page.write(first, first ? cautions : List.of());
        first = false;
      }
    }
    if (first) {
      body.leaf("div", "foot", book.studio().name() + " · day sheets");
      body.leaf("div", "day", "Nothing is planned.");
    }
  }

  private boolean isWanted(Stint stint) {
    return request.day().stream().allMatch(stint.date()::equals)
        && request.person().stream().allMatch(stint.person()::equals);
  }

  // A day on which something only becomes ready is a day of the plan too.
  private Collection<LocalDate> dates(List<Stint> stints) {
    if (request.day().isPresent()) {
      return List.of(request.day().get());
    }
    Set<LocalDate> dates =
        stints.stream().map(Stint::date).collect(Collectors.toCollection(TreeSet::new));
    if (request.person().isEmpty()) {
      plan.ready().stream().map(Ready::at).map(times::date).forEach(dates::add);
    }
    return dates;
  }

  // A day without tasks has one sheet, of nobody.
  private static Collection<List<Stint>> byPerson(List<Stint> ofDay) {
    Map<String, List<Stint>> people = new LinkedHashMap<>();
    for (Stint stint : ofDay) {
      people.computeIfAbsent(stint.person(), person -> new ArrayList<>()).add(stint);
    }
    return people.isEmpty() ? List.of(List.of()) : people.values();
  }

  private List<Shown> cautions(List<Stint> stints) {
    Set<String> named =
        stints.stream().map(stint -> stint.task().lot()).collect(Collectors.toSet());
    List<Lot> lots = plan.lots().stream().filter(lot -> named.contains(lot.id())).toList();
    return Cautions.of(book, plan.withLots(lots));
  }
}
