package strickle.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import strickle.book.Book;
import strickle.cure.Pace;
import strickle.cure.RoomPace;

/**
 * When waits are over, minute by minute, and the same as pieces of straight lines that give exactly
 * the same minutes, so that a linear model can say it.
 */
final class ExactWeekAges {

  /** Slopes and heights of the lines are whole numbers of this many parts of a minute. */
  static final long PARTS = 1L << 20;

  private static final double TOLERANCE_MINUTES = 1e-9 * 60;
  private static final int NEIGHBOURS = 64;

  /** The age in minutes reached at each minute, from minute 0 to the horizon. */
  private final double[] age;

  /** How fast age is gained from each minute on. */
  private final double[] pace;

  private final Map<Double, int[]> ends = new HashMap<>();

  ExactWeekAges(Book book, ExactWeekTime time, int horizon) {
    age = new double[horizon + 1];
    pace = new double[horizon + 1];
    Arrays.fill(pace, 1);
    for (Pace one : RoomPace.of(book.studio().climate(), time.zone()).paces()) {
      int from = Math.clamp(time.minute(one.from()), 0, horizon);
      Arrays.fill(pace, from, horizon + 1, one.factor());
    }
    for (int minute = 0; minute < horizon; minute++) {
      age[minute + 1] = age[minute] + pace[minute];
    }
  }

  /**
   * Part of a wait's ends: begun at minute t from {@code first} to {@code last} it is over at
   * minute e when PARTS x e is at least {@code height} + {@code slope} x (t - first), and not
   * sooner.
   */
  record Piece(int first, int last, long height, long slope) {

    boolean isShift() {
      return slope == PARTS;
    }

    /** For a shift, by how many minutes. */
    long minutes() {
      return height / PARTS - first;
    }
  }

  /** The minute a wait is over, beyond the horizon when it is over later than that. */
  int end(int from, double hours, boolean cures) {
    return cures ? ends(hours)[from] : from + wallMinutes(hours);
  }

  static int wallMinutes(double hours) {
    return Math.max(0, (int) Math.ceil(hours * 60 - TOLERANCE_MINUTES));
  }

  int horizon() {
    return age.length - 1;
  }

  private int[] ends(double hours) {
    return ends.computeIfAbsent(hours, this::compute);
  }

  private int[] compute(double hours) {
    int[] end = new int[age.length];
    int at = 0;
    for (int from = 0; from < age.length; from++) {
      at = Math.max(at, from);
      while (at < age.length && age[at] < age[from] + hours * 60 - TOLERANCE_MINUTES) {
        at++;
      }
      end[from] = at;
    }
    return end;
  }

  /** The ends of a wait begun from one minute to another, both included; the last is in time. */
  List<Piece> pieces(double hours, boolean cures, int first, int last) {
    if (!cures) {
      return List.of(new Piece(first, last, PARTS * (first + wallMinutes(hours)), PARTS));
    }
    int[] end = ends(hours);
    List<Piece> pieces = new ArrayList<>();
    for (int from = first; from <= last; ) {
      int to = from;
      while (to < last && sameSlope(end, from, to + 1)) {
        to++;
      }
      fit(end, from, to, pieces);
      from = to + 1;
    }
    return pieces;
  }

  private boolean sameSlope(int[] end, int one, int other) {
    return pace[one] == pace[other] && paceBefore(end[one]) == paceBefore(end[other]);
  }

  private double paceBefore(int end) {
    return pace[Math.max(0, Math.min(end, horizon()) - 1)];
  }

  private void fit(int[] end, int first, int last, List<Piece> pieces) {
    long about = Math.round(PARTS * pace[first] / paceBefore(end[first]));
    for (int i = 0; i <= 2 * NEIGHBOURS; i++) {
      long slope = about + (i % 2 == 0 ? i / 2 : -(i + 1) / 2);
      long low = Long.MIN_VALUE;
      long high = Long.MAX_VALUE;
      for (int from = first; from <= last; from++) {
        long most = PARTS * end[from] - slope * (from - first);
        high = Math.min(high, most);
        low = Math.max(low, most - PARTS + 1);
      }
      if (low <= high) {
        long height = slope == PARTS ? PARTS * end[first] : high;
        add(new Piece(first, last, height, slope), pieces);
        return;
      }
    }
    int middle = (first + last) / 2;
    fit(end, first, middle, pieces);
    fit(end, middle + 1, last, pieces);
  }

  /** Joins shifts by the same minutes, which a change of climate parts only in the middle. */
  private static void add(Piece piece, List<Piece> pieces) {
    Piece before = pieces.isEmpty() ? null : pieces.getLast();
    if (before != null
        && before.isShift()
        && piece.isShift()
        && before.minutes() == piece.minutes()) {
      pieces.set(
          pieces.size() - 1, new Piece(before.first(), piece.last(), before.height(), PARTS));
    } else {
      pieces.add(piece);
    }
  }

  /** The last minute a wait can begin and be over by {@code end}, or -1. */
  int latest(int end, double hours, boolean cures) {
    int from = Math.min(end, horizon());
    while (from >= 0 && end(from, hours, cures) > end) {
      from--;
    }
    return from;
  }
}
