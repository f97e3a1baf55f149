package strickle.bench;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import strickle.book.Fault;
import strickle.book.Faulty;

/** Best-known values: a table with commas between its cells and one row for each instance. */
final class Table {

  private static final String KEY = "instance";

  private final Map<String, Map<String, Integer>> rows = new HashMap<>();

  private Table() {}

  /**
   * Reads a table whose first line names its columns, "instance" among them.
   *
   * @param columns the columns to read as whole numbers from 1; others are left alone
   * @throws Faulty naming the line
   */
  static Table read(Lines lines, List<String> columns) {
    List<String> header = cells(lines.next("a line with the names of columns"));
    lines.must(
        header.contains(KEY) && header.containsAll(columns),
        String.join(",", header),
        "columns " + KEY + ", " + String.join(", ", columns));
    Table table = new Table();
    while (lines.more()) {
      table.add(lines, header, columns);
    }
    return table;
  }

  private void add(Lines lines, List<String> header, List<String> columns) {
    String line = lines.next("");
    List<String> row = cells(line);
    lines.must(row.size() == header.size(), line, "a cell for each of the columns " + header);
    Map<String, Integer> values =
        columns.stream()
            .collect(Collectors.toMap(c -> c, c -> positive(lines, row.get(header.indexOf(c)))));
    String key = row.get(header.indexOf(KEY));
    lines.must(rows.put(key, values) == null, key, "each instance once");
  }

  private static int positive(Lines lines, String text) {
    int number = lines.number(text);
    lines.must(number > 0, text, "a whole number from 1");
    return number;
  }

  /**
   * The value of an instance in one of the columns read.
   *
   * @throws Faulty when there is no such row
   */
  int value(String instance, String column) {
    Map<String, Integer> row = rows.get(instance);
    if (row == null) {
      String right = "a row for it among the best-known values";
      throw new Faulty(List.of(new Fault("--best-known", "nothing about " + instance, right)));
    }
    return row.get(column);
  }

  private static List<String> cells(String line) {
    return Arrays.asList(Lines.cells(line, ","));
  }
}
