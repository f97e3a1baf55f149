package strickle.cli;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import strickle.book.Book;
import strickle.book.Faulty;
import strickle.json.AnswerFile;
import strickle.json.CheckAnswer;
import strickle.plan.Effort;
import strickle.plan.Plan;
import strickle.plan.PlanRequest;
import strickle.plan.Planning;

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
          + " before the cure, which mixes have more pigment than their cement takes, and what its"
          + " meshes measure; that is advice, and refuses nothing."
    },
    footer = {
      "",
      "Examples:",
      "  strickle check studio.json",
      "  strickle check studio.json --from 2027-04-05",
      "  strickle check studio.json --json"
    })
final class CheckCommand implements Callable<Integer> {

  private final Surroundings here;

  @Mixin private final BookArgument argument = new BookArgument();
  @Mixin private final StartOption start = new StartOption();
  @Mixin private final CoverOption cover = new CoverOption();

  @Option(
      names = "--json",
      description = "print what was found as JSON (strickle-check/1), faults too")
  private boolean json;

  CheckCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public Integer call() {
    Given values = new Given();
    Optional<LocalDateTime> from = start.read(values);
    OptionalDouble percent = cover.read(values);
    values.done();
    return json ? data(from, percent) : text(from, percent);
  }

  private int text(Optional<LocalDateTime> from, OptionalDouble percent) {
    Book book = argument.read();
    here.out().println(sentence(book, plan(book, from, percent)));
    AdviceText.lines(book).forEach(here.out()::println);
    for (String note : BookNotes.of(book)) {
      here.out().println();
      Lines.wrap("Note: " + note + ".", Lines.WIDEST).forEach(here.out()::println);
    }
    return Outcome.DONE;
  }

  private int data(Optional<LocalDateTime> from, OptionalDouble percent) {
    CheckAnswer answer = answer(from, percent);
    here.out().print(AnswerFile.write(CheckAnswer.FORMAT, answer));
    return answer.canBePlanned() ? Outcome.DONE : Outcome.WRONG;
  }

  private CheckAnswer answer(Optional<LocalDateTime> from, OptionalDouble percent) {
    try {
      Book book = argument.read();
      return CheckAnswer.of(argument.text(), book, plan(book, from, percent));
    } catch (Faulty wrong) {
      return CheckAnswer.of(argument.text(), wrong.faults());
    }
  }

  private Plan plan(Book book, Optional<LocalDateTime> from, OptionalDouble percent) {
    OffsetDateTime begin = StartOption.moment(from, argument, book, here.clock());
    // One schedule, for what only laying out can show: a pin without room, hours that run out.
    PlanRequest request = new PlanRequest(begin, Effort.ofSchedules(1), 0).covering(percent);
    return Planning.of(book, request, progress -> {}).run();
  }

  private String sentence(Book book, Plan plan) {
    return argument.text()
        + " can be planned: "
        + Words.count(book.pieces().size(), "piece")
        + ", "
        + Words.count(book.orders().size(), "order")
        + ", "
        + Words.count(CheckAnswer.castings(plan), "casting")
        + " to pour.";
  }
}
