package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.book.Book;
import strickle.json.BookFile;

/** Orders from the command line, out and in. */
class OrdersCommandsTest {

  private static final String GOOD = "O-9,2027-05-01T12:00,planter-slate,2\n";
  private static final String BAD = "O-8,2027-05-01T12:00,planter-slate,two\n";

  @TempDir Path folder;
  private Path book;
  private Path out;

  @BeforeEach
  void saveTheBook() {
    book = Shell.file(folder, "studio.json", Shell.example());
    out = folder.resolve("next.json");
  }

  private Path orders(String rows) {
    return Shell.file(folder, "orders.csv", "order,due,piece,quantity\n" + rows);
  }

  @Test
  void whatIsExportedComesBackUnchanged() throws IOException {
    Path table = folder.resolve("table.csv");
    Shell.run("export-orders", book, "--out", table).done();
    assertEquals(Files.readString(table), Shell.run("export-orders", book).done().out());
    String told = Shell.run("import-orders", book, table, "--out", out).done().out();
    assertTrue(told.startsWith("0 new orders, 0 changed, 1 as before.\n"), told);
    assertEquals(BookFile.read(book), BookFile.read(out));
  }

  @Test
  void newOrdersComeIntoTheBook() {
    String told = Shell.run("import-orders", book, orders(GOOD), "--out", out).done().out();
    assertTrue(told.startsWith("1 new order, 0 changed, 0 as before.\n"), told);
    Book next = BookFile.read(out);
    assertEquals(2, next.orders().size());
    assertEquals(2, next.order("O-9").lines().get(0).quantity());
  }

  @Test
  void aBadRowKeepsEverythingBackUnlessTheGoodOnesAreWanted() {
    Path table = orders(GOOD + BAD);
    Shell.Result refused = Shell.run("import-orders", book, table, "--out", out);
    assertEquals(2, refused.code());
    assertEquals(List.of(table + " line 3, quantity"), refused.paths());
    assertFalse(Files.exists(out));
    Shell.Result kept = Shell.run("import-orders", book, table, "--keep-good", "--out", out);
    assertEquals(2, kept.code());
    assertEquals(refused.err(), kept.err());
    assertTrue(kept.out().contains("Left out: O-8."), kept.out());
    assertEquals(
        List.of("O-104", "O-9"),
        BookFile.read(out).orders().stream().map(order -> order.id()).toList());
  }

  @Test
  void theTableIsNotWrittenOver() {
    Path table = orders(GOOD);
    Shell.Result result = Shell.run("import-orders", book, table, "--out", table);
    assertEquals(List.of("--out"), result.paths());
  }
}
