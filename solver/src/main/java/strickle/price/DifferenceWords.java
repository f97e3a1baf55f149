package strickle.price;

import java.math.BigDecimal;
import java.math.RoundingMode;
import strickle.book.Piece;

/** Says in words why a piece takes more or fewer minutes as planned than in its typical run. */
final class DifferenceWords {

  private final Piece piece;
  private final MinuteSplit planned;
  private final PlannedMinutes minutes;

  DifferenceWords(Piece piece, MinuteSplit planned, PlannedMinutes minutes) {
    this.piece = piece;
    this.planned = planned;
    this.minutes = minutes;
  }

  /**
   * Why the minutes of a kind differ.
   *
   * @param more minutes for a good piece beyond those of the typical run; below 0 for fewer
   */
  String why(MinuteKind kind, BigDecimal more) {
    String words =
        switch (kind) {
          case LOT -> mixed() + shared();
          case SETUP -> "set up " + times(planned.runs()) + forCastings();
          case BEYOND ->
              "tasks that are done took "
                  + (more.signum() > 0 ? "longer" : "less time")
                  + " than the book says";
          case CASTING, PIECE -> "as much work on fewer good pieces";
        };
    return words + lost();
  }

  private String mixed() {
    return "mixed " + times(planned.runs()) + forCastings();
  }

  private String forCastings() {
    int usual = piece.typicalRun();
    String castings = " for " + count(planned.castings(), "casting");
    if (planned.castings() == (long) planned.runs() * usual) {
      return castings + ", as usual";
    }
    return castings + ", not once for " + (usual == 1 ? "each" : "every " + usual);
  }

  private String shared() {
    int lots = minutes.sharedLots(piece);
    if (lots == 0) {
      return "";
    }
    String which = lots == planned.runs() ? "" : lots + " of the ";
    return "; "
        + which
        + count(planned.runs(), "lot")
        + " shared with other pieces, which carry their part by wet mass";
  }

  private String lost() {
    BigDecimal pieces = minutes.lost(piece);
    return pieces.signum() == 0
        ? ""
        : "; "
            + pieces.setScale(1, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString()
            + " more lost than usual";
  }

  private static String times(int number) {
    return switch (number) {
      case 1 -> "once";
      case 2 -> "twice";
      default -> number + " times";
    };
  }

  private static String count(int number, String one) {
    return number + " " + one + (number == 1 ? "" : "s");
  }
}
