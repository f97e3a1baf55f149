package strickle.plan;

import strickle.book.Book;
import strickle.book.Piece;

/** What runs are good for, with what is known to be lost of them. */
final class Goods {

  private Goods() {}

  /** Pieces that come out of a run's moulds. */
  static int pieces(Book book, Run run) {
    return run.castings() * book.mould(book.piece(run.piece()).mould()).cavities();
  }

  /**
   * Good pieces to be expected of a run: the usual share, and no more than are left. A fraction is
   * kept.
   */
  static double of(Book book, Run run) {
    Piece piece = book.piece(run.piece());
    double usual = run.castings() * Needs.goodEach(book, piece);
    return Math.min(usual, Math.max(0, pieces(book, run) - run.scrapped()));
  }

  /** Whether nothing is left of a run, so that it needs no steps any more. */
  static boolean isLost(Book book, Run run) {
    return run.scrapped() >= pieces(book, run);
  }
}
