package strickle.cli;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import strickle.book.Book;
import strickle.paper.CalendarRequest;
import strickle.paper.PlanCalendar;
import strickle.plan.Plan;

/** {@code strickle calendar}: the plan for a calendar program. */
@Command(
    name = "calendar",
    mixinStandardHelpOptions = true,
    version = Version.TEXT,
    description = {
      "Writes a plan as a calendar file (RFC 5545): an event for every task, with what to weigh,"
          + " and one for the moment each order is due. Importing the calendar of a later plan"
          + " moves the events of the earlier one."
    },
    footer = {
      "",
      "Examples:",
      "  strickle calendar studio.json --plan week.json --out week.ics",
      "  strickle calendar studio.json --plan week.json --person lea --out lea.ics"
    })
final class CalendarCommand implements Runnable {

  private final Surroundings here;

  @Mixin private final BookArgument argument = new BookArgument();
  @Mixin private final PlanOption present = new PlanOption();
  @Mixin private final PersonOption person = new PersonOption();

  @Option(
      names = "--out",
      paramLabel = "FILE",
      required = true,
      description = "the calendar to write; an old one is replaced in one step")
  private String out = "";

  CalendarCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public void run() {
    Book book = argument.read();
    Optional<String> who = person.read(book);
    OutFile file = OutFile.beside(argument.file(), out);
    file.mustNotBe(present.file(), "plan");
    Plan plan = present.readUnderWay(book);
    CalendarRequest request = new CalendarRequest(who, here.clock().instant());
    file.write(PlanCalendar.text(book, plan, request));
    here.out().print("The calendar is written to " + file.text() + ".\n");
  }
}
