package strickle.paper;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.regex.Pattern;
import strickle.book.Fault;
import strickle.book.Faulty;

/**
 * CSV (RFC 4180) for spreadsheets. A cell that a spreadsheet would take for a formula gets an
 * apostrophe before it on the way out, and on the way in one is taken off again.
 */
final class CsvText {

  /** More than these rows are a mistake. */
  static final int MOST_ROWS = 100_000;

  /** Bytes of a cell, far more than any field takes. */
  private static final int LONGEST_ROW = 65_536;

  private static final Pattern FORMULA = Pattern.compile("(?s)'*\\s*[=+\\-@\\t\\r\\n＝＋－＠].*");

  private static final String MARK = "\uFEFF";

  private CsvText() {}

  /**
   * A row.
   *
   * @param line the line it begins in, from 1
   * @param cells its cells as they stand there
   */
  record Row(long line, List<String> cells) {}

  /**
   * All that a text holds.
   *
   * @param semicolons whether cells are parted by ; and not by a comma
   * @param rows the rows that are not blank, the first line's included
   */
  record Sheet(boolean semicolons, List<Row> rows) {}

  /** Rows as a text, with CRLF behind each. */
  static String write(List<List<String>> rows) {
    StringWriter text = new StringWriter();
    try (CsvWriter writer = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
      rows.forEach(row -> writer.writeRecord(row.stream().map(CsvText::guarded).toList()));
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.toString();
  }

  /**
   * Takes a text apart; the separator is what its first line has more of, comma or semicolon.
   *
   * @param name what the text is called in faults
   * @throws Faulty when it is not CSV, ends within quotes, or is absurdly large
   */
  static Sheet read(String name, String text) {
    String content = text.startsWith(MARK) ? text.substring(1) : text;
    boolean semicolons = hasSemicolons(content);
    mustClose(name, OpenQuote.line(content, semicolons ? ';' : ','));
    List<Row> rows = new ArrayList<>();
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder()
            .fieldSeparator(semicolons ? ';' : ',')
            .maxBufferSize(LONGEST_ROW)
            .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
            .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
            .skipEmptyLines(true)
            .trimWhitespacesAroundQuotes(true)
            .ofCsvRecord(content)) {
      for (CsvRecord found : reader) {
        mustFit(name, rows.size());
        rows.add(row(found));
      }
    } catch (CsvParseException | IOException unreadable) {
      throw refused(name + " after line " + lastLine(rows), why(unreadable), "CSV (RFC 4180)");
    }
    rows.removeIf(row -> row.cells().stream().allMatch(String::isBlank));
    return new Sheet(semicolons, rows);
  }

  private static void mustClose(String name, OptionalLong opened) {
    if (opened.isPresent()) {
      String right = "a quote behind the cell as well, or none before it";
      throw refused(name + " line " + opened.getAsLong(), "a quote that is never closed", right);
    }
  }

  private static Row row(CsvRecord found) {
    List<String> cells = found.getFields().stream().map(CsvText::unguarded).toList();
    return new Row(found.getStartingLineNumber(), cells);
  }

  private static boolean hasSemicolons(String text) {
    String first = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
    long semicolons = first.chars().filter(sign -> sign == ';').count();
    return semicolons > first.chars().filter(sign -> sign == ',').count();
  }

  private static void mustFit(String name, int rows) {
    if (rows >= MOST_ROWS) {
      throw refused(name, "more than " + MOST_ROWS + " rows", "at most so many");
    }
  }

  private static long lastLine(List<Row> rows) {
    return rows.isEmpty() ? 0 : rows.get(rows.size() - 1).line();
  }

  private static String why(Exception unreadable) {
    Throwable deepest = unreadable;
    while (deepest.getCause() != null) {
      deepest = deepest.getCause();
    }
    return "what cannot be read as rows and cells (" + deepest.getMessage() + ")";
  }

  private static String guarded(String cell) {
    return FORMULA.matcher(cell).matches() ? "'" + cell : cell;
  }

  private static String unguarded(String cell) {
    boolean marked = cell.startsWith("'") && FORMULA.matcher(cell).matches();
    return marked ? cell.substring(1) : cell;
  }

  private static Faulty refused(String path, String found, String right) {
    return new Faulty(List.of(new Fault(path, found, right)));
  }
}
