package strickle.plan.whatif;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import strickle.book.Book;
import strickle.book.Climate;
import strickle.book.Fault;

/**
 * A room that is never cooler than so many degrees.
 *
 * @param temperatureC degrees Celsius, −30 to 60
 */
public record RoomAtLeast(double temperatureC) implements Change {

  private static final double COLDEST_C = -30;
  private static final double WARMEST_C = 60;

  /**
   * Refuses what no room is.
   *
   * @throws strickle.book.Faulty unless it is from −30 to 60
   */
  public RoomAtLeast {
    Say.must(
        Say.unless(
            COLDEST_C <= temperatureC && temperatureC <= WARMEST_C,
            Say.number(temperatureC) + " °C",
            "a temperature from -30 to 60 °C"));
  }

  @Override
  public String text() {
    return "room:" + Say.number(temperatureC);
  }

  @Override
  public String words(Book book) {
    return "a room never cooler than " + Say.number(temperatureC) + " °C";
  }

  @Override
  public List<Fault> faults(Book book) {
    List<Fault> unknown = unknown(book);
    if (!unknown.isEmpty()) {
      return unknown;
    }
    double coolest =
        book.studio().climate().stream().mapToDouble(Climate::temperatureC).min().orElseThrow();
    return Say.unless(
        coolest < temperatureC,
        Say.number(temperatureC) + " °C",
        "more than " + Say.number(coolest) + " °C, which the room has already");
  }

  @Override
  public Book on(Book book) {
    Say.must(faults(book));
    return warmed(book, before -> Math.max(before, temperatureC));
  }

  @Override
  public Cost cost(Book book) {
    return heating();
  }

  /** The fault of a book that does not say how warm the room is. */
  static List<Fault> unknown(Book book) {
    return Say.unless(
        !book.studio().climate().isEmpty(),
        "a book without a climate, whose room counts as 20 °C",
        "a book with $.studio.climate");
  }

  /** The book with other temperatures. */
  static Book warmed(Book book, DoubleUnaryOperator warmer) {
    List<Climate> climate =
        book.studio().climate().stream()
            .map(
                one ->
                    new Climate(
                        one.from(),
                        warmer.applyAsDouble(one.temperatureC()),
                        one.humidityPercent()))
            .toList();
    return Rebuilt.with(book, climate);
  }

  /** What warmth costs is not in the book. */
  static Cost heating() {
    return Cost.notKnown("what the heating takes");
  }
}
