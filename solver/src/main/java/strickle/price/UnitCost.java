package strickle.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import strickle.book.Book;
import strickle.book.Piece;

/**
 * What one good piece costs, unrounded, in the book's currency.
 *
 * @param minutes attended minutes for one good piece
 * @param lines one for each material, labour, one for each form, overhead, in that order
 */
public record UnitCost(BigDecimal minutes, List<ExactLine> lines) {

  /** Freezes the lines. */
  public UnitCost {
    lines = List.copyOf(lines);
  }

  /**
   * The cost of a piece of the book that takes the minutes given.
   *
   * @param minutes attended minutes for one good piece, 0 or more
   * @throws strickle.book.Faulty when the mould's shape leaves no volume
   * @throws IllegalStateException when the mould's mesh has not been measured
   */
  public static UnitCost of(Book book, Piece piece, BigDecimal minutes) {
    return PieceModel.of(book, piece).cost(minutes);
  }

  /**
   * The cost of a piece of the book in its typical run, poured as a lot of its own.
   *
   * @throws strickle.book.Faulty when the mould's shape leaves no volume
   * @throws IllegalStateException when the mould's mesh has not been measured
   */
  public static UnitCost standard(Book book, Piece piece) {
    return of(book, piece, new StandardMinutes(book).split(piece).perGoodPiece());
  }

  /** The cost of several pieces together. */
  static UnitCost of(Map<BundleRequest.Item, UnitCost> pieces) {
    BigDecimal minutes = BigDecimal.ZERO;
    List<ExactLine> lines = new ArrayList<>();
    for (Map.Entry<BundleRequest.Item, UnitCost> one : pieces.entrySet()) {
      BigDecimal quantity = BigDecimal.valueOf(one.getKey().quantity());
      minutes = minutes.add(one.getValue().minutes().multiply(quantity));
      for (ExactLine line : one.getValue().lines()) {
        lines.add(new ExactLine(line.what(), line.kind(), line.amount().multiply(quantity)));
      }
    }
    return new UnitCost(minutes, lines);
  }

  /** Everything of one kind, in the book's currency. */
  public BigDecimal of(CostKind kind) {
    return lines.stream()
        .filter(line -> line.kind() == kind)
        .map(ExactLine::amount)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** Full cost = material + labour + wear + overhead, in the book's currency. */
  public BigDecimal full() {
    return lines.stream().map(ExactLine::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** Full cost without labour: what has to be paid whoever does the work. */
  public BigDecimal withoutLabour() {
    return full().subtract(of(CostKind.LABOUR));
  }

  /**
   * Material and wear: what one more piece uses up, and one less saves. Whether its hours cost
   * anything depends on whether they are there anyway.
   */
  public BigDecimal usedUp() {
    return of(CostKind.MATERIAL).add(of(CostKind.WEAR));
  }
}
