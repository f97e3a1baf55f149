package strickle.plan;

import java.util.Collection;
import strickle.book.Book;
import strickle.book.Piece;

/**
 * What runs are good for, with what is known to be lost of them. On average a run brings its usual
 * share of good pieces, and no more than are left. With a cover each piece that is left turns out
 * good or not by itself.
 */
public final class Goods {

  /** Below this a fraction of a piece, or of a chance, is rounding. */
  private static final double TOLERANCE = 1e-9;

  private final Book book;
  private final Cover cover;

  /** What runs of a book's pieces are good for when castings are counted by a cover. */
  public Goods(Book book, Cover cover) {
    this.book = book;
    this.cover = cover;
  }

  /** Pieces that come out of a run's moulds. */
  static int pieces(Book book, Run run) {
    return run.castings() * cavities(book, book.piece(run.piece()));
  }

  /** Whether nothing is left of a run, so that it needs no steps any more. */
  static boolean isLost(Book book, Run run) {
    return run.scrapped() >= pieces(book, run);
  }

  private static int cavities(Book book, Piece piece) {
    return book.mould(piece.mould()).cavities();
  }

  /**
   * How much a run brings: good pieces on average, or with a cover pieces that may turn out good.
   */
  double of(Run run) {
    return of(book.piece(run.piece()), run.castings(), run.scrapped());
  }

  /**
   * The same of a run of so many castings of a piece.
   *
   * @param scrapped how many of its pieces are lost
   */
  public double of(Piece piece, int castings, int scrapped) {
    double left = Math.max(0, castings * cavities(book, piece) - scrapped);
    double usual = castings * Cover.goodEach(book, piece);
    return cover.percent().isPresent() ? left : Math.min(usual, left);
  }

  /** How much one casting of a piece of which nothing is lost brings. */
  double each(Piece piece) {
    return cover.percent().isPresent() ? cavities(book, piece) : Cover.goodEach(book, piece);
  }

  /** How much has to be brought for so many pieces asked for in all, beyond what is on hand. */
  public double needed(Piece piece, long asked) {
    long wanted = Math.max(0, asked - piece.onHand());
    return cover.percent().isPresent() ? trials(piece, wanted) : wanted;
  }

  /** Whether runs bring as much as is needed. */
  boolean suffice(Collection<Run> runs, double needed) {
    return suffices(runs.stream().mapToDouble(this::of).sum(), needed);
  }

  /** Whether what is brought is as much as is needed. */
  public static boolean suffices(double brought, double needed) {
    return brought >= needed - TOLERANCE;
  }

  /** Castings it takes to bring so much. */
  int castings(Piece piece, double missing) {
    return (int) Math.max(0, Math.ceil(missing / each(piece) - TOLERANCE));
  }

  /** The fewest pieces of which enough turn out good as often as the cover asks. */
  private long trials(Piece piece, long wanted) {
    double enough = cover.percent().orElseThrow() / 100 - TOLERANCE;
    double good = piece.goodPercent() / 100;
    long tooFew = wanted - 1;
    long most = Math.max(1, wanted);
    while (wanted > 0 && Binomial.atLeast(most, good, wanted) < enough) {
      tooFew = most;
      most *= 2;
    }
    while (wanted > 0 && most - tooFew > 1) {
      long middle = (tooFew + most) / 2;
      boolean covers = Binomial.atLeast(middle, good, wanted) >= enough;
      most = covers ? middle : most;
      tooFew = covers ? tooFew : middle;
    }
    return wanted > 0 ? most : 0;
  }
}
