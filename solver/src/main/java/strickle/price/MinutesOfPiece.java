package strickle.price;

import java.math.BigDecimal;
import java.util.Optional;
import strickle.book.Piece;

/**
 * A source of the attended minutes that one good piece takes: the typical run ({@link
 * StandardMinutes}) or the lots of a plan. Everything else in a cost follows from the book.
 */
public interface MinutesOfPiece {

  /** What the minutes rest on; the prices say so. */
  PriceBasis basis();

  /**
   * Attended minutes for one good piece, 0 or more, unrounded.
   *
   * @param piece a piece of the book
   * @return the minutes, or nothing when the source knows none for this piece (a plan that does not
   *     make it); such a piece is left out of the prices
   */
  Optional<BigDecimal> perGoodPiece(Piece piece);
}
