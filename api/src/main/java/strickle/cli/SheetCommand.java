package strickle.cli;

import java.time.LocalDate;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import strickle.book.Book;
import strickle.paper.DaySheet;
import strickle.paper.PageSize;
import strickle.paper.SheetRequest;
import strickle.plan.Plan;

/** {@code strickle sheet}: day sheets for the bench. */
@Command(
    name = "sheet",
    mixinStandardHelpOptions = true,
    version = Version.TEXT,
    description = {
      "Writes day sheets as a PDF to print: for each day and person the tasks in order with a box"
          + " to tick, a card to weigh by for every pour, ballast, what becomes ready, the room,"
          + " and what to be careful of. Black on white, in large figures."
    },
    footer = {
      "",
      "Examples:",
      "  strickle sheet studio.json --plan week.json --out week.pdf",
      "  strickle sheet studio.json --plan week.json --day 2027-04-06 --person lea --out lea.pdf",
      "  strickle sheet studio.json --plan week.json --paper letter --out week.pdf"
    })
final class SheetCommand implements Runnable {

  private static final String DAY = "--day";

  private final Surroundings here;

  @Mixin private final BookArgument argument = new BookArgument();
  @Mixin private final PlanOption present = new PlanOption();
  @Mixin private final PersonOption person = new PersonOption();
  @Mixin private final PaperOption paper = new PaperOption();

  @Option(
      names = DAY,
      paramLabel = "DATE",
      description = "only this day, such as 2027-04-05; every day of the plan when left out")
  private String day;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      required = true,
      description = "the PDF to write; an old one is replaced in one step")
  private String out = "";

  SheetCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public void run() {
    Given values = new Given();
    Optional<LocalDate> date = values.date(DAY, day);
    PageSize size = paper.read(values);
    values.done();
    Book book = argument.read();
    Optional<String> who = person.read(book);
    OutFile file = OutFile.beside(argument.file(), out);
    file.mustNotBe(present.file(), "plan");
    Plan plan = present.readUnderWay(book);
    file.write(DaySheet.pdf(book, plan, new SheetRequest(date, who, size)));
    here.out().print("The day sheets are written to " + file.text() + ".\n");
  }
}
