package strickle.cli;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import strickle.book.Amount;
import strickle.cure.AgeRule;

/** The options that choose a rule of age. */
final class AgeRuleOptions {

  private static final String ENERGY = "--activation-kj";
  private static final String KELVIN = "--activation-kelvin";
  private static final String DATUM = "--datum";

  @Option(
      names = ENERGY,
      paramLabel = "KJ",
      description = {
        "activation energy in kJ/mol, 0 to 150; without this and the two below, the rule of"
            + " EN 1992-1-1 Annex B"
      })
  private String energy;

  @Option(
      names = KELVIN,
      paramLabel = "K",
      description = "the same over the gas constant, in kelvin, 0 to 20000")
  private String kelvin;

  @Option(
      names = DATUM,
      paramLabel = "TEMPERATURE",
      description = "Nurse and Saul's rule with this datum, -50 to 15 °C")
  private String datum;

  /** Reads the options; what is wrong is noted, and the usual rule stands for it. */
  AgeRule read(Given values) {
    boolean several = Stream.of(energy, kelvin, datum).filter(one -> one != null).count() > 1;
    String found = energy != null ? ENERGY : KELVIN;
    values.must(
        !several,
        found,
        energy != null ? energy : kelvin,
        "one rule only: " + ENERGY + ", " + KELVIN + " or " + DATUM);
    Optional<AgeRule> rule = within(values, ENERGY, energy, 150).map(AgeRule.Arrhenius::ofEnergy);
    rule = rule.or(() -> within(values, KELVIN, kelvin, 20_000).map(AgeRule.Arrhenius::new));
    return rule.or(() -> saul(values)).orElse(new AgeRule.En1992());
  }

  private Optional<AgeRule> saul(Given values) {
    String right = "a temperature from -50 to 15 °C";
    return values
        .amount(DATUM, datum, Amount::temperature)
        .filter(given -> values.must(-50 <= given && given <= 15, DATUM, datum, right))
        .map(AgeRule.NurseSaul::new);
  }

  private static Optional<Double> within(Given values, String option, String text, double most) {
    String right = "a number from 0 to " + BigDecimal.valueOf(most).toBigInteger();
    return values
        .decimal(option, text)
        .map(Number::doubleValue)
        .filter(given -> values.must(0 <= given && given <= most, option, text, right));
  }
}
