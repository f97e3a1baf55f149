package strickle.demo;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import strickle.book.Line;
import strickle.book.Mould;
import strickle.book.Piece;

/**
 * Decides how many of each piece are wanted, so that the castings needed for them by the rule of
 * formats.md add up to exactly the number asked for.
 */
final class Wanted {

  private static final double TOLERANCE = 1e-9;

  private final Dice dice;
  private final Map<String, Mould> moulds;

  Wanted(Dice dice, List<Mould> moulds) {
    this.dice = dice;
    this.moulds = moulds.stream().collect(Collectors.toMap(Mould::id, m -> m));
  }

  /** Good pieces that one casting counts as. */
  double goodEach(Piece piece) {
    return moulds.get(piece.mould()).cavities() * piece.goodPercent() / 100;
  }

  /** Pieces to order of each, those on hand included; what is not wanted is left out. */
  Map<Piece, Integer> pieces(List<Piece> pieces, int castings) {
    Map<Piece, Integer> made = new LinkedHashMap<>();
    int left = castings;
    int[] shares = shares(pieces.size(), castings);
    for (int i = pieces.size() - 1; i > 0; i--) {
      int good = goodPieces(pieces.get(i), shares[i]);
      made.put(pieces.get(i), good);
      left -= castingsFor(pieces.get(i), good);
    }
    made.put(pieces.getFirst(), goodPieces(pieces.getFirst(), left));
    made.values().removeIf(good -> good == 0);
    made.replaceAll((piece, good) -> good + piece.onHand());
    return made;
  }

  private int[] shares(int pieces, int castings) {
    int[] shares = new int[pieces];
    for (int i = 0; i < castings; i++) {
      shares[dice.from(0, pieces - 1)]++;
    }
    return shares;
  }

  private int goodPieces(Piece piece, int castings) {
    return (int) Math.floor(castings * goodEach(piece) + TOLERANCE);
  }

  /** Where a casting counts as less than one piece this may be fewer than the share. */
  private int castingsFor(Piece piece, int good) {
    return (int) Math.ceil(good / goodEach(piece) - TOLERANCE);
  }

  /** The pieces wanted as lines of an order, each of one casting to six, in a random order. */
  List<Line> lines(Map<Piece, Integer> wanted) {
    List<Line> lines = new ArrayList<>();
    wanted.forEach(
        (piece, count) -> {
          int most = (int) Math.max(1, 6 * goodEach(piece));
          for (int left = count; left > 0; ) {
            int quantity = Math.min(left, dice.from(1, most));
            lines.add(new Line(piece.id(), quantity, Optional.empty()));
            left -= quantity;
          }
        });
    dice.shuffle(lines);
    return lines;
  }
}
