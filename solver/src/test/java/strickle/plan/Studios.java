package strickle.plan;

import java.time.DayOfWeek;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import strickle.book.After;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Draft;
import strickle.book.Form;
import strickle.book.FormUse;
import strickle.book.Mix;
import strickle.book.Mould;
import strickle.book.Order;
import strickle.book.Person;
import strickle.book.Piece;
import strickle.book.Pin;
import strickle.book.SampleBook;
import strickle.book.Step;
import strickle.book.Studio;
import strickle.book.WaitKind;

/**
 * A studio whose plans can be worked out by head: Ana is there from 9 to 17 on weekdays, there is
 * no climate, a casting weighs 1000 g, and a tile is done as soon as it leaves the tray.
 *
 * <p>A pour of n tiles takes 10 n + 12 + 5 n + 8 minutes, the last 8 to wash up; the set takes 4
 * hours, taking a tile out 6 minutes. One tile: poured from 9:00 to 9:35, out from 13:27 to 13:33.
 */
final class Studios {

  /** Monday. */
  static final String MONDAY = "2027-04-05T";

  static final String TUESDAY = "2027-04-06T";
  static final String FRIDAY = "2027-04-09T";
  static final ZoneId ZONE = ZoneId.of("America/Chicago");

  /** The midnight that Monday 5 April 2027 begins. */
  static final OffsetDateTime FROM = at(MONDAY + "00:00");

  private Studios() {}

  /** The studio with these orders. */
  static Book tiles(Order... orders) {
    return Draft.of(SampleBook.example())
        .studio(studio(SampleBook.studio(), "climate", List.of()))
        .people(weekdays("ana"))
        .forms(form("tray", 1))
        .moulds(mould("slab", "tray"))
        .mixes(mix("slate"))
        .pieces(piece("tile", "slab"))
        .orders(orders)
        .fairs()
        .book();
  }

  /** An order of so many tiles, due at a local time. */
  static Order order(String id, int tiles, String due) {
    return SampleBook.order(id, "tile", tiles, due);
  }

  /** Somebody who is there from 9 to 17 on weekdays. */
  static Person weekdays(String id) {
    return SampleBook.person(
        id,
        List.of(SampleBook.hours(9, 17)),
        DayOfWeek.MONDAY,
        DayOfWeek.TUESDAY,
        DayOfWeek.WEDNESDAY,
        DayOfWeek.THURSDAY,
        DayOfWeek.FRIDAY);
  }

  static Form form(String id, int count) {
    return new Form(id, id, count, SampleBook.decimal("10"), 100);
  }

  /** A mould of one of each of the forms given; 500 ml, 10 + 5 + 6 minutes, 4 hours to set. */
  static Mould mould(String id, String... forms) {
    Mould mould = SampleBook.planterDeep();
    mould = Altered.of(mould, "id", id);
    List<FormUse> uses = List.of(forms).stream().map(form -> new FormUse(form, 1)).toList();
    mould = Altered.of(mould, "forms", uses);
    mould = Altered.of(mould, "volumeMl", OptionalDouble.of(500));
    mould = Altered.of(mould, "wastePercent", 0.0);
    mould = Altered.of(mould, "prepMinutes", 10);
    mould = Altered.of(mould, "demouldMinutes", 6);
    mould = Altered.of(mould, "setHours", 4.0);
    mould = Altered.of(mould, "setAtMostHours", OptionalDouble.empty());
    return Altered.of(mould, "core", Optional.empty());
  }

  /** The sample's mix at 2 kg to the litre. */
  static Mix mix(String id) {
    Mix mix = Altered.of(SampleBook.slate(), "id", id);
    return Altered.of(mix, "wetDensityKgPerM3", OptionalDouble.of(2000));
  }

  /** A piece without stock or route, all of whose castings are good. */
  static Piece piece(String id, String mould) {
    Piece piece = SampleBook.planterSlate();
    piece = Altered.of(piece, "id", id);
    piece = Altered.of(piece, "mould", mould);
    piece = Altered.of(piece, "goodPercent", 100.0);
    piece = Altered.of(piece, "onHand", 0);
    piece = Altered.of(piece, "route", List.of());
    return Altered.of(piece, "finalDryHours", 0.0);
  }

  /** A step of so many minutes for each piece, by anybody, so many hours after the task before. */
  static Step step(int minutesEach, double hours, OptionalDouble atMostHours) {
    return new Step(
        "sand",
        0,
        minutesEach,
        new After(WaitKind.REST, hours, atMostHours),
        List.of(),
        List.of(),
        Optional.empty());
  }

  /** A pin of so many tiles by Ana. */
  static Pin pin(int tiles, String start) {
    return pin("tile", tiles, start, "ana");
  }

  static Pin pin(String piece, int castings, String start, String person) {
    return new Pin(Pin.POUR, piece, castings, LocalDateTime.parse(start), person);
  }

  /** The book with another value for a component of its studio. */
  static Book studio(Book book, String component, Object value) {
    return BookWith.studio(book, studio(book.studio(), component, value));
  }

  private static Studio studio(Studio studio, String component, Object value) {
    return Altered.of(studio, component, value);
  }

  /** The book with another value for a component of its first mould. */
  static Book mould(Book book, String component, Object value) {
    Mould[] moulds = book.moulds().toArray(Mould[]::new);
    moulds[0] = Altered.of(moulds[0], component, value);
    return BookWith.moulds(book, moulds);
  }

  /** The book with another value for a component of its first mix. */
  static Book mix(Book book, String component, Object value) {
    Mix[] mixes = book.mixes().toArray(Mix[]::new);
    mixes[0] = Altered.of(mixes[0], component, value);
    return BookWith.mixes(book, mixes);
  }

  /** The book with another value for a component of its first piece. */
  static Book piece(Book book, String component, Object value) {
    Piece[] pieces = book.pieces().toArray(Piece[]::new);
    pieces[0] = Altered.of(pieces[0], component, value);
    return BookWith.pieces(book, pieces);
  }

  /** A local time of the studio, such as {@code 2027-04-05T09:00}. */
  static OffsetDateTime at(String local) {
    return LocalDateTime.parse(local).atZone(ZONE).toOffsetDateTime();
  }
}
