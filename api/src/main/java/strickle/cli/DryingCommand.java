package strickle.cli;

import java.math.BigDecimal;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import strickle.book.Amount;
import strickle.cure.Drying;
import strickle.json.AnswerFile;
import strickle.json.DryingAnswer;

/** {@code strickle drying}: when a piece that is weighed now and then has dried far enough. */
@Command(
    name = "drying",
    mixinStandardHelpOptions = true,
    version = Version.TEXT,
    description = {
      "Reads the weights of a drying piece and says on which day it will lose less than a limit in"
          + " 24 hours, and how much free water it holds now and then, each with a band."
    },
    footer = {
      "",
      "The file is CSV. Its first line is \"time,mass\" with times such as 2027-04-05T09:00, or"
          + " \"day,mass\" with days since the beginning; a mass may have its unit (\"2 lb 3 oz\"),"
          + " else it is grams. Times may have their offset (2027-04-05T09:00-04:00); without it a"
          + " clock change in between makes a day an hour too long or too short.",
      "",
      "Examples:",
      "  strickle drying planter.csv",
      "  strickle drying planter.csv --limit 0.1 --scale-step \"0.1 g\"",
      "  strickle drying planter.csv --json"
    })
final class DryingCommand implements Runnable {

  private static final BigDecimal USUAL_LIMIT = new BigDecimal("0.2");
  private static final double USUAL_STEP_GRAMS = 1;
  private static final String LIMIT = "--limit";
  private static final String STEP = "--scale-step";

  private final Surroundings here;

  @Parameters(paramLabel = "FILE", description = "the weights, a CSV file")
  private String file;

  @Mixin private final UnitsOption units = new UnitsOption();

  @Option(
      names = LIMIT,
      paramLabel = "PERCENT",
      description = {
        "the loss in 24 hours that is waited for, in percent of the lesser weight; 0.2 when left"
            + " out, a house rule"
      })
  private String limit;

  @Option(
      names = STEP,
      paramLabel = "MASS",
      description = "what the scale can tell apart; 1 g when left out")
  private String step;

  @Option(names = "--json", description = "print the answer as JSON (strickle-drying/1)")
  private boolean json;

  DryingCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public void run() {
    Given values = new Given();
    Measures measures = units.read(values);
    double percent =
        values
            .decimal(LIMIT, limit)
            .filter(
                given ->
                    values.must(
                        isALimit(given), LIMIT, limit, "a percentage from 0.001 to 10 such as 0.2"))
            .orElse(USUAL_LIMIT)
            .doubleValue();
    Optional<Double> steps =
        values
            .amount(STEP, step, Amount::mass)
            .filter(
                given ->
                    values.must(
                        given > 0 && given <= 1000, STEP, step, "a mass above 0 g, at most 1 kg"));
    values.done();
    DryingSheet sheet = DryingSheet.read(file, steps.orElse(USUAL_STEP_GRAMS));
    Drying drying = sheet.fit(percent);
    here.out()
        .print(
            json
                ? AnswerFile.write(
                    DryingAnswer.FORMAT, DryingAnswer.of(sheet.log(), sheet.begin(), drying))
                : DryingText.of(sheet, drying, measures));
  }

  private static boolean isALimit(BigDecimal percent) {
    return percent.compareTo(new BigDecimal("0.001")) >= 0
        && percent.compareTo(BigDecimal.TEN) <= 0;
  }
}
