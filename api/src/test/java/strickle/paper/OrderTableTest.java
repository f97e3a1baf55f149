package strickle.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import strickle.book.Book;
import strickle.book.Faulty;
import strickle.book.Line;
import strickle.book.Order;

class OrderTableTest {

  private static final Book BOOK = Papers.BOOK;
  private static final String PIECE = BOOK.pieces().get(0).id();
  private static final String FIRST = "order,for,kind,due,weight,piece,quantity,price\r\n";
  private static final String GOOD =
      "O-1,a café,custom,2027-04-16T17:00,2.5," + PIECE + ",4,68.00\n";

  private static OrderImport read(String csv) {
    return OrderTable.read(BOOK, "orders.csv", csv);
  }

  private static List<String> faults(String csv) {
    return read(csv).faults().stream().map(Object::toString).toList();
  }

  @Test
  void whatIsWrittenIsReadAgain() {
    assertEquals(BOOK.orders(), read(OrderTable.write(BOOK)).orders());
  }

  @Test
  void anyOrdersComeBackAsTheyWere() {
    Random chance = new Random(1);
    for (int round = 0; round < 300; round++) {
      List<Order> orders = new ArrayList<>();
      for (int i = 0; i < 1 + chance.nextInt(5); i++) {
        orders.add(order(chance, "O" + i));
      }
      OrderImport read = read(OrderTable.write(BOOK.withOrders(orders)));
      assertEquals(List.of(), read.faults());
      assertEquals(orders, read.orders());
    }
  }

  private static Order order(Random chance, String id) {
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < 1 + chance.nextInt(3); i++) {
      String piece = BOOK.pieces().get(chance.nextInt(BOOK.pieces().size())).id();
      Optional<BigDecimal> price =
          chance.nextBoolean() ? Optional.empty() : Optional.of(decimal(chance, 2));
      lines.add(new Line(piece, 1 + chance.nextInt(100), price));
    }
    LocalDateTime due = LocalDateTime.of(2027, 1, 1, 0, 0).plusMinutes(chance.nextInt(500_000));
    return new Order(
        text(chance).strip() + "x" + id,
        text(chance),
        text(chance),
        due,
        decimal(chance, 3),
        lines);
  }

  private static BigDecimal decimal(Random chance, int digits) {
    return BigDecimal.valueOf(chance.nextInt(100_000), digits);
  }

  /** A text of signs that a table or a spreadsheet could take amiss. */
  private static String text(Random chance) {
    String signs = "=+-@',;\"'=  aé🪨＝";
    StringBuilder text = new StringBuilder();
    int[] points = signs.codePoints().toArray();
    for (int i = 0; i < chance.nextInt(8); i++) {
      text.appendCodePoint(points[chance.nextInt(points.length)]);
    }
    return text.toString();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"=1+1", "+1", "-1", "@sum", "\tx", "\rx", "\n=x", " =1", "'=1", "''@", "＝1"})
  void nothingASpreadsheetWouldWorkOutLeavesUnguarded(String text) {
    String csv = CsvText.write(List.of(List.of(text, "b")));
    assertTrue(csv.startsWith("'") || csv.startsWith("\"'"), csv);
    assertEquals(text, CsvText.read("t", csv).rows().get(0).cells().get(0));
  }

  @ParameterizedTest
  @ValueSource(strings = {"a=1", "O-1", "'tis", "", "a-b", "1"})
  void plainTextsStayAsTheyAre(String text) {
    assertEquals(text + ",b\r\n", CsvText.write(List.of(List.of(text, "b"))));
  }

  @Test
  void columnsComeInAnyOrderAndOnlyFourAreNeeded() {
    OrderImport read = read("Quantity, piece ,DUE,order\n4," + PIECE + ",2027-04-16 17:00,O-1\n");
    Order order = read.orders().get(0);
    assertEquals("O-1", order.id());
    assertEquals(BigDecimal.ONE, order.weight());
    assertEquals(new Line(PIECE, 4, Optional.empty()), order.lines().get(0));
    assertEquals(LocalDateTime.of(2027, 4, 16, 17, 0), order.due());
  }

  @Test
  void semicolonsAMarkAndDecimalCommasAreUnderstood() {
    String csv = "\uFEFF" + (FIRST + GOOD).replace(',', ';').replace("68.00", "68,00");
    assertEquals(read(FIRST + GOOD).orders(), read(csv).orders());
    assertEquals(List.of(), read(csv).faults());
  }

  @Test
  void whatBelongsToTheOrderMayStandInOneRowOnly() {
    OrderImport read = read(FIRST + GOOD + "O-1,,,,," + PIECE + ",2,\n");
    assertEquals(List.of(), read.faults());
    assertEquals(2, read.orders().get(0).lines().size());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "quantity|4|0|\"orders.csv line 3, quantity: found 0;",
        "quantity|4|four|orders.csv line 3, quantity: found \"four\"; right would be a whole"
            + " number",
        "price|68.00|68,0|orders.csv line 3: found 9 cells; right would be 8",
        "price|68.00|-1|orders.csv line 3, price: found \"-1\"; right would be a number",
        "due|2027-04-16T17:00|16.4.2027|orders.csv line 3, due: found \"16.4.2027\"",
        "due|2027-04-16T17:00|2027-04-16T17:00:30|orders.csv line 3, due: found 2027",
        "weight|2.5|much|orders.csv line 3, weight: found \"much\"",
        "weight|2.5|2000000|orders.csv line 3, weight: found 2000000",
      })
  void aBadCellIsToldWithItsLineAndColumn(String column, String good, String bad, String fault) {
    String row = GOOD.replace("O-1", "O-2").replace("," + good, "," + bad);
    assertFalse(GOOD.replace("O-1", "O-2").equals(row), column);
    List<String> faults = faults(FIRST + GOOD + row);
    assertEquals(1, faults.size(), faults.toString());
    assertTrue(faults.get(0).startsWith(fault.replace("\"orders", "orders")), faults.get(0));
    assertEquals(List.of("O-2"), read(FIRST + GOOD + row).leftOut());
    assertEquals(1, read(FIRST + GOOD + row).orders().size());
  }

  @Test
  void aPieceOfNoBookIsToldWithTheNearest() {
    String wrong = PIECE + "x";
    List<String> faults = faults(FIRST + GOOD.replace(PIECE, wrong));
    assertEquals(
        List.of(
            "orders.csv line 2, piece: found \""
                + wrong
                + "\"; right would be the id of a piece in the book, maybe "
                + PIECE),
        faults);
  }

  @Test
  void rowsOfAnOrderHaveToAgree() {
    List<String> faults = faults(FIRST + GOOD + GOOD.replace("a café", "a shop"));
    assertEquals(
        List.of(
            "orders.csv line 3, for: found \"a shop\"; right would be \"a café\" as in orders.csv"
                + " line 2, or nothing"),
        faults);
  }

  @Test
  void linesAreCountedAsAPersonSeesThem() {
    String csv =
        FIRST + GOOD.replace("a café", "\"two\nlines\"") + "\n" + GOOD.replace(",4,", ",x,");
    assertEquals("orders.csv line 5, quantity", read(csv).faults().get(1).path());
  }

  @Test
  void aTableThatEndsWithinQuotesIsRefusedWithTheLineWhereTheyBegin() {
    String open = GOOD.replace("a café", "\"a café");
    String right =
        ": found a quote that is never closed; right would be a quote behind the cell as well, or"
            + " none before it";
    for (String good : List.of(GOOD, "", GOOD.replace("a café", "\"two\nlines \"\"x\"\"\""))) {
      String csv = FIRST + good + open + GOOD.repeat(7);
      long line = (FIRST + good).lines().count() + 1;
      Faulty faulty = assertThrows(Faulty.class, () -> read(csv));
      assertEquals("orders.csv line " + line + right, faulty.faults().get(0).toString());
      String semicolons = csv.replace(',', ';').replace("68.00", "68,00");
      assertThrows(Faulty.class, () -> read(semicolons));
    }
    Faulty last = assertThrows(Faulty.class, () -> read(FIRST + GOOD + "\"O-2"));
    assertEquals("orders.csv line 3", last.faults().get(0).path());
  }

  @ParameterizedTest
  @ValueSource(strings = {"5\" wide", "\"\"", "\"\"\"\"", " \"a, b\" ", "\"a\"\"\""})
  void aQuoteWithinACellOpensNothing(String cell) {
    assertEquals(
        List.of(), faults(FIRST + GOOD.replace("a café", cell) + GOOD.replace("O-1", "O-2")));
  }

  @Test
  void aRowOfNoOrderIsToldAndHarmsNoOther() {
    OrderImport read = read(FIRST + GOOD + GOOD.replace("O-1", ""));
    assertEquals("orders.csv line 3, order", read.faults().get(0).path());
    assertEquals(List.of(), read.leftOut());
    assertEquals(1, read.orders().size());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "''|orders.csv: found an empty file",
        "order,due,piece|orders.csv line 1: found no \"quantity\"",
        "order,due,piece,quantity,prise|orders.csv line 1: found \"prise\"",
        "order,due,piece,quantity,order|orders.csv line 1: found \"order\" twice",
        "order,due,piece,quantity|orders.csv: found a first line and nothing below it",
      })
  void atLeastTheFourColumnsAndNoOthers(String csv, String fault) {
    Faulty faulty = assertThrows(Faulty.class, () -> read(csv));
    assertTrue(faulty.faults().get(0).toString().startsWith(fault), faulty.getMessage());
  }

  @Test
  void absurdlyLargeTablesAreRefused() {
    Faulty cell = assertThrows(Faulty.class, () -> read(FIRST + "x".repeat(200_000) + "\n"));
    assertTrue(cell.getMessage().startsWith("orders.csv"), cell.getMessage());
    Faulty rows = assertThrows(Faulty.class, () -> read(FIRST + "a,b\n".repeat(100_001)));
    assertTrue(rows.getMessage().contains("more than 100000 rows"), rows.getMessage());
  }

  @Test
  void aKnownOrderIsReplacedWhereItStandsAndANewOneComesLast() {
    Order known = BOOK.orders().get(1);
    String csv = FIRST + GOOD + GOOD.replace("O-1", known.id());
    OrderImport read = read(csv);
    Book book = read.into(BOOK);
    assertEquals(BOOK.orders().size() + 1, book.orders().size());
    assertEquals("a café", book.orders().get(1).buyer());
    assertEquals("O-1", book.orders().get(BOOK.orders().size()).id());
    assertEquals(1, read.added(BOOK));
    assertEquals(1, read.changed(BOOK));
  }
}
