package strickle.plan;

import static strickle.plan.Studios.FRIDAY;
import static strickle.plan.Studios.FROM;
import static strickle.plan.Studios.MONDAY;
import static strickle.plan.Studios.TUESDAY;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Draft;
import strickle.book.Mould;
import strickle.book.Order;
import strickle.book.Person;
import strickle.book.Piece;
import strickle.book.RestsOn;
import strickle.book.SampleBook;
import strickle.book.SpecialDay;
import strickle.book.Station;
import strickle.book.Step;
import strickle.book.Window;

/** Studios of tiles in which an order is late for one reason or another; see {@link Studios}. */
final class LateBooks {

  static final OffsetDateTime FRIDAY_AFTERNOON = Studios.at(FRIDAY + "14:00");

  private static final long SCHEDULES = 200;

  private LateBooks() {}

  /** The tile studio with these orders; Ana is there from 9 to 17 on weekdays. */
  static Book tiles(Order... orders) {
    Book book = tile(Studios.tiles(orders), "name", "tile");
    return BookWith.people(book, ana());
  }

  static Person ana(SpecialDay... days) {
    Person ana = Altered.of(Studios.weekdays("ana"), "name", "Ana");
    return Altered.of(ana, "exceptions", List.of(days));
  }

  static SpecialDay day(String date, String... windows) {
    return new SpecialDay(
        LocalDate.parse(date), Arrays.stream(windows).map(Window::parse).toList());
  }

  /** Another value for a component of the tile. */
  static Book tile(Book book, String component, Object value) {
    return Studios.piece(book, component, value);
  }

  /** One tray: the second tile is poured when the first is out of it. */
  static Book oneTray() {
    return tiles(
        Studios.order("O-1", 1, MONDAY + "14:00"), Studios.order("O-2", 1, MONDAY + "15:00"));
  }

  /** A vase that is poured for three hours has to be out by four, and its order weighs more. */
  static Book vaseAndTile() {
    Mould urn = Altered.of(Studios.mould("urn", "urn"), "prepMinutes", 150);
    Piece vase = Altered.of(Studios.piece("vase", "urn"), "name", "vase");
    Order first = SampleBook.order("O-1", "vase", 1, MONDAY + "16:00");
    Book book = tiles(Studios.order("O-2", 1, MONDAY + "15:30"));
    return Draft.of(book)
        .forms(Studios.form("tray", 1), Studios.form("urn", 1))
        .moulds(book.mould("slab"), urn)
        .pieces(book.piece("tile"), vase)
        .orders(Altered.of(first, "weight", SampleBook.decimal("3")), book.order("O-2"))
        .book();
  }

  /** One tile due on a Saturday, whose set is over on Friday after closing. */
  static Book overTheWeekend() {
    return tiles(Studios.order("O-1", 1, "2027-04-10T12:00"));
  }

  /** Ten hours to set, twenty at the most: what is poured on a Friday would stay in too long. */
  static Book shortMostWait() {
    Book book = Studios.mould(overTheWeekend(), "setHours", 10.0);
    return Studios.mould(book, "setAtMostHours", OptionalDouble.of(20));
  }

  /** Two trays, but one place to lie in for the day it takes to dry. */
  static Book oneRackPlace() {
    Step seal = Studios.step(10, 0, OptionalDouble.empty());
    seal = Altered.of(seal, "restsOn", Optional.of(new RestsOn("rack", 1)));
    Book book =
        tiles(
            Studios.order("O-1", 1, TUESDAY + "16:00"), Studios.order("O-2", 1, TUESDAY + "16:30"));
    book = tile(tile(book, "route", List.of(seal)), "finalDryHours", 24.0);
    return Draft.of(book)
        .forms(Studios.form("tray", 2))
        .stations(new Station("rack", "drying rack", 1))
        .book();
  }

  /** The sample book with its order due at another time. */
  static Book sampleDue(String due) {
    Order order = Altered.of(SampleBook.gardenShop(), "due", LocalDateTime.parse(due));
    return BookWith.orders(SampleBook.example(), order);
  }

  static Plan plan(Book book, OffsetDateTime from) {
    return Planning.of(book, new PlanRequest(from, Effort.ofSchedules(SCHEDULES), 1), p -> {})
        .run();
  }

  /** What becomes of an order in a plan from {@link Studios#FROM}. */
  static OrderOutcome outcome(Book book, String order) {
    return outcome(book, FROM, order);
  }

  static OrderOutcome outcome(Book book, OffsetDateTime from, String order) {
    return plan(book, from).orders().stream()
        .filter(one -> one.order().equals(order))
        .findFirst()
        .orElseThrow();
  }
}
