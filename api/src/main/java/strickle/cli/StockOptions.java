package strickle.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import strickle.book.Amount;
import strickle.book.Dose;
import strickle.book.Part;
import strickle.json.BatchStock;

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

  /** Reads them, for a mix when it is known; faults are noted. */
  BatchStock read(Given values, Optional<Chosen> mix) {
    return new BatchStock(
        amounts(values, "--have", have, Amount::mass, mix),
        amounts(values, "--bag", bag, Amount::mass, mix),
        amounts(values, "--spare", spare, Amount::volume, Optional.empty()));
  }

  private static Map<String, Double> amounts(
      Given values,
      String option,
      List<String> texts,
      ToDoubleFunction<String> reading,
      Optional<Chosen> mix) {
    Map<String, Double> amounts = new LinkedHashMap<>();
    String example = option.equals("--spare") ? "cup=100ml" : "cement=25kg";
    for (String text : texts) {
      int equals = text.lastIndexOf('=');
      String right = "a name and an amount, such as " + example;
      if (values.must(equals > 0, option, text, right)) {
        String name = text.substring(0, equals);
        mix.ifPresent(chosen -> mustBeOf(values, option, name, chosen));
        values
            .amountAboveZero(
                option + " " + name,
                text.substring(equals + 1),
                reading,
                "an amount above 0, with its unit")
            .ifPresent(amount -> amounts.put(name, amount));
      }
    }
    return amounts;
  }

  /** Of another material nothing would come of it; water is not counted, there is enough of it. */
  private static void mustBeOf(Given values, String option, String name, Chosen chosen) {
    List<String> names =
        Stream.concat(
                chosen.mix().dry().stream().map(Part::material),
                chosen.mix().pigment().stream().map(Dose::material))
            .distinct()
            .toList();
    String right = "a dry material or pigment of the mix: " + String.join(", ", names);
    values.must(names.contains(name), option, name, right);
  }
}
