package strickle.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import strickle.book.Book;
import strickle.book.Piece;
import strickle.price.CostComparison.LineComparison;
import strickle.price.CostComparison.Reason;

/** Puts what a piece costs as planned beside what it costs by its typical run. */
final class Comparing {

  private final PieceModel model;
  private final MinuteSplit standard;
  private final MinuteSplit planned;
  private final DifferenceWords words;

  private Comparing(Book book, Piece piece, PlannedMinutes minutes, MinuteSplit planned) {
    this.model = PieceModel.of(book, piece);
    this.standard = new StandardMinutes(book).split(piece);
    this.planned = planned;
    this.words = new DifferenceWords(piece, planned, minutes);
  }

  /**
   * The comparison of one piece.
   *
   * @param planned its minutes in the plan
   */
  static CostComparison of(Book book, Piece piece, PlannedMinutes minutes, MinuteSplit planned) {
    return new Comparing(book, piece, minutes, planned).compare();
  }

  private CostComparison compare() {
    UnitCost before = model.cost(standard.perGoodPiece());
    UnitCost after = model.cost(planned.perGoodPiece());
    return new CostComparison(
        Exact.atTheDoor(before.minutes()),
        Exact.atTheDoor(before.full()),
        Exact.atTheDoor(after.full().subtract(before.full())),
        lines(before.lines(), after.lines()),
        reasons());
  }

  private static List<LineComparison> lines(List<ExactLine> before, List<ExactLine> after) {
    List<BigDecimal> standard = amounts(before);
    List<BigDecimal> planned = amounts(after);
    List<BigDecimal> more =
        IntStream.range(0, before.size())
            .mapToObj(i -> planned.get(i).subtract(standard.get(i)))
            .toList();
    List<BigDecimal> roundedStandard = LargestRemainder.round(standard);
    List<BigDecimal> roundedPlanned = LargestRemainder.round(planned);
    List<BigDecimal> roundedMore = LargestRemainder.round(more);
    return IntStream.range(0, before.size())
        .mapToObj(
            i ->
                new LineComparison(
                    before.get(i).what(),
                    before.get(i).kind(),
                    roundedStandard.get(i),
                    roundedPlanned.get(i),
                    roundedMore.get(i)))
        .toList();
  }

  private static List<BigDecimal> amounts(List<ExactLine> lines) {
    return lines.stream().map(ExactLine::amount).toList();
  }

  private List<Reason> reasons() {
    Map<MinuteKind, BigDecimal> more = new EnumMap<>(MinuteKind.class);
    for (MinuteKind kind : MinuteKind.values()) {
      BigDecimal minutes = planned.perGoodPiece(kind).subtract(standard.perGoodPiece(kind));
      if (Exact.atTheDoor(minutes).signum() != 0) {
        more.put(kind, minutes);
      }
    }
    List<BigDecimal> amounts =
        LargestRemainder.round(
            more.values().stream().map(model.rates().perMinute()::multiply).toList());
    List<Reason> reasons = new ArrayList<>();
    more.forEach(
        (kind, minutes) ->
            reasons.add(
                new Reason(
                    kind,
                    Exact.atTheDoor(minutes),
                    amounts.get(reasons.size()),
                    words.why(kind, minutes))));
    return reasons;
  }
}
