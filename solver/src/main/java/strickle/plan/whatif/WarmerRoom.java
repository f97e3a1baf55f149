package strickle.plan.whatif;

import java.util.List;
import strickle.book.Book;
import strickle.book.Climate;
import strickle.book.Fault;

/**
 * A room warmer by so many degrees all along. A time before the first climate of the book counts as
 * before.
 *
 * @param byC degrees Celsius, above 0
 */
public record WarmerRoom(double byC) implements Change {

  private static final double WARMEST_C = 60;

  /**
   * Refuses a room that is no warmer.
   *
   * @throws strickle.book.Faulty unless it is above 0
   */
  public WarmerRoom {
    Say.must(Say.unless(byC > 0, Say.number(byC) + " °C", "more than 0 °C"));
  }

  @Override
  public String text() {
    return "room:+" + Say.number(byC);
  }

  @Override
  public String words(Book book) {
    return "a room warmer by " + Say.number(byC) + " °C";
  }

  @Override
  public List<Fault> faults(Book book) {
    List<Fault> unknown = RoomAtLeast.unknown(book);
    if (!unknown.isEmpty()) {
      return unknown;
    }
    double warmest =
        book.studio().climate().stream().mapToDouble(Climate::temperatureC).max().orElseThrow();
    return Say.unless(
        warmest + byC <= WARMEST_C,
        Say.number(byC) + " °C more than " + Say.number(warmest) + " °C",
        "at most " + Say.number(WARMEST_C) + " °C in all");
  }

  @Override
  public Book on(Book book) {
    Say.must(faults(book));
    return RoomAtLeast.warmed(book, temperatureC -> temperatureC + byC);
  }

  @Override
  public Cost cost(Book book) {
    return RoomAtLeast.heating();
  }
}
