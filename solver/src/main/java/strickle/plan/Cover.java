package strickle.plan;

import java.util.OptionalDouble;
import strickle.book.Book;
import strickle.book.Piece;

/**
 * How many castings it takes to have so many good pieces: as many as bring them on average, or as
 * many as bring them in so many of a hundred cases. For the latter each piece turns out good or not
 * by itself, with the chance its {@code goodPercent} says, so that the good ones are binomial.
 */
public final class Cover {

  /** Castings as they turn out on average, fractions of pieces carried. */
  public static final Cover AVERAGE = new Cover(OptionalDouble.empty());

  /** The least percent that can be asked for: less would be no cover. */
  public static final double LEAST_PERCENT = 50;

  /** The most percent that can be asked for: more is never certain. */
  public static final double MOST_PERCENT = 99.9;

  /** What is allowed, as it is told. */
  static final String RIGHT = "a percentage from 50 to 99.9, or none for the average";

  /** Below this a fraction of a piece, or of a chance, is rounding. */
  private static final double TOLERANCE = 1e-9;

  private final OptionalDouble percent;

  private Cover(OptionalDouble percent) {
    this.percent = percent;
  }

  /**
   * The cover of so many cases in a hundred.
   *
   * @param percent 50 to 99.9; the average when empty
   * @throws strickle.book.Faulty when it is not from 50 to 99.9
   */
  public static Cover of(OptionalDouble percent) {
    check(new Flaws(), "", percent).raise();
    return percent.isEmpty() ? AVERAGE : new Cover(percent);
  }

  /** Notes a percentage that cannot be asked for. */
  static Flaws check(Flaws flaws, String path, OptionalDouble percent) {
    if (!flaws.given(path, percent, RIGHT)) {
      return flaws;
    }
    double found = percent.orElse(LEAST_PERCENT);
    boolean wrong = !(found >= LEAST_PERCENT && found <= MOST_PERCENT);
    return flaws.when(wrong, path, found, RIGHT);
  }

  /** In how many of a hundred cases; empty for the average. */
  public OptionalDouble percent() {
    return percent;
  }

  /**
   * The least castings that bring so many good pieces beyond what is on hand.
   *
   * @param asked pieces asked for in all, 0 or more
   * @return 0 or more; the largest int when it is more than that
   */
  public int castings(Book book, Piece piece, long asked) {
    long wanted = Math.max(0, asked - piece.onHand());
    double average = Math.ceil(wanted / goodEach(book, piece) - TOLERANCE);
    boolean onAverage = percent.isEmpty() || wanted == 0 || average > Integer.MAX_VALUE;
    return onAverage ? (int) average : leastCovering(book, piece, wanted, (long) average);
  }

  /** Good pieces one casting of a piece gives on average. */
  static double goodEach(Book book, Piece piece) {
    return book.mould(piece.mould()).cavities() * piece.goodPercent() / 100;
  }

  /**
   * How likely so many pieces, good or not, bring what is asked for beyond what is on hand.
   *
   * @param asked pieces asked for in all, 0 or more
   * @return 0 to 1
   */
  static double chance(Piece piece, long pieces, long asked) {
    return Binomial.atLeast(pieces, piece.goodPercent() / 100, asked - piece.onHand());
  }

  /** The chance grows with every casting, so the least that is enough is found by halving. */
  private int leastCovering(Book book, Piece piece, long wanted, long average) {
    long tooFew = 0;
    long enough = average;
    while (!covers(book, piece, enough, wanted)) {
      tooFew = enough;
      enough *= 2;
    }
    while (enough - tooFew > 1) {
      long middle = (tooFew + enough) / 2;
      if (covers(book, piece, middle, wanted)) {
        enough = middle;
      } else {
        tooFew = middle;
      }
    }
    return (int) Math.min(Integer.MAX_VALUE, enough);
  }

  private boolean covers(Book book, Piece piece, long castings, long wanted) {
    long pieces = castings * book.mould(piece.mould()).cavities();
    double chance = chance(piece, pieces, wanted + piece.onHand());
    return chance >= percent.orElseThrow() / 100 - TOLERANCE;
  }
}
