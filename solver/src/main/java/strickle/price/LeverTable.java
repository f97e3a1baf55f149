package strickle.price;

import java.math.BigDecimal;
import java.util.List;

/**
 * Two levers together: the margin for several run sizes, each poured as a lot of its own, with ever
 * fewer minutes.
 *
 * @param minutesLessPercent by how much the minutes are shortened, a column for each
 * @param rows a row for each run size
 */
public record LeverTable(List<Integer> minutesLessPercent, List<Row> rows) {

  /**
   * One run size.
   *
   * @param castings of the run
   * @param cells one for each shortening
   */
  public record Row(int castings, List<Cell> cells) {

    /** Freezes the list. */
    public Row {
      cells = List.copyOf(cells);
    }
  }

  /**
   * What comes of both.
   *
   * @param minutes attended minutes of a good piece
   * @param marginPercent profit in percent of what the buyer pays
   * @param holds whether that is the margin wanted or more
   */
  public record Cell(BigDecimal minutes, BigDecimal marginPercent, boolean holds) {}

  /** Freezes the lists. */
  public LeverTable {
    minutesLessPercent = List.copyOf(minutesLessPercent);
    rows = List.copyOf(rows);
  }
}
