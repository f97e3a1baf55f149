package strickle.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import strickle.book.Book;
import strickle.book.Channel;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.paper.PageSize;
import strickle.paper.PriceList;

/** {@code strickle price-list}: the list prices, to hand out. */
@Command(
    name = "price-list",
    mixinStandardHelpOptions = true,
    version = Version.TEXT,
    description = {
      "Writes the list prices of the book's pieces as a PDF to print, or as CSV for a spreadsheet."
          + " For a channel with a discount its own prices stand beside them. What a piece costs is"
          + " not on it."
    },
    footer = {
      "",
      "Examples:",
      "  strickle price-list studio.json --out prices.pdf",
      "  strickle price-list studio.json --channel shop --paper letter --out shop.pdf",
      "  strickle price-list studio.json --csv --out prices.csv"
    })
final class PriceListCommand implements Runnable {

  private static final String CHANNEL = "--channel";

  private final Surroundings here;

  @Mixin private final BookArgument argument = new BookArgument();
  @Mixin private final PaperOption paper = new PaperOption();

  @Option(
      names = CHANNEL,
      paramLabel = "ID",
      description = "with the prices of this channel of the book beside the list prices")
  private String channel;

  @Option(names = "--csv", description = "write CSV in place of a PDF")
  private boolean csv;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      required = true,
      description = "the file to write; an old one is replaced in one step")
  private String out = "";

  PriceListCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public void run() {
    Given values = new Given();
    PageSize size = paper.read(values);
    values.done();
    Book book = argument.read();
    Optional<String> to = channel(book);
    OutFile file = OutFile.beside(argument.file(), out);
    if (csv) {
      file.write(PriceList.csv(book, to));
    } else {
      LocalDate today = LocalDate.now(here.clock().withZone(book.studio().timeZone()));
      file.write(PriceList.pdf(book, to, today, size));
    }
    here.out().print("The price list is written to " + file.text() + ".\n");
  }

  private Optional<String> channel(Book book) {
    List<String> channels = book.channels().stream().map(Channel::id).toList();
    if (channel != null && !channels.contains(channel)) {
      String right =
          channels.isEmpty()
              ? "no channel, as the book has none"
              : "a channel of the book: " + String.join(", ", channels);
      throw new Faulty(List.of(new Fault(CHANNEL, '"' + channel + '"', right)));
    }
    return Optional.ofNullable(channel);
  }
}
