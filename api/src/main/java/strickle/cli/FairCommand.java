package strickle.cli;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.json.FairFile;
import strickle.json.PlanFile;
import strickle.price.fair.FairAnswer;
import strickle.price.fair.FairBuilding;
import strickle.price.fair.FairRequest;

/** {@code strickle fair}: says what to bring to a fair. */
@Command(
    name = "fair",
    mixinStandardHelpOptions = true,
    version = Version.TEXT,
    description = {
      "Says how many of each piece to bring to a fair, from how many may sell, what each is worth"
          + " sold and unsold, and what forms, hours, materials and open orders allow; and plans"
          + " it, so that all of it is ready before the fair opens."
    },
    footer = {
      "",
      "Examples:",
      "  strickle fair studio.json --fair spring-fair",
      "  strickle fair studio.json --fair spring-fair --budget 60 --plan-out week.json",
      "  strickle fair studio.json --fair spring-fair --write new-studio.json"
    })
final class FairCommand implements Runnable {

  private static final String BUDGET = "--budget";
  private static final String NOW = "--now";
  private static final String SCHEDULES = "--schedules";
  private static final String PLAN_OUT = "--plan-out";
  private static final long MOST_SCHEDULES = 1_000_000_000;
  private static final long USUAL_SCHEDULES = 3_000;

  /** What a fair's build calls what it is asked, and the command line does. */
  private static final Map<String, String> OPTIONS =
      Map.of(".fair", "--fair", ".budget", BUDGET, ".schedules", SCHEDULES, ".from", "--from");

  private final Surroundings here;

  @Mixin private final BookArgument argument = new BookArgument();
  @Mixin private final StartOption start = new StartOption();
  @Mixin private final WriteOption write = new WriteOption();

  @Option(
      names = "--fair",
      paramLabel = "ID",
      required = true,
      description = "which fair: its id in the book")
  private String fair;

  @Option(
      names = BUDGET,
      paramLabel = "N",
      description = "money there is for packs of material; when left out, as much as is needed")
  private String budget;

  @Option(
      names = NOW,
      paramLabel = "DATE",
      description = {
        "from when on what is short in stock can be ordered, a date or a date with a time; when"
            + " left out, when the plan begins. Nothing begins before its materials can be there"
      })
  private String now;

  @Option(
      names = SCHEDULES,
      paramLabel = "N",
      description = "how many schedules each plan looks at, 1 to 1000000000; 3000 when left out")
  private String schedules;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "where the search's chance begins, any whole number; 0 when left out")
  private String seed;

  @Option(
      names = PLAN_OUT,
      paramLabel = "FILE",
      description = "write the plan to this file, to go with the book that --write writes")
  private String planOut;

  @Option(names = "--json", description = "print the build as JSON (strickle-fair/1)")
  private boolean json;

  FairCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public void run() {
    Given values = new Given();
    Optional<LocalDateTime> from = start.read(values);
    Optional<BigDecimal> money = values.decimal(BUDGET, budget);
    money.ifPresent(
        amount -> values.must(amount.signum() >= 0, BUDGET, budget, "an amount of 0 or more"));
    Optional<LocalDateTime> ordering = values.moment(NOW, now);
    long most = values.whole(SCHEDULES, schedules, 1, MOST_SCHEDULES).orElse(USUAL_SCHEDULES);
    long chance = values.whole("--seed", seed, Long.MIN_VALUE, Long.MAX_VALUE).orElse(0L);
    values.done();
    Book book = argument.read();
    Optional<OutFile> bookFile = write.read(argument.file());
    Optional<OutFile> planFile = planFile(bookFile);
    OffsetDateTime begin = StartOption.moment(from, argument, book, here.clock());
    OffsetDateTime ordered =
        ordering.map(at -> at.atZone(book.studio().timeZone()).toOffsetDateTime()).orElse(begin);
    FairRequest request = new FairRequest(fair, money, begin, ordered, most, chance);
    tell(found(book, request), bookFile, planFile);
  }

  private Optional<OutFile> planFile(Optional<OutFile> bookFile) {
    Optional<OutFile> file = Optional.ofNullable(planOut).map(at -> OutFile.at(PLAN_OUT, at));
    file.ifPresent(
        place -> {
          argument.file().ifPresent(book -> place.mustNotBe(book, "book"));
          bookFile.ifPresent(place::mustNotBe);
        });
    return file;
  }

  private static FairAnswer found(Book book, FairRequest request) {
    try {
      FairAnswer answer = FairBuilding.of(book, request);
      MaterialsOptions.checked(answer.book(), Audited.plan(answer.book(), answer.plan()));
      return answer;
    } catch (Faulty faulty) {
      throw new Faulty(faulty.faults().stream().map(FairCommand::named).toList());
    }
  }

  private static Fault named(Fault fault) {
    String path = OPTIONS.getOrDefault(fault.path(), fault.path());
    return new Fault(path, fault.found(), fault.right());
  }

  private void tell(FairAnswer answer, Optional<OutFile> book, Optional<OutFile> plan) {
    here.out().print(json ? FairFile.write(answer.build()) : FairText.of(answer));
    book.ifPresent(file -> WriteOption.write(file, answer.book()));
    plan.ifPresent(file -> file.write(PlanFile.write(answer.plan())));
    if (!json) {
      book.ifPresent(file -> here.out().print("\nThe book is written to " + file.text() + ".\n"));
      plan.ifPresent(file -> here.out().print("\nThe plan is written to " + file.text() + ".\n"));
    }
  }
}
