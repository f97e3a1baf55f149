package strickle.price;

import java.math.BigDecimal;
import java.util.List;

/**
 * The attended minutes of a piece, by what they are spent on, over some runs of it.
 *
 * @param items what they are spent on; nothing that takes no time
 * @param castings castings of these runs together, above 0
 * @param runs how many they are
 * @param good good pieces they bring, above 0; may be a fraction
 */
public record MinuteSplit(List<MinuteItem> items, int castings, int runs, BigDecimal good) {

  /** Freezes the items and leaves out those that take no time. */
  public MinuteSplit {
    items = items.stream().filter(item -> item.minutes().signum() != 0).toList();
  }

  /** All minutes of these runs. */
  public BigDecimal total() {
    return items.stream().map(MinuteItem::minutes).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** Attended minutes for one good piece. */
  public BigDecimal perGoodPiece() {
    return Exact.divide(total(), good);
  }

  /** Minutes of one kind for one good piece. */
  public BigDecimal perGoodPiece(MinuteKind kind) {
    BigDecimal minutes =
        items.stream()
            .filter(item -> item.kind() == kind)
            .map(MinuteItem::minutes)
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    return Exact.divide(minutes, good);
  }

  /** The same work with other minutes. */
  MinuteSplit withItems(List<MinuteItem> others) {
    return new MinuteSplit(others, castings, runs, good);
  }

  /** The same work when so many of its pieces turn out good. */
  MinuteSplit withGood(BigDecimal others) {
    return new MinuteSplit(items, castings, runs, others);
  }
}
