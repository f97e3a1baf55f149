package strickle.cli;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import strickle.book.Book;
import strickle.plan.Effort;
import strickle.plan.Plan;
import strickle.plan.PlanRequest;
import strickle.plan.Planning;
import strickle.plan.Run;

/** {@code strickle check}: says whether a book can be read and planned. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    version = Version.TEXT,
    description = {
      "Reads a book and tells everything that is wrong with it, a line for each fault: fields that"
          + " cannot be read, names that lead nowhere, pieces that can never be made, pins that"
          + " cannot be kept.",
      "Of a book that can be planned it also says which routes make no sense, such as sealing"
          + " before the cure; that is advice, and refuses nothing."
    },
    footer = {
      "",
      "Examples:",
      "  strickle check studio.json",
      "  strickle check studio.json --from 2027-04-05"
    })
final class CheckCommand implements Runnable {

  private final Surroundings here;

  @Mixin private final BookArgument argument = new BookArgument();
  @Mixin private final StartOption start = new StartOption();
  @Mixin private final CoverOption cover = new CoverOption();

  CheckCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public void run() {
    Given values = new Given();
    Optional<LocalDateTime> from = start.read(values);
    OptionalDouble percent = cover.read(values);
    values.done();
    Book book = argument.read();
    OffsetDateTime begin = StartOption.moment(from, argument, book, here.clock());
    // One schedule, for what only laying out can show: a pin without room, hours that run out.
    PlanRequest request = new PlanRequest(begin, Effort.ofSchedules(1), 0).covering(percent);
    here.out().println(sentence(book, Planning.of(book, request, progress -> {}).run()));
    AdviceText.lines(book).forEach(here.out()::println);
  }

  private String sentence(Book book, Plan plan) {
    int castings =
        plan.lots().stream().flatMap(lot -> lot.runs().stream()).mapToInt(Run::castings).sum();
    return argument.text()
        + " can be planned: "
        + Words.count(book.pieces().size(), "piece")
        + ", "
        + Words.count(book.orders().size(), "order")
        + ", "
        + Words.count(castings, "casting")
        + " to pour.";
  }
}
