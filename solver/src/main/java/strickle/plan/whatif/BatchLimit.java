package strickle.plan.whatif;

import java.util.List;
import strickle.book.Book;
import strickle.book.Fault;

/**
 * A larger batch limit.
 *
 * @param grams the heaviest lot that can be mixed then, above the book's present limit and at most
 *     10000000
 */
public record BatchLimit(double grams) implements Change {

  private static final double MOST = 10_000_000;

  /**
   * Refuses what cannot be mixed.
   *
   * @throws strickle.book.Faulty unless it is above 0 and at most 10000000
   */
  public BatchLimit {
    Say.must(
        Say.unless(
            0 < grams && grams <= MOST,
            Say.number(grams) + " g",
            "above 0 and at most 10000000 g"));
  }

  @Override
  public String text() {
    return "batch:" + Say.number(grams);
  }

  @Override
  public String words(Book book) {
    return "a batch limit of "
        + Say.number(grams)
        + " g in place of "
        + Say.number(book.studio().batchLimitGrams());
  }

  @Override
  public List<Fault> faults(Book book) {
    double now = book.studio().batchLimitGrams();
    return Say.unless(
        grams > now, Say.number(grams) + " g", "more than the present " + Say.number(now) + " g");
  }

  @Override
  public Book on(Book book) {
    Say.must(faults(book));
    return Rebuilt.with(book, grams);
  }

  @Override
  public Cost cost(Book book) {
    return Cost.notKnown("what a larger bucket and mixer take");
  }
}
