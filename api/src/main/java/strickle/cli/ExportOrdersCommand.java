package strickle.cli;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import strickle.paper.OrderTable;

/** {@code strickle export-orders}: the orders of a book for a spreadsheet. */
@Command(
    name = "export-orders",
    mixinStandardHelpOptions = true,
    version = Version.TEXT,
    description = {
      "Writes the orders of a book as CSV, a row for each line of an order, as import-orders reads"
          + " them. A text that a spreadsheet would take for a formula gets an apostrophe before"
          + " it."
    },
    footer = {
      "",
      "Examples:",
      "  strickle export-orders studio.json",
      "  strickle export-orders studio.json --out orders.csv"
    })
final class ExportOrdersCommand implements Runnable {

  private final Surroundings here;

  @Mixin private final BookArgument argument = new BookArgument();

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "write the orders to this file; to standard output when left out")
  private String out;

  ExportOrdersCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public void run() {
    String text = OrderTable.write(argument.read());
    Optional<OutFile> file =
        Optional.ofNullable(out).map(given -> OutFile.beside(argument.file(), given));
    file.ifPresentOrElse(place -> place.write(text), () -> here.out().print(text));
  }
}
