package strickle.plan.audit;

import java.util.List;
import java.util.Optional;
import strickle.book.Mix;
import strickle.book.Mould;
import strickle.book.Piece;
import strickle.book.Step;
import strickle.plan.Lot;
import strickle.plan.Run;

/**
 * A run from its pour to its last step, as far as the plan tells it.
 *
 * @param lot the lot it is poured from
 * @param run the run, of a piece the book knows
 * @param piece the piece
 * @param mould the piece's mould
 * @param mix the piece's mix
 * @param pour the lot's pour, if it is planned
 * @param stages the demould and then every step of the route, each if it is planned
 */
record Course(
    Lot lot,
    Run run,
    Piece piece,
    Mould mould,
    Mix mix,
    Optional<Stint> pour,
    List<Optional<Stint>> stages) {

  String where() {
    return "run " + run.id();
  }

  Optional<Stint> demould() {
    return stages.get(0);
  }

  /** The end of the demould or, with a route, of its last step. */
  Optional<Stint> last() {
    return stages.get(stages.size() - 1);
  }

  /** The step with this number, from 1. */
  Step step(int number) {
    return piece.route().get(number - 1);
  }

  /** Pieces worked on: good or not, they all take minutes and places. */
  long pieces() {
    return (long) run.castings() * mould.cavities();
  }

  /** Good pieces to be expected, no more than are left; a fraction is kept. */
  double goodPieces() {
    double usual = pieces() * piece.goodPercent() / 100;
    return Math.min(usual, (double) piecesLeft());
  }

  /** Pieces that are not known to be lost. */
  long piecesLeft() {
    return Math.max(0, pieces() - run.scrapped());
  }

  /** Whether no piece is left, so that nothing more has to be done than the demould. */
  boolean isLost() {
    return run.scrapped() >= pieces();
  }

  /** Whether it is poured, or is being poured. */
  boolean isPoured() {
    return pour.map(Stint::isHistory).orElse(false);
  }

  /** The task before a stage, 0 being the demould. */
  Optional<Stint> before(int number) {
    return number == 0 ? pour : stages.get(number - 1);
  }
}
