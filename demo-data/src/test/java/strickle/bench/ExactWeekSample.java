package strickle.bench;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.stream.Stream;
import strickle.book.Book;
import strickle.book.Form;
import strickle.book.FormUse;
import strickle.book.Order;
import strickle.demo.Generator;

/**
 * A small generated week.
 *
 * @param castings how many it needs
 * @param seed the number it is generated from
 * @param crowded whether there is only one set of each form, and half the time for each order, and
 *     every order matters
 */
record ExactWeekSample(int castings, long seed, boolean crowded) {

  private static final int FEWEST = 4;
  private static final int MOST = 12;
  private static final int TIME_LEFT = 2;

  /** The week of a seed: from one to the next their castings go round from 4 to 12. */
  static ExactWeekSample of(int seed, boolean crowded) {
    return new ExactWeekSample(FEWEST + seed % (MOST - FEWEST + 1), seed, crowded);
  }

  Book book() {
    Book book = Generator.book(castings, seed);
    return crowded ? crowded(book, Generator.start(book)) : book;
  }

  private static Book crowded(Book book, OffsetDateTime from) {
    List<Form> forms = book.forms().stream().map(form -> oneSet(book, form)).toList();
    List<Order> orders =
        book.orders().stream().map(order -> urgent(order, from.toLocalDateTime())).toList();
    return new Book(
        book.studio(),
        book.people(),
        book.stations(),
        forms,
        book.moulds(),
        book.materials(),
        book.mixes(),
        book.pieces(),
        orders,
        book.channels(),
        book.fairs(),
        book.pins());
  }

  /** As many units of a form as the mould with the most of it needs. */
  private static Form oneSet(Book book, Form form) {
    int units =
        book.moulds().stream()
            .flatMap(mould -> unitsOf(form, mould.forms()))
            .mapToInt(i -> i)
            .max()
            .orElse(1);
    return new Form(form.id(), form.name(), units, form.costEach(), form.lifeCastings());
  }

  private static Stream<Integer> unitsOf(Form form, List<FormUse> uses) {
    int units =
        uses.stream().filter(use -> use.form().equals(form.id())).mapToInt(FormUse::count).sum();
    return units > 0 ? Stream.of(units) : Stream.empty();
  }

  private static Order urgent(Order order, LocalDateTime from) {
    LocalDateTime due = from.plus(Duration.between(from, order.due()).dividedBy(TIME_LEFT));
    BigDecimal weight = order.weight().signum() == 0 ? BigDecimal.ONE : order.weight();
    return new Order(
        order.id(), order.buyer(), order.kind(), due.withSecond(0), weight, order.lines());
  }
}
