package strickle.cli;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Option;
import strickle.plan.Cover;

/** The option {@code --cover}: how sure to be that castings bring what is asked for. */
final class CoverOption {

  private static final String NAME = "--cover";

  @Option(
      names = NAME,
      paramLabel = "PERCENT",
      description = {
        "in how many of a hundred cases the castings of each piece are to bring what the orders ask"
            + " for, 50 to 99.9; when left out, as many castings as do so on average"
      })
  private String given;

  /** Reads the option; empty when it was not given or is wrong. */
  OptionalDouble read(Given values) {
    Optional<BigDecimal> percent = values.decimal(NAME, given);
    return percent
        .filter(number -> values.must(mayBe(number), NAME, given, "a number from 50 to 99.9"))
        .map(number -> OptionalDouble.of(number.doubleValue()))
        .orElse(OptionalDouble.empty());
  }

  private static boolean mayBe(BigDecimal percent) {
    return percent.compareTo(BigDecimal.valueOf(Cover.LEAST_PERCENT)) >= 0
        && percent.compareTo(BigDecimal.valueOf(Cover.MOST_PERCENT)) <= 0;
  }
}
