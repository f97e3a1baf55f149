package strickle.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * Rows of cells under each other, each column as wide as its widest cell up to a limit; longer
 * cells are broken into lines. Headings may stand between the rows.
 */
final class Table {

  private static final String GAP = "  ";

  private final String indent;
  private final List<Column> columns;
  private final List<Entry> entries = new ArrayList<>();

  /** A table that is indented and has these columns. */
  Table(String indent, Column... columns) {
    this.indent = indent;
    this.columns = List.of(columns);
  }

  /**
   * A column.
   *
   * @param least its least width, so that tables under each other look alike
   * @param most its widest
   * @param right whether its cells stand at its right edge, as numbers do
   */
  record Column(int least, int most, boolean right) {

    /** For words. */
    static Column left(int most) {
      return new Column(0, most, false);
    }

    /** For numbers. */
    static Column right(int least, int most) {
      return new Column(least, most, true);
    }
  }

  private record Entry(List<String> cells, boolean heading) {}

  /** Adds a row, a cell for each column; missing ones at its end are empty. */
  Table row(String... cells) {
    entries.add(new Entry(Arrays.asList(cells), false));
    return this;
  }

  /** Adds a line that stands as it is. */
  Table heading(String line) {
    entries.add(new Entry(List.of(line), true));
    return this;
  }

  /** The lines of the table. */
  List<String> lines() {
    int[] widths = widths();
    return entries.stream()
        .flatMap(entry -> entry.heading() ? entry.cells().stream() : lines(entry.cells(), widths))
        .toList();
  }

  private int[] widths() {
    int[] widths = columns.stream().mapToInt(Column::least).toArray();
    for (Entry entry : entries) {
      for (int i = 0; i < entry.cells().size() && !entry.heading(); i++) {
        int width = Math.min(columns.get(i).most(), Width.of(entry.cells().get(i)));
        widths[i] = Math.max(widths[i], width);
      }
    }
    return widths;
  }

  private Stream<String> lines(List<String> cells, int[] widths) {
    List<List<String>> broken = new ArrayList<>();
    for (int i = 0; i < cells.size(); i++) {
      broken.add(Lines.wrap(cells.get(i), Math.max(1, widths[i])));
    }
    int height = broken.stream().mapToInt(List::size).max().orElse(0);
    return Stream.iterate(0, at -> at < height, at -> at + 1).map(at -> line(broken, widths, at));
  }

  private String line(List<List<String>> broken, int[] widths, int at) {
    StringBuilder line = new StringBuilder(indent);
    for (int i = 0; i < broken.size(); i++) {
      String cell = at < broken.get(i).size() ? broken.get(i).get(at) : "";
      String space = " ".repeat(Math.max(0, widths[i] - Width.of(cell)));
      line.append(i == 0 ? "" : GAP);
      line.append(columns.get(i).right() ? space + cell : cell + space);
    }
    return line.toString().stripTrailing();
  }
}
