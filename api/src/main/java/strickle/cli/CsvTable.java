package strickle.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.json.TextFile;

/** A table with named columns, read from a CSV file; what is wrong is told with its line. */
final class CsvTable {

  private final List<Row> rows;

  /**
   * A row of the table.
   *
   * @param file the file as it was given
   * @param line the line it begins in, from 1
   * @param cells its cells by their columns
   * @param commas whether numbers may have a decimal comma, as cells are parted by semicolons
   */
  record Row(String file, int line, Map<String, String> cells, boolean commas) {

    private static final String DECIMAL_COMMA = "(?<=[0-9]),(?=[0-9])";

    /** A cell's text. */
    String cell(String column) {
      return cells.get(column);
    }

    /** The text of a cell that holds a number, with a decimal point. */
    String number(String column) {
      return commas ? cell(column).replaceAll(DECIMAL_COMMA, ".") : cell(column);
    }

    /** Where a cell is: "log.csv line 3, mass". */
    String where(String column) {
      return file + " line " + line + ", " + column;
    }
  }

  private CsvTable(List<Row> rows) {
    this.rows = rows;
  }

  /**
   * Reads a file.
   *
   * @param argument the argument it was given for
   * @param given its path
   * @param headers what its first line may be: lists of columns, in any order
   * @throws Faulty when it cannot be read, has another first line, no rows below it, or rows with
   *     more or fewer cells
   */
  static CsvTable read(String argument, String given, List<List<String>> headers) {
    String right = "a CSV file whose first line is " + words(headers);
    String text = TextFile.read(Paths.ofFile(argument, given, right), argument, right);
    List<CsvCells.Row> found = CsvCells.rows(text);
    if (found.isEmpty()) {
      throw refused(argument, "an empty file", right);
    }
    List<String> columns =
        found.get(0).cells().stream().map(name -> name.toLowerCase(Locale.ROOT)).toList();
    if (headers.stream().noneMatch(header -> same(header, columns))) {
      String line = "\"" + String.join(",", found.get(0).cells()) + "\"";
      throw refused(given + " line " + found.get(0).line(), shortened(line), words(headers));
    }
    if (found.size() == 1) {
      throw refused(given, "a first line and nothing below it", "a line for each measurement");
    }
    return new CsvTable(
        named(given, columns, found.subList(1, found.size()), CsvCells.semicolons(text)));
  }

  private static boolean same(List<String> header, List<String> columns) {
    return columns.size() == header.size() && columns.containsAll(header);
  }

  private static List<Row> named(
      String file, List<String> columns, List<CsvCells.Row> found, boolean commas) {
    List<Row> rows = new ArrayList<>();
    List<Fault> faults = new ArrayList<>();
    for (CsvCells.Row one : found) {
      if (one.cells().size() == columns.size()) {
        Map<String, String> cells = new TreeMap<>();
        for (int i = 0; i < columns.size(); i++) {
          cells.put(columns.get(i), one.cells().get(i));
        }
        rows.add(new Row(file, one.line(), Map.copyOf(cells), commas));
      } else {
        String cells = Words.count(one.cells().size(), "cell");
        String right = columns.size() + ", as in the first line";
        faults.add(new Fault(file + " line " + one.line(), cells, right));
      }
    }
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
    return rows;
  }

  /** The rows below the first line; at least one. */
  List<Row> rows() {
    return rows;
  }

  /** Whether there is such a column. */
  boolean has(String column) {
    return rows.get(0).cells().containsKey(column);
  }

  private static String words(List<List<String>> headers) {
    return headers.stream()
        .map(header -> '"' + String.join(",", header) + '"')
        .reduce((one, other) -> one + " or " + other)
        .orElseThrow();
  }

  private static String shortened(String text) {
    return text.length() <= 80 ? text : text.substring(0, 79) + "…";
  }

  private static Faulty refused(String path, String found, String right) {
    return new Faulty(List.of(new Fault(path, found, right)));
  }
}
