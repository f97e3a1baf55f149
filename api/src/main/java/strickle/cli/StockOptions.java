package strickle.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import picocli.CommandLine.Option;
import strickle.book.Amount;

/** The options that say what there is: material, bags, moulds that stand by. */
final class StockOptions {

  @Option(
      names = "--have",
      paramLabel = "NAME=MASS",
      description = "what is on hand of a material; the book's own when left out")
  private List<String> have = new ArrayList<>();

  @Option(
      names = "--bag",
      paramLabel = "NAME=MASS",
      description = "what a bag of a material holds; the book's pack when left out")
  private List<String> bag = new ArrayList<>();

  @Option(
      names = "--spare",
      paramLabel = "NAME=VOLUME",
      description = "a mould that could take what is left over, beside those of the book")
  private List<String> spare = new ArrayList<>();

  /**
   * What there is.
   *
   * @param have grams on hand by material
   * @param bag grams in a bag by material
   * @param spare ml of moulds that stand by
   */
  record Stock(Map<String, Double> have, Map<String, Double> bag, Map<String, Double> spare) {}

  /** Reads them; faults are noted. */
  Stock read(Given values) {
    return new Stock(
        amounts(values, "--have", have, Amount::mass),
        amounts(values, "--bag", bag, Amount::mass),
        amounts(values, "--spare", spare, Amount::volume));
  }

  private static Map<String, Double> amounts(
      Given values, String option, List<String> texts, ToDoubleFunction<String> reading) {
    Map<String, Double> amounts = new LinkedHashMap<>();
    for (String text : texts) {
      int equals = text.lastIndexOf('=');
      String right = "a name and an amount, such as cement=25kg";
      if (values.must(equals > 0, option, text, right)) {
        values
            .amountAboveZero(
                option, text.substring(equals + 1), reading, "an amount above 0, with its unit")
            .ifPresent(amount -> amounts.put(text.substring(0, equals), amount));
      }
    }
    return amounts;
  }
}
