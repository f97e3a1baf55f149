package strickle.cli;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import strickle.book.Book;
import strickle.json.ShoppingFile;
import strickle.plan.Plan;
import strickle.supply.Shopping;
import strickle.supply.ShoppingList;

/** {@code strickle shopping}: says what to buy for a plan. */
@Command(
    name = "shopping",
    mixinStandardHelpOptions = true,
    version = Version.TEXT,
    description = {
      "Says what to buy for a plan: what it uses less what is in stock, in whole packs, with the"
          + " last day to order and the cost; what runs out first; and what begins before its"
          + " material can be there."
    },
    footer = {
      "",
      "Examples:",
      "  strickle shopping studio.json --plan week.json",
      "  strickle shopping studio.json --plan week.json --now 2027-04-02 --json",
      "  strickle shopping studio.json --plan under-way.json --counted 2027-04-07T18:00"
    })
final class ShoppingCommand implements Runnable {

  private final Surroundings here;

  @Mixin private final BookArgument argument = new BookArgument();
  @Mixin private final PlanOption present = new PlanOption();

  @Option(
      names = "--now",
      paramLabel = "DATE",
      description = {
        "from when on something can be ordered, in the studio's time zone: a date such as"
            + " 2027-04-02 or a date with a time; when left out, as the plan waits for"
            + " materials, or when it begins or was laid out anew"
      })
  private String now;

  @Option(
      names = "--counted",
      paramLabel = "DATE",
      description = {
        "when the stock in the book was counted, a date or a date with a time: what began before"
            + " has left it already; when left out, the stock is as it was before the plan began,"
            + " with what has been bought since"
      })
  private String counted;

  @Option(names = "--json", description = "print the list as JSON (strickle-shopping/1)")
  private boolean json;

  ShoppingCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public void run() {
    Given values = new Given();
    Optional<LocalDateTime> given = values.moment("--now", now);
    Optional<LocalDateTime> count = values.moment("--counted", counted);
    values.done();
    Book book = argument.read();
    Plan plan = present.read(book);
    OffsetDateTime moment =
        given.map(time -> in(book, time)).orElseGet(() -> Shopping.ordering(plan));
    ShoppingList list =
        count
            .map(time -> Shopping.counted(book, plan, moment, in(book, time)))
            .orElseGet(() -> Shopping.of(book, plan, moment));
    here.out().print(json ? ShoppingFile.write(list) : ShoppingText.of(book, list));
  }

  private static OffsetDateTime in(Book book, LocalDateTime time) {
    return time.atZone(book.studio().timeZone()).toOffsetDateTime();
  }
}
