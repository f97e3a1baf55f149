package strickle.cli;

import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import strickle.book.Book;
import strickle.book.Faulty;
import strickle.json.BookFile;
import strickle.json.TextFile;
import strickle.paper.OrderImport;
import strickle.paper.OrderTable;

/** {@code strickle import-orders}: orders from a spreadsheet into a book. */
@Command(
    name = "import-orders",
    mixinStandardHelpOptions = true,
    version = Version.TEXT,
    description = {
      "Reads orders from a CSV file, a row for each line of an order, and writes the book with them"
          + " in it. An order the book has already is replaced. Every bad row is told with its line"
          + " and column, and then nothing is written, or with --keep-good all but the orders with"
          + " a bad row."
    },
    footer = {
      "",
      "Columns: order, due, piece, quantity; and for, kind, weight, price as you like.",
      "",
      "Examples:",
      "  strickle import-orders studio.json orders.csv --out next.json",
      "  strickle import-orders studio.json orders.csv --keep-good --out next.json"
    })
final class ImportOrdersCommand implements Runnable {

  private static final String ORDERS = "ORDERS";
  private static final String RIGHT = "a CSV file of orders";

  private final Surroundings here;

  @Mixin private final BookArgument argument = new BookArgument();

  @Parameters(index = "1", paramLabel = ORDERS, description = "the CSV file with the orders")
  private String orders = "";

  @Option(
      names = "--keep-good",
      description = "write the good orders even when others are bad; the exit code is then 2")
  private boolean keepGood;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      required = true,
      description =
          "the book to write; it may be the one that is read, and is replaced in one step")
  private String out = "";

  ImportOrdersCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public void run() {
    Book book = argument.read();
    OutFile file = OutFile.at(out);
    Path table = Paths.ofFile(ORDERS, orders, RIGHT);
    file.mustNotBe(table, "file of orders");
    OrderImport read = OrderTable.read(book, orders, TextFile.read(table, ORDERS, RIGHT));
    if (read.faults().isEmpty() || keepGood) {
      file.write(BookFile.write(read.into(book)));
      here.out().print(summary(book, read, file));
    }
    if (!read.faults().isEmpty()) {
      throw new Faulty(read.faults());
    }
  }

  private static String summary(Book book, OrderImport read, OutFile file) {
    long added = read.added(book);
    long changed = read.changed(book);
    long same = read.orders().size() - added - changed;
    String left =
        read.leftOut().isEmpty() ? "" : " Left out: " + String.join(", ", read.leftOut()) + ".";
    return Words.count(added, "new order")
        + ", "
        + changed
        + " changed, "
        + same
        + " as before."
        + left
        + "\nThe book is written to "
        + file.text()
        + ".\n";
  }
}
