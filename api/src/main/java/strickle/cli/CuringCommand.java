package strickle.cli;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import strickle.json.AnswerFile;
import strickle.json.CuringAnswer;
import strickle.json.CuringQuestion;

/** {@code strickle curing}: how long setting and curing take at a temperature. */
@Command(
    name = "curing",
    mixinStandardHelpOptions = true,
    version = Version.TEXT,
    description = {
      "Says how long setting and curing take in a warmer or colder room, how old a casting is by"
          + " what it has been through, what your own castings say about it, and, for information"
          + " only, how strong it may be."
    },
    footer = {
      "",
      "Files are CSV. --log: first line \"hours,temperature\". --records: first line"
          + " \"casting,hours,temperature\", a line for each stretch of a casting until it was"
          + " found ready. Temperatures may have a unit (\"64 F\"), else they are °C.",
      "",
      "Examples:",
      "  strickle curing --hours 16 --at 12 --at 25",
      "  strickle curing --hours 16 --spent 6@15 --spent \"6@77 F\" --at 18",
      "  strickle curing --records ready.csv --at \"60 F\"",
      "  strickle curing --age-days 10 --cement N --json"
    })
final class CuringCommand implements Runnable {

  private final Surroundings here;

  @Mixin private final UnitsOption units = new UnitsOption();
  @Mixin private final AgeRuleOptions rule = new AgeRuleOptions();
  @Mixin private final CuringOptions options = new CuringOptions();

  @Option(names = "--json", description = "print the answer as JSON (strickle-curing/1)")
  private boolean json;

  CuringCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public void run() {
    Given values = new Given();
    Measures measures = units.read(values);
    CuringQuestion question = options.read(values, rule.read(values));
    Optional<CuringAnswer> found = values.asOptions(() -> CuringAnswer.of(question));
    values.done();
    CuringAnswer answer = found.orElseThrow();
    here.out()
        .print(
            json
                ? AnswerFile.write(CuringAnswer.FORMAT, answer)
                : CuringText.of(question, answer, measures));
  }
}
