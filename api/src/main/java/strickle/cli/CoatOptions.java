package strickle.cli;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Option;
import strickle.book.Amount;
import strickle.mix.Film;
import strickle.mix.Leaf;
import strickle.mix.Uptake;

/** What is put on: a film, something that soaks in, or leaf. */
final class CoatOptions {

  private static final double MICRONS_PER_MM = 1000;
  private static final double G_PER_ML_OF_KG_PER_M3 = 1e-3;

  @Option(
      names = "--solids-percent",
      paramLabel = "PERCENT",
      description = "a film: what stays of the product, by volume and not by mass; on its sheet")
  private String solids;

  @Option(
      names = "--dry-film-mm",
      paramLabel = "THICKNESS",
      description = "a film: thickness of one dry coat, such as 25um, 5mil or 0.025")
  private String film;

  @Option(
      names = "--uptake-grams-per-m2",
      paramLabel = "GRAMS",
      description = "absorbent concrete: what one coat takes, measured on a piece")
  private String uptake;

  @Option(
      names = "--density",
      paramLabel = "DENSITY",
      description = "of that product, such as 1030 (kg/m³), to say millilitres too")
  private String density;

  @Option(
      names = "--leaf-mm",
      paramLabel = "LENGTH",
      description = "leaf: the side of a square sheet, such as 80 or \"3 1/4 in\"")
  private String leaf;

  @Option(
      names = "--overlap-mm",
      paramLabel = "LENGTH",
      description = "leaf: by which each sheet lies on the next; 0 when left out")
  private String overlap;

  @Option(
      names = "--leaves-per-book",
      paramLabel = "N",
      description = "leaf: sheets in a book; 25 when left out")
  private String perBook;

  @Option(names = "--coats", paramLabel = "N", description = "how many; 1 when left out")
  private String coats;

  @Option(
      names = "--waste-percent",
      paramLabel = "PERCENT",
      description = {
        "of the product that ends in brush and cup, or of leaf that tears, on top; 0 when left out"
      })
  private String waste;

  /** How many coats; what is wrong is noted. */
  int coats(Given values) {
    return values.whole("--coats", coats, 1, 100).map(Long::intValue).orElse(1);
  }

  /** The waste in percent, 0 to below 100; what is wrong is noted. */
  double waste(Given values) {
    return number(values, "--waste-percent", waste, 0, 99).orElse(0);
  }

  /** Whether nothing to put on was given. */
  boolean isEmpty() {
    return solids == null && film == null && uptake == null && leaf == null;
  }

  /** The film; empty when none was given, and what is wrong or missing is noted. */
  Optional<Film> film(Given values) {
    if (solids == null && film == null) {
      return Optional.empty();
    }
    String thickness = "a thickness above 0 and at most 10 mm, beside --solids-percent";
    String percent = "a percentage by volume above 0, at most 100, beside --dry-film-mm";
    values.must(film != null, "--dry-film-mm", "", thickness);
    values.must(solids != null, "--solids-percent", "", percent);
    Optional<Double> microns =
        values
            .amount("--dry-film-mm", film, Amount::length)
            .map(mm -> mm * MICRONS_PER_MM)
            .filter(
                um ->
                    values.must(
                        um > 0 && um <= Film.MOST_MICRONS, "--dry-film-mm", film, thickness));
    Optional<Double> stays =
        values
            .decimal("--solids-percent", solids)
            .map(BigDecimal::doubleValue)
            .filter(p -> values.must(p > 0 && p <= 100, "--solids-percent", solids, percent));
    return stays.flatMap(p -> microns.map(um -> new Film(p, um)));
  }

  /** What soaks in; empty when none was given, and what is wrong is noted. */
  Optional<Uptake> uptake(Given values) {
    OptionalDouble grams = number(values, "--uptake-grams-per-m2", uptake, 1e-3, 1e5);
    return grams.isPresent() ? Optional.of(new Uptake(grams.getAsDouble())) : Optional.empty();
  }

  /** The density of what soaks in, in g/ml; empty when none was given. */
  OptionalDouble gramsPerMl(Given values) {
    return values
        .amountAboveZero("--density", density, Amount::density, "a density above 0")
        .map(d -> OptionalDouble.of(d * G_PER_ML_OF_KG_PER_M3))
        .orElseGet(OptionalDouble::empty);
  }

  /** The leaf; empty when none was given, and what is wrong is noted. */
  Optional<Leaf> leaf(Given values) {
    Optional<Double> side =
        values.amountAboveZero("--leaf-mm", leaf, Amount::length, "a length above 0");
    double over = values.amount("--overlap-mm", overlap, Amount::length).orElse(0.0);
    return side.filter(
            mm -> values.must(over < mm, "--overlap-mm", overlap, "less than a sheet's side"))
        .map(mm -> new Leaf(mm, mm, over));
  }

  /** Sheets in a book of leaf. */
  long perBook(Given values) {
    return values.whole("--leaves-per-book", perBook, 1, 10_000).orElse(25L);
  }

  private static OptionalDouble number(
      Given values, String option, String text, double least, double most) {
    String right =
        "a number from "
            + BigDecimal.valueOf(least).stripTrailingZeros().toPlainString()
            + " to "
            + BigDecimal.valueOf(most).stripTrailingZeros().toPlainString();
    return values
        .decimal(option, text)
        .map(BigDecimal::doubleValue)
        .filter(given -> values.must(least <= given && given <= most, option, text, right))
        .map(OptionalDouble::of)
        .orElseGet(OptionalDouble::empty);
  }
}
