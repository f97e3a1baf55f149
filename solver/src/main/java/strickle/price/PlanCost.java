package strickle.price;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import strickle.book.Book;
import strickle.book.Piece;

/**
 * What all that a plan makes costs, shared out to its pieces. Amounts are in the currency's own
 * digits. Rounded shares add up by largest remainder: those of the pieces to the whole, and the
 * kinds of a piece to its own share.
 *
 * @param full what the plan costs
 * @param pieces the share of each piece that it makes, in the order of the book
 */
public record PlanCost(BigDecimal full, List<PieceShare> pieces) {

  /**
   * The share of one piece.
   *
   * @param piece the piece's id
   * @param castings castings planned
   * @param good good pieces they bring, to four decimals
   * @param minutes attended minutes, to four decimals
   * @param material dry materials, pigment, consumables and packing
   * @param labour minutes/60 x wage
   * @param wear what the castings use up of their forms
   * @param overhead minutes/60 x overhead per productive hour
   * @param full the four together
   */
  public record PieceShare(
      String piece,
      int castings,
      BigDecimal good,
      BigDecimal minutes,
      BigDecimal material,
      BigDecimal labour,
      BigDecimal wear,
      BigDecimal overhead,
      BigDecimal full) {}

  /** Freezes the list. */
  public PlanCost {
    pieces = List.copyOf(pieces);
  }

  /** A piece with the minutes of its runs, and what a good one costs. */
  private record Made(String piece, MinuteSplit minutes, UnitCost cost) {

    BigDecimal full() {
      return cost.full().multiply(minutes.good());
    }

    BigDecimal of(CostKind kind) {
      return cost.of(kind).multiply(minutes.good());
    }
  }

  /**
   * The cost of a plan.
   *
   * @param minutes those of a plan of this book
   */
  public static PlanCost of(Book book, PlannedMinutes minutes) {
    int decimals = book.studio().currency().getDecimalPlaces();
    List<Made> made = new ArrayList<>();
    for (Piece piece : book.pieces()) {
      minutes.split(piece).ifPresent(split -> made.add(made(book, piece, split)));
    }
    List<BigDecimal> shares =
        LargestRemainder.round(made.stream().map(Made::full).toList(), decimals);
    List<PieceShare> pieces = new ArrayList<>();
    for (int i = 0; i < made.size(); i++) {
      pieces.add(share(made.get(i), shares.get(i)));
    }
    BigDecimal none = BigDecimal.ZERO.setScale(decimals, RoundingMode.UNNECESSARY);
    return new PlanCost(shares.stream().reduce(none, BigDecimal::add), pieces);
  }

  private static Made made(Book book, Piece piece, MinuteSplit split) {
    return new Made(piece.id(), split, UnitCost.of(book, piece, split.perGoodPiece()));
  }

  private static PieceShare share(Made made, BigDecimal full) {
    List<BigDecimal> kinds =
        LargestRemainder.share(full, Arrays.stream(CostKind.values()).map(made::of).toList());
    return new PieceShare(
        made.piece(),
        made.minutes().castings(),
        Exact.atTheDoor(made.minutes().good()),
        Exact.atTheDoor(made.minutes().total()),
        kinds.get(0),
        kinds.get(1),
        kinds.get(2),
        kinds.get(3),
        full);
  }
}
