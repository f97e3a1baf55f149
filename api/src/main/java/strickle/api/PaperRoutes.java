package strickle.api;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import strickle.book.Book;
import strickle.book.Channel;
import strickle.book.Person;
import strickle.json.AnswerFile;
import strickle.json.DayAnswer;
import strickle.json.contract.Answer;
import strickle.json.contract.Operation;
import strickle.json.contract.Parameter;
import strickle.json.contract.Shape;
import strickle.paper.CalendarRequest;
import strickle.paper.DaySheet;
import strickle.paper.OrderTable;
import strickle.paper.PageSize;
import strickle.paper.PlanCalendar;
import strickle.paper.PriceList;
import strickle.paper.SheetRequest;
import strickle.store.StudioStore;

/** What goes out of the studio: day sheets, price lists, calendars, orders as a table. */
final class PaperRoutes {

  private static final String TOPIC = "Out of the studio";
  private static final String PDF = "application/pdf";
  private static final String CSV = "text/csv";
  private static final String CALENDAR = "text/calendar";

  /** One person only. */
  static final Parameter PERSON =
      Parameter.query(
          "person", Parameter.Kind.TEXT, "Only this person, by id; everybody without it.", "ana");

  private static final Parameter DAY =
      Parameter.query(
          "day",
          Parameter.Kind.DATE,
          "Only this day, local to the studio; every day of the plan without it.",
          "2027-04-06");
  private static final Parameter PAPER =
      Parameter.query(
          "paper", Parameter.Kind.TEXT, "The paper, a4 or letter; a4 without it.", "a4");
  private static final Parameter CHANNEL =
      Parameter.query(
          "channel",
          Parameter.Kind.TEXT,
          "With the prices of this channel beside the list prices, if it has a discount.",
          "own-table");

  private final Thinking drawing = new Thinking();
  private final Clock clock;
  private final String version;

  private PaperRoutes(Clock clock, String version) {
    this.clock = clock;
    this.version = version;
  }

  /**
   * The routes.
   *
   * @param clock says what day it is
   * @param version of the program
   */
  static List<Route> of(Clock clock, String version) {
    PaperRoutes routes = new PaperRoutes(clock, version);
    return List.of(
        new Route(
            operation(
                    "/api/days",
                    "readDays",
                    "What there is to do, day by day.",
                    "For each person the tasks in order, what to weigh for each pour (grams, scale"
                        + " step), ballast, what becomes ready, the room, and what to be careful"
                        + " of. Also of a plan under way.")
                .with(PresentPlan.PARAMETER)
                .with(DAY)
                .with(PERSON)
                .answering(
                    Answer.of(
                        Status.OK,
                        "The days.",
                        new Shape.Of(DayAnswer.class, DayAnswer.FORMAT),
                        "ETag")),
            routes::days),
        new Route(
            operation(
                    "/api/day-sheets.pdf",
                    "readDaySheets",
                    "The day sheets, to print.",
                    "A sheet for each day and person, black on white, in large figures: tasks with"
                        + " a box to tick, a card to weigh by for every pour, ballast, cautions.")
                .with(PresentPlan.PARAMETER)
                .with(DAY)
                .with(PERSON)
                .with(PAPER)
                .answering(Answer.of(Status.OK, "The PDF.", new Shape.Bytes(PDF), "ETag")),
            routes::sheets),
        new Route(
            operation(
                    "/api/price-list.pdf",
                    "readPriceList",
                    "The price list, to print and hand out.",
                    "List prices in the studio's currency. What a piece costs is not on it.")
                .with(CHANNEL)
                .with(PAPER)
                .answering(Answer.of(Status.OK, "The PDF.", new Shape.Bytes(PDF), "ETag")),
            routes::priceList),
        new Route(
            operation(
                    "/api/price-list.csv",
                    "readPriceTable",
                    "The price list as a table.",
                    "CSV (RFC 4180) in the studio's currency; piece, name, mix, currency, price,"
                        + " channelPrice.")
                .with(CHANNEL)
                .answering(Answer.of(Status.OK, "The table.", new Shape.Text(CSV), "ETag")),
            PaperRoutes::priceTable),
        new Route(
            operation(
                    "/api/calendar.ics",
                    "readCalendar",
                    "A plan for a calendar program.",
                    "RFC 5545: an event for every task, with what to weigh in grams, and one for"
                        + " the moment each order is due.")
                .with(PresentPlan.PARAMETER)
                .with(PERSON)
                .answering(Answer.of(Status.OK, "The file.", new Shape.Text(CALENDAR), "ETag")),
            PaperRoutes::calendar),
        new Route(
            operation(
                    "/api/orders.csv",
                    "readOrderTable",
                    "The orders as a table.",
                    "CSV (RFC 4180), a row for each line of an order, prices in the studio's"
                        + " currency. A text that a spreadsheet would take for a formula has an"
                        + " apostrophe before it.")
                .answering(Answer.of(Status.OK, "The table.", new Shape.Text(CSV), "ETag")),
            PaperRoutes::orders));
  }

  private static Operation operation(String path, String id, String summary, String text) {
    return Operation.of("GET", path, id, TOPIC, summary, text);
  }

  private Reply days(Call call) {
    String json = call.told(() -> daysOf(call));
    return Matching.reading(call, Etag.of(json), () -> Reply.json(Status.OK, json));
  }

  private static String daysOf(Call call) {
    PresentPlan present = PresentPlan.underWay(call, plan(call));
    Optional<LocalDate> day = call.date("day");
    Optional<String> person = person(call, present.book());
    return AnswerFile.write(
        DayAnswer.FORMAT, DayAnswer.of(present.book(), present.plan(), day, person));
  }

  private Reply sheets(Call call) {
    PresentPlan present = PresentPlan.underWay(call, plan(call));
    SheetRequest request =
        new SheetRequest(call.date("day"), person(call, present.book()), paper(call));
    String tag = tag(call, "sheets " + plan(call) + " " + request);
    return Matching.reading(
        call,
        tag,
        () ->
            file(
                PDF,
                drawing.of(() -> DaySheet.pdf(present.book(), present.plan(), request)),
                request.day().map(day -> "day-sheet-" + day).orElse("day-sheets") + ".pdf"));
  }

  private Reply priceList(Call call) {
    Book book = call.studio().now().book();
    Optional<String> channel = channel(call, book);
    PageSize size = paper(call);
    LocalDate today = LocalDate.ofInstant(clock.instant(), book.studio().timeZone());
    String tag = tag(call, "prices " + channel + " " + size + " " + today);
    return Matching.reading(
        call,
        tag,
        () ->
            file(
                PDF,
                drawing.of(() -> PriceList.pdf(book, channel, today, size)),
                "price-list.pdf"));
  }

  // The same studio, request and program give the same file, so it need not be drawn to know.
  private String tag(Call call, String request) {
    return Etag.of(version + "\n" + call.tag(call.studio().now()) + "\n" + request);
  }

  private static Reply file(String mediaType, byte[] bytes, String name) {
    return named(Reply.bytes(mediaType, bytes), name);
  }

  private static Reply named(Reply reply, String name) {
    return reply.with("Content-Disposition", "inline; filename=\"" + name + '"');
  }

  private static Reply text(Call call, String mediaType, String name, Supplier<String> work) {
    String text = work.get();
    return Matching.reading(call, Etag.of(text), () -> named(Reply.text(mediaType, text), name));
  }

  private static Reply priceTable(Call call) {
    Book book = call.studio().now().book();
    Optional<String> channel = channel(call, book);
    return text(call, CSV, "price-list.csv", () -> PriceList.csv(book, channel));
  }

  private static Reply orders(Call call) {
    Book book = call.studio().now().book();
    return text(call, CSV, "orders.csv", () -> OrderTable.write(book));
  }

  private static Reply calendar(Call call) {
    PresentPlan present = PresentPlan.underWay(call, plan(call));
    return calendar(call, call.studio(), present, plan(call));
  }

  /**
   * The calendar of a plan.
   *
   * @param name the plan's id, or the word for the plan in use
   */
  static Reply calendar(Call call, StudioStore studio, PresentPlan present, String name) {
    Optional<String> person = person(call, present.book());
    CalendarRequest request = new CalendarRequest(person, madeAt(studio, name));
    return text(
        call,
        CALENDAR,
        "plan.ics",
        () -> PlanCalendar.text(present.book(), present.plan(), request));
  }

  // What has not changed since has the same stamp, whenever it is asked for.
  private static Instant madeAt(StudioStore studio, String name) {
    return studio
        .plans()
        .find(name)
        .map(plan -> plan.changedAt())
        .orElseGet(() -> studio.journal(Long.MAX_VALUE, 1).get(0).at());
  }

  private static String plan(Call call) {
    return call.query("plan").orElse(PresentPlan.IN_USE);
  }

  private static PageSize paper(Call call) {
    String word = call.query("paper").orElse("a4");
    return switch (word) {
      case "a4" -> PageSize.A4;
      case "letter" -> PageSize.LETTER;
      default -> throw Refusal.malformed("paper", Call.shown(word), "a4 or letter");
    };
  }

  private static Optional<String> person(Call call, Book book) {
    return known(call, "person", book.people().stream().map(Person::id).toList());
  }

  private static Optional<String> channel(Call call, Book book) {
    return known(call, "channel", book.channels().stream().map(Channel::id).toList());
  }

  private static Optional<String> known(Call call, String name, List<String> ids) {
    Optional<String> given = call.query(name);
    if (!given.stream().allMatch(ids::contains)) {
      String right = "the id of a " + name + " in the book: " + String.join(", ", ids);
      throw Refusal.malformed(name, Call.shown(given.orElseThrow()), right);
    }
    return given;
  }
}
