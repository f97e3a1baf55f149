package strickle.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strickle.book.Mix;
import strickle.book.Piece;
import strickle.plan.Run;

/** Adds up the runs of one piece in a plan. */
final class RunTally {

  /** What is done, and what its minutes grow with; a step may be called like any other task. */
  private record Work(String what, MinuteKind kind) {}

  private final Map<Work, BigDecimal> minutes = new LinkedHashMap<>();
  private int castings;
  private int runs;
  private int sharedLots;
  private BigDecimal good = BigDecimal.ZERO;
  private BigDecimal lost = BigDecimal.ZERO;

  /** Adds a share of what a lot takes together. */
  void lot(Mix mix, BigDecimal share, BigDecimal beyond) {
    add(StandardMinutes.mixing(mix).times(share));
    add(StandardMinutes.washing(mix).times(share));
    add(new MinuteItem("beyond the book", MinuteKind.BEYOND, beyond.multiply(share)));
  }

  /** Adds what a run takes by itself. */
  void run(List<MinuteItem> own, BigDecimal beyond) {
    own.forEach(this::add);
    add(new MinuteItem("beyond the book", MinuteKind.BEYOND, beyond));
  }

  /**
   * Counts a run and what it brings: its usual share of good pieces, and no more than are left.
   *
   * @param shared whether other pieces are poured from its lot
   */
  void pieces(Run run, Piece piece, int cavities, boolean shared) {
    castings += run.castings();
    runs++;
    sharedLots += shared ? 1 : 0;
    BigDecimal started = BigDecimal.valueOf((long) run.castings() * cavities);
    BigDecimal usual = started.multiply(Exact.fraction(piece.goodPercent()));
    BigDecimal left = started.subtract(BigDecimal.valueOf(run.scrapped())).max(BigDecimal.ZERO);
    good = good.add(usual.min(left));
    lost = lost.add(usual.subtract(usual.min(left)));
  }

  /** Whether anything good comes of these runs. */
  boolean bringsAny() {
    return good.signum() > 0;
  }

  /** The minutes of all runs that were added. */
  MinuteSplit split() {
    List<MinuteItem> items = new ArrayList<>();
    minutes.forEach((work, sum) -> items.add(new MinuteItem(work.what(), work.kind(), sum)));
    return new MinuteSplit(items, castings, runs, good);
  }

  /** Lots shared with other pieces. */
  int sharedLots() {
    return sharedLots;
  }

  /** Pieces lost beyond the usual. */
  BigDecimal lost() {
    return lost;
  }

  private void add(MinuteItem item) {
    minutes.merge(new Work(item.what(), item.kind()), item.minutes(), BigDecimal::add);
  }
}
