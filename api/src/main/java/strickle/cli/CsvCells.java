package strickle.cli;

import java.util.ArrayList;
import java.util.List;

/**
 * Takes a text apart into rows and cells, as RFC 4180 has them: cells in double quotes may hold the
 * separator, line ends and double quotes written twice.
 */
final class CsvCells {

  private static final char QUOTE = '"';

  /**
   * A row.
   *
   * @param line the line it begins in, from 1
   * @param cells its cells, without spaces at their ends
   */
  record Row(int line, List<String> cells) {}

  private final String text;
  private final char separator;
  private final List<Row> rows = new ArrayList<>();
  private final StringBuilder cell = new StringBuilder();
  private List<String> cells = new ArrayList<>();
  private int line = 1;
  private int began = 1;
  private boolean quoted;

  private CsvCells(String text, char separator) {
    this.text = text;
    this.separator = separator;
  }

  /** The rows of a text that are not blank; the separator is what its first line has of ; and ,. */
  static List<Row> rows(String text) {
    return new CsvCells(
            text.replace("\r\n", "\n").replace('\r', '\n'), semicolons(text) ? ';' : ',')
        .rows();
  }

  /** Whether cells are parted by semicolons, as where numbers have a decimal comma. */
  static boolean semicolons(String text) {
    return text.lines().findFirst().orElse("").contains(";");
  }

  private List<Row> rows() {
    for (int i = 0; i < text.length(); i++) {
      char one = text.charAt(i);
      if (quoted && one == QUOTE && i + 1 < text.length() && text.charAt(i + 1) == QUOTE) {
        cell.append(QUOTE);
        i++;
      } else {
        take(one);
      }
    }
    endRow();
    return rows;
  }

  private void take(char one) {
    if (one == QUOTE && (quoted || cell.toString().isBlank())) {
      quoted = !quoted;
    } else if (one == separator && !quoted) {
      endCell();
    } else if (one == '\n' && !quoted) {
      endRow();
      began = line + 1;
    } else {
      cell.append(one);
    }
    line += one == '\n' ? 1 : 0;
  }

  private void endCell() {
    cells.add(cell.toString().strip());
    cell.setLength(0);
  }

  private void endRow() {
    endCell();
    if (cells.size() > 1 || !cells.get(0).isEmpty()) {
      rows.add(new Row(began, List.copyOf(cells)));
    }
    cells = new ArrayList<>();
  }
}
