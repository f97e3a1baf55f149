package strickle.cli;

import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import strickle.book.Book;
import strickle.book.Faulty;
import strickle.json.PlanFile;
import strickle.json.ReplanFile;
import strickle.plan.Effort;
import strickle.plan.Plan;
import strickle.plan.Replanning;
import strickle.plan.replan.ReplanRequest;
import strickle.plan.replan.Replanned;

/** {@code strickle replan}: lays out anew a plan that is under way. */
@Command(
    name = "replan",
    mixinStandardHelpOptions = true,
    version = Version.TEXT,
    description = {
      "Lays out anew a plan that is under way: what has happened stays as it was, what is about to"
          + " stays as planned, and of the rest as little moves as can be without anything getting"
          + " later for it; says what has moved, and which orders feel it.",
      "While it looks for a better plan, Ctrl-C ends the search and shows the best so far."
    },
    footer = {
      "",
      "Examples:",
      "  strickle replan studio.json --plan week.json --progress done.json --out week.json",
      "  strickle replan studio.json --plan week.json --progress done.json"
          + " --now 2027-04-07T10:00",
      "  strickle replan studio.json --plan week.json --frozen-hours 48 --schedules 20000"
    })
final class ReplanCommand implements Runnable {

  private final Surroundings here;

  @Mixin private final BookArgument argument = new BookArgument();
  @Mixin private final PlanOption present = new PlanOption();
  @Mixin private final ReplanOptions options = new ReplanOptions();
  @Mixin private final EffortOptions efforts = new EffortOptions();

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "where the search's chance begins, any whole number; 0 when left out")
  private String seed;

  @Option(names = "--json", description = "print the answer as JSON (strickle-replan/1)")
  private boolean json;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = {
        "write the new plan to this file, as JSON; it may be the file of the present plan, which is"
            + " then replaced in one step"
      })
  private String out;

  ReplanCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public void run() {
    Given values = new Given();
    options.read(values);
    Effort effort = efforts.read(values);
    long chance = values.whole("--seed", seed, Long.MIN_VALUE, Long.MAX_VALUE).orElse(0L);
    values.done();
    Book book = argument.read();
    Plan plan = present.readUnderWay(book);
    ReplanRequest request = request(book, effort, chance);
    Optional<OutFile> file = Optional.ofNullable(out).map(path -> OutFile.at("--out", path));
    file.ifPresent(one -> argument.file().ifPresent(other -> one.mustNotBe(other, "book")));
    file.ifPresent(one -> options.file().ifPresent(other -> one.mustNotBe(other, "progress")));
    tell(book, plan, request, replanned(book, plan, request), file);
  }

  private ReplanRequest request(Book book, Effort effort, long chance) {
    ZoneId zone = book.studio().timeZone();
    OffsetDateTime now = options.now(zone, here.clock());
    OffsetDateTime until = options.frozenUntil(now, zone);
    return new ReplanRequest(now, until, options.happened(), effort, chance);
  }

  private Replanned replanned(Book book, Plan plan, ReplanRequest request) {
    Replanning replanning = ready(book, plan, request);
    here.interruption().arm(replanning::stop);
    try {
      Replanned replanned = replanning.run();
      Audited.plan(book, replanned.plan());
      return replanned;
    } finally {
      here.interruption().disarm();
      if (here.interruption().came()) {
        here.err().println("strickle: stopped early; this is the best plan found so far");
      }
    }
  }

  private static Replanning ready(Book book, Plan plan, ReplanRequest request) {
    try {
      return Replanning.of(book, plan, request);
    } catch (Faulty faulty) {
      throw ReplanOptions.named(faulty);
    }
  }

  // A plan that cannot be written is shown all the same.
  private void tell(
      Book book, Plan before, ReplanRequest request, Replanned replanned, Optional<OutFile> file) {
    try {
      file.ifPresent(place -> place.write(PlanFile.write(replanned.plan())));
    } finally {
      here.out()
          .print(
              json
                  ? ReplanFile.write(request, replanned)
                  : ReplanText.of(book, before, request, replanned));
    }
    if (!json) {
      file.ifPresent(place -> here.out().print("\nThe plan is written to " + place.text() + ".\n"));
    }
  }
}
