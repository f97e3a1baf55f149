package strickle.cli;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Option;
import strickle.book.Amount;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.mix.Film;
import strickle.mix.Leaf;
import strickle.mix.Uptake;

/** What is put on: a film, something that soaks in, or leaf. */
final class CoatOptions {

  private static final String UPTAKE = "--uptake-grams-per-m2";

  /** Bare grams, or a mass with its unit on a unit of area. */
  private static final Pattern MASS_ON_AREA =
      Pattern.compile("(?<bare>[0-9]+(?:[.][0-9]+)?)|(?<mass>.*[a-z])\\s*/\\s*(?<area>[a-z]+[2²])");

  private static final double MICRONS_PER_MM = 1000;
  private static final double LEAST_MICRONS = 0.1;
  private static final double LEAST_SOLIDS = 0.1;
  private static final double LONGEST_LEAF_MM = 10_000;
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
      description = {
        "absorbent concrete: what one coat takes, measured on a piece, such as 75 or 0.25oz/ft2"
      })
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

  /** Notes what was given for something that is not put on. */
  void mustGoTogether(Given values) {
    boolean coated = solids != null || film != null || uptake != null;
    String sheets = "--leaf-mm beside it";
    values.must(overlap == null || leaf != null, "--overlap-mm", overlap, sheets);
    values.must(perBook == null || leaf != null, "--leaves-per-book", perBook, sheets);
    String soaks = "--uptake-grams-per-m2 beside it";
    values.must(density == null || uptake != null, "--density", density, soaks);
    values.must(coats == null || coated, "--coats", coats, "a film or what soaks in beside it");
  }

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
    String thickness = "a thickness from 0.0001 to 10 mm, beside --solids-percent";
    String percent = "a percentage by volume from 0.1 to 100, beside --dry-film-mm";
    mustBeGiven(values, "--dry-film-mm", film, thickness);
    mustBeGiven(values, "--solids-percent", solids, percent);
    Optional<Double> microns =
        values
            .amount("--dry-film-mm", film, Amount::length)
            .map(mm -> mm * MICRONS_PER_MM)
            .filter(
                um ->
                    values.must(
                        LEAST_MICRONS <= um && um <= Film.MOST_MICRONS,
                        "--dry-film-mm",
                        film,
                        thickness));
    Optional<Double> stays =
        values
            .decimal("--solids-percent", solids)
            .map(BigDecimal::doubleValue)
            .filter(
                p ->
                    values.must(
                        LEAST_SOLIDS <= p && p <= 100, "--solids-percent", solids, percent));
    return stays.flatMap(p -> microns.map(um -> new Film(p, um)));
  }

  /** What soaks in; empty when none was given, and what is wrong is noted. */
  Optional<Uptake> uptake(Given values) {
    String right = "a number from 0.001 to 100000, or a mass on an area such as 0.25oz/ft2";
    Optional<Double> grams =
        uptake == null ? Optional.empty() : values.within(UPTAKE, () -> gramsPerM2(uptake, right));
    return grams
        .filter(one -> values.must(1e-3 <= one && one <= 1e5, UPTAKE, uptake, right))
        .map(Uptake::new);
  }

  private static double gramsPerM2(String text, String right) {
    Matcher parts = MASS_ON_AREA.matcher(text);
    if (!parts.matches()) {
      throw new Faulty(List.of(new Fault("", '"' + text + '"', right)));
    }
    return parts.group("bare") != null
        ? Amount.mass(parts.group("bare"))
        : Amount.mass(parts.group("mass")) / Amount.area("1 " + parts.group("area"));
  }

  /** The density of what soaks in, in g/ml; empty when none was given. */
  OptionalDouble gramsPerMl(Given values) {
    String dense = "a density from 100 to 10000 kg/m³";
    return values
        .amount("--density", density, Amount::density)
        .filter(one -> values.must(100 <= one && one <= 10_000, "--density", density, dense))
        .map(d -> OptionalDouble.of(d * G_PER_ML_OF_KG_PER_M3))
        .orElseGet(OptionalDouble::empty);
  }

  /** The leaf; empty when none was given, and what is wrong is noted. */
  Optional<Leaf> leaf(Given values) {
    Optional<Double> side = length(values, "--leaf-mm", leaf, 1, "a length from 1 mm to 10 m");
    Optional<Double> over = length(values, "--overlap-mm", overlap, 0, "a length up to 10 m");
    String right = "at least 1 mm less than a sheet's side";
    return side.filter(
            mm ->
                values.must(over.isEmpty() || over.get() <= mm - 1, "--overlap-mm", overlap, right))
        .map(mm -> new Leaf(mm, mm, over.orElse(0.0)));
  }

  private static Optional<Double> length(
      Given values, String option, String text, double least, String right) {
    return values
        .amount(option, text, Amount::length)
        .filter(mm -> values.must(least <= mm && mm <= LONGEST_LEAF_MM, option, text, right));
  }

  private static void mustBeGiven(Given values, String option, String text, String right) {
    if (text == null) {
      values.fault(new Fault(option, "nothing", right));
    }
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
