package strickle.cli;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.json.BoundFile;
import strickle.plan.Bounding;
import strickle.plan.Bounds;
import strickle.plan.Cover;
import strickle.plan.Effort;
import strickle.plan.Plan;
import strickle.plan.PlanRequest;
import strickle.plan.Planning;

/** {@code strickle bound}: what no plan can beat, and how far a plan is from it. */
@Command(
    name = "bound",
    mixinStandardHelpOptions = true,
    version = Version.TEXT,
    description = {
      "Says what no plan of a book can beat: for every order the earliest it could be ready if it"
          + " were alone in the studio, and for the whole book the fewest late hours and the least"
          + " handwork. With a plan also how far that is from it, and so whether planning longer"
          + " can help."
    },
    footer = {
      "",
      "Examples:",
      "  strickle bound studio.json --from 2027-04-05",
      "  strickle bound studio.json --plan week.json",
      "  strickle bound demo --json"
    })
final class BoundCommand implements Runnable {

  /** Enough for one order by itself. */
  private static final long SCHEDULES = 200;

  private final Surroundings here;

  @Mixin private final BookArgument argument = new BookArgument();
  @Mixin private final StartOption start = new StartOption();
  @Mixin private final CoverOption cover = new CoverOption();

  /** The plan may be left out, but then all of it. */
  @ArgGroup(exclusive = false)
  private PlanOption present;

  @Option(names = "--json", description = "print the bounds as JSON (strickle-bound/1)")
  private boolean json;

  BoundCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public void run() {
    Given values = new Given();
    Optional<LocalDateTime> from = start.read(values);
    OptionalDouble percent = cover.read(values);
    values.done();
    Book book = argument.read();
    Optional<Plan> plan = Optional.ofNullable(present).map(option -> option.read(book));
    if (plan.isPresent()) {
      mustGoWith(from.isPresent(), percent.isPresent());
    }
    OffsetDateTime begin =
        plan.map(Plan::from)
            .orElseGet(() -> StartOption.moment(from, argument, book, here.clock()));
    tell(book, begin, plan.map(Plan::coverPercent).orElse(percent), plan);
  }

  private static void mustGoWith(boolean from, boolean cover) {
    List<Fault> faults = new ArrayList<>();
    if (from) {
      faults.add(
          new Fault("--from", "a beginning beside --plan", "one of them: the plan has its own"));
    }
    if (cover) {
      faults.add(
          new Fault("--cover", "a cover beside --plan", "one of them: the plan has its own"));
    }
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
  }

  private void tell(Book book, OffsetDateTime begin, OptionalDouble percent, Optional<Plan> plan) {
    List<Fault> faults =
        plan.map(one -> Planning.faults(book, one))
            .orElseGet(() -> Planning.faults(book, begin, Cover.of(percent)));
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
    Bounds bounds =
        plan.map(one -> Bounding.of(book, one))
            .orElseGet(() -> Bounding.of(book, begin, Cover.of(percent)));
    PlanRequest request =
        new PlanRequest(begin, Effort.ofSchedules(SCHEDULES), 0).covering(percent);
    PlanRequest goingOn = plan.map(request::goingOn).orElse(request);
    // When each order is ready in a plan of nothing else.
    List<OffsetDateTime> alone =
        book.orders().stream().map(one -> Bounding.alone(book, goingOn, one.id())).toList();
    here.out()
        .print(
            json ? BoundFile.write(bounds, alone, plan) : BoundText.of(book, bounds, alone, plan));
  }
}
