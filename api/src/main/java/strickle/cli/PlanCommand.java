package strickle.cli;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import strickle.book.Book;
import strickle.json.PlanFile;
import strickle.plan.Effort;
import strickle.plan.Plan;
import strickle.plan.PlanRequest;
import strickle.plan.Planning;
import strickle.plan.Progress;

/** {@code strickle plan}: lays out the week. */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    version = Version.TEXT,
    description = {
      "Lays out who pours, takes out and finishes what, and when, so that orders are met; works out"
          + " every lot; says which orders are late and why.",
      "While it looks for a better plan, Ctrl-C ends the search and shows the best so far."
    },
    footer = {
      "",
      "Examples:",
      "  strickle plan demo",
      "  strickle plan studio.json --from 2027-04-05",
      "  strickle plan studio.json --from 2027-04-05T13:00 --seconds 60 --out week.json",
      "  strickle plan studio.json --schedules 20000 --seed 7",
      "  strickle plan studio.json --cover 90",
      "  strickle plan studio.json --wait-for-materials"
    })
final class PlanCommand implements Runnable {

  private final Surroundings here;

  @Mixin private final BookArgument argument = new BookArgument();
  @Mixin private final StartOption start = new StartOption();
  @Mixin private final EffortOptions efforts = new EffortOptions();
  @Mixin private final CoverOption cover = new CoverOption();
  @Mixin private final MaterialsOptions materials = new MaterialsOptions();

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "where the search's chance begins, any whole number; 0 when left out")
  private String seed;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "write the plan to this file too, as JSON; an old one is replaced in one step")
  private String out;

  PlanCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public void run() {
    Given values = new Given();
    Optional<LocalDateTime> from = start.read(values);
    Effort effort = efforts.read(values);
    long chance = values.whole("--seed", seed, Long.MIN_VALUE, Long.MAX_VALUE).orElse(0L);
    OptionalDouble percent = cover.read(values);
    materials.read(values);
    values.done();
    Book book = argument.read();
    Optional<OutFile> file =
        Optional.ofNullable(out).map(given -> OutFile.beside(argument.file(), given));
    OffsetDateTime begin = StartOption.moment(from, argument, book, here.clock());
    PlanRequest request = new PlanRequest(begin, effort, chance).covering(percent);
    plan(book, materials.on(request, book), file);
  }

  private void plan(Book book, PlanRequest request, Optional<OutFile> file) {
    ProgressLine line = new ProgressLine(here.err());
    Planning planning = Planning.of(book, request, listener(line));
    here.interruption().arm(planning::stop);
    try {
      tell(book, laidOut(book, planning, line), file);
    } finally {
      here.interruption().disarm();
    }
  }

  private Consumer<Progress> listener(ProgressLine line) {
    return here.terminal().getAsBoolean() ? line::tell : progress -> {};
  }

  private Plan laidOut(Book book, Planning planning, ProgressLine line) {
    try {
      return MaterialsOptions.checked(book, Audited.plan(book, planning.run()));
    } finally {
      line.clear();
      if (here.interruption().came()) {
        here.err().println("strickle: stopped early; this is the best plan found so far");
      }
    }
  }

  // A plan that cannot be written is shown all the same.
  private void tell(Book book, Plan plan, Optional<OutFile> file) {
    try {
      file.ifPresent(place -> place.write(PlanFile.write(plan)));
    } finally {
      here.out().print(PlanText.of(book, plan));
    }
    file.ifPresent(place -> here.out().print("\nThe plan is written to " + place.text() + ".\n"));
  }
}
