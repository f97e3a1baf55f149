package strickle.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.json.LearnFile;
import strickle.json.PlanFile;
import strickle.json.ProgressFile;
import strickle.plan.Plan;
import strickle.plan.learn.Learning;
import strickle.plan.learn.Lessons;
import strickle.plan.learn.Log;
import strickle.plan.learn.Revision;

/** {@code strickle learn}: says what recorded weeks say of the book. */
@Command(
    name = "learn",
    mixinStandardHelpOptions = true,
    version = Version.TEXT,
    description = {
      "Says what recorded weeks say of the numbers in the book: minutes of tasks, how many pieces"
          + " turn out, how much is weighed out; each with its band beside the book's own. The book"
          + " stays as it is; --write writes one that takes over what differs."
    },
    footer = {
      "",
      "Examples:",
      "  strickle learn studio.json --plan week.json --log done.json",
      "  strickle learn studio.json --plan week1.json --log done1.json \\",
      "      --plan week2.json --log done2.json --write new-studio.json"
    })
final class LearnCommand implements Runnable {

  private static final String PLAN = "--plan";
  private static final String LOG = "--log";

  private final Surroundings here;

  @Mixin private final BookArgument argument = new BookArgument();
  @Mixin private final WriteOption write = new WriteOption();

  @Option(
      names = PLAN,
      paramLabel = "PLAN",
      required = true,
      description =
          "a plan that was carried out, a file that plan --out or replan --out has written")
  private List<String> plans = new ArrayList<>();

  @Option(
      names = LOG,
      paramLabel = "FILE",
      required = true,
      description = {
        "what was recorded of it (strickle-progress/1, see README): once for each --plan, in the"
            + " same order"
      })
  private List<String> files = new ArrayList<>();

  @Option(names = "--json", description = "print the lessons as JSON (strickle-lessons/1)")
  private boolean json;

  LearnCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public void run() {
    Given values = new Given();
    values.must(
        plans.size() == files.size(),
        LOG,
        Words.count(files.size(), "file"),
        "one for each --plan, of which there are " + plans.size());
    values.done();
    Book book = argument.read();
    Optional<OutFile> file = write.read(argument.file());
    List<Log> logs = new ArrayList<>();
    for (int i = 0; i < plans.size(); i++) {
      logs.add(log(plans.get(i), files.get(i)));
    }
    Lessons lessons = named(LOG, () -> Learning.of(book, logs));
    here.out().print(json ? LearnFile.write(lessons) : LearnText.of(book, lessons));
    file.ifPresent(place -> tell(place, book, lessons));
  }

  private void tell(OutFile place, Book book, Lessons lessons) {
    WriteOption.write(place, Revision.of(book, lessons));
    if (!json) {
      here.out().print("\nThe book is written to " + place.text() + ".\n");
    }
  }

  private static Log log(String planned, String recorded) {
    Path planFile = Paths.of(PLAN, planned, "the path of a plan");
    Path logFile = Paths.of(LOG, recorded, "the path of records");
    Plan plan = named(PLAN + " " + planned, () -> PlanFile.read(planFile));
    return named(LOG + " " + recorded, () -> ProgressFile.log(logFile, plan));
  }

  @FunctionalInterface
  private interface Reading<T> {
    T of();
  }

  private static <T> T named(String option, Reading<T> reading) {
    try {
      return reading.of();
    } catch (Faulty faulty) {
      throw new Faulty(
          faulty.faults().stream()
              .map(fault -> new Fault(option + ", " + fault.path(), fault.found(), fault.right()))
              .toList());
    }
  }
}
