package strickle.plan.audit;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Draft;
import strickle.book.Mix;
import strickle.book.Mould;
import strickle.book.Order;
import strickle.book.Person;
import strickle.book.Piece;
import strickle.book.SampleBook;
import strickle.book.Step;
import strickle.book.Studio;

/** The sample book with one thing altered. */
final class Books {

  private static final Book BOOK = SampleBook.example();

  private Books() {}

  static Book studio(String component, Object value) {
    Studio studio = Altered.of(SampleBook.studio(), component, value);
    return BookWith.studio(BOOK, studio);
  }

  static Book mould(String component, Object value) {
    Mould mould = Altered.of(SampleBook.planterDeep(), component, value);
    return BookWith.moulds(BOOK, mould);
  }

  static Book mix(String component, Object value) {
    Mix mix = Altered.of(SampleBook.slate(), component, value);
    return BookWith.mixes(BOOK, mix);
  }

  static Book piece(String component, Object value) {
    Piece piece = Altered.of(SampleBook.planterSlate(), component, value);
    return BookWith.pieces(BOOK, piece);
  }

  static Book order(String component, Object value) {
    Order order = Altered.of(SampleBook.gardenShop(), component, value);
    return BookWith.orders(BOOK, order);
  }

  /** Another value for a component of a step, numbered from 1. */
  static Book step(int number, String component, Object value) {
    List<Step> route = new ArrayList<>(SampleBook.planterSlate().route());
    route.set(number - 1, Altered.of(route.get(number - 1), component, value));
    return piece("route", route);
  }

  /** With another least wait before the first seal coat, in hours at 20 °C. */
  static Book curesFor(double hours) {
    return step(2, "after", Altered.of(SampleBook.firstSealCoat().after(), "hours", hours));
  }

  /** With another least wait before the second seal coat, in elapsed hours. */
  static Book driesFor(double hours) {
    return step(3, "after", Altered.of(SampleBook.secondSealCoat().after(), "hours", hours));
  }

  /** With Ben, who keeps Ana's hours and works on Wednesdays too. */
  static Book withBen() {
    Person ben =
        SampleBook.person(
            "ben",
            List.of(SampleBook.hours(9, 12), SampleBook.hours(13, 17)),
            DayOfWeek.MONDAY,
            DayOfWeek.TUESDAY,
            DayOfWeek.WEDNESDAY,
            DayOfWeek.THURSDAY,
            DayOfWeek.FRIDAY);
    return BookWith.people(BOOK, SampleBook.ana(), ben);
  }

  /** With two of each tub. */
  static Book withTwoTubs() {
    return withTwoTubs(BOOK);
  }

  static Book withTwoTubs(Book book) {
    return Draft.of(book)
        .forms(Altered.of(SampleBook.tubA(), "count", 2), Altered.of(SampleBook.tubB(), "count", 2))
        .book();
  }
}
