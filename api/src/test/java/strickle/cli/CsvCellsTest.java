package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class CsvCellsTest {

  @Test
  void quotedCellsHoldQuotesSeparatorsAndLineEnds() {
    // RFC 4180, §2.
    List<CsvCells.Row> rows =
        CsvCells.rows("\"aaa\",\"b\"\"bb\",\"c,c\"\r\nx,\"two\r\nlines\",z\r\n\r\nlast,,");
    assertEquals(
        List.of(
            new CsvCells.Row(1, List.of("aaa", "b\"bb", "c,c")),
            new CsvCells.Row(2, List.of("x", "two\nlines", "z")),
            new CsvCells.Row(5, List.of("last", "", ""))),
        rows);
  }

  @Test
  void theFirstLineSaysWhatSeparates() {
    assertEquals(
        List.of(new CsvCells.Row(1, List.of("a", "b")), new CsvCells.Row(2, List.of("1,5", "2"))),
        CsvCells.rows("a;b\n 1,5 ;2\n"));
  }

  @Test
  void blankLinesAreNoRows() {
    assertEquals(List.of(), CsvCells.rows("\n  \n\r\n"));
    assertEquals(List.of(new CsvCells.Row(3, List.of("a"))), CsvCells.rows("\n\na\n\n"));
  }
}
