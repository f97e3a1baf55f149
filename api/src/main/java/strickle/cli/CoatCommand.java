package strickle.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import strickle.book.Fault;
import strickle.book.UsUnits;
import strickle.json.AnswerFile;
import strickle.json.CoatAnswer;
import strickle.safety.BenchCautions;

/** {@code strickle coat}: how much coating or leaf an area takes. */
@Command(
    name = "coat",
    mixinStandardHelpOptions = true,
    version = Version.TEXT,
    description = {
      "Says how much of a coating or how many sheets of leaf an area takes. It needs no book. The"
          + " area is given, or read off solids or a closed mesh.",
      "A coat that lies on the face as a film goes by its volume solids and its dry thickness. For"
          + " what soaks into concrete no such rate can be given: weigh a piece before and after a"
          + " coat, and give grams on a square metre."
    },
    footer = {
      "",
      "Examples:",
      "  strickle coat --area-m2 1.2 --coats 2 --solids-percent 40 --dry-film-mm 25um",
      "  strickle coat --add hemisphere:radius=75 --uptake-grams-per-m2 75 --pieces 6",
      "  strickle coat --area-m2 0.05 --leaf-mm 80 --overlap-mm 5 --waste-percent 10",
      "  strickle coat --area-m2 3ft2 --leaf-mm \"3 1/4 in\" --units us"
    })
final class CoatCommand implements Runnable {

  private static final double ML_PER_LITRE = 1000;

  private final Surroundings here;

  @Mixin private final CoatArea area = new CoatArea();
  @Mixin private final CoatOptions options = new CoatOptions();
  @Mixin private final UnitsOption units = new UnitsOption();

  @Option(names = "--pieces", paramLabel = "N", description = "how many pieces; 1 when left out")
  private String pieces;

  @Option(names = "--json", description = "print the answer as JSON (strickle-coat/1), metric")
  private boolean json;

  CoatCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public void run() {
    Given values = new Given();
    boolean us = units.read(values).us();
    if (options.isEmpty()) {
      String right = "--solids-percent with --dry-film-mm, --uptake-grams-per-m2 or --leaf-mm";
      values.fault(new Fault("coat", "nothing to put on", right));
    } else {
      options.mustGoTogether(values);
    }
    int count = values.whole("--pieces", pieces, 1, 100_000).map(Long::intValue).orElse(1);
    double m2 = area.read(values).orElse(1.0) * count;
    CoatAnswer answer = answer(values, m2, count);
    values.done();
    here.out()
        .print(json ? AnswerFile.write(CoatAnswer.FORMAT, answer) : text(answer, new Measures(us)));
  }

  private CoatAnswer answer(Given values, double m2, int count) {
    int coats = options.coats(values);
    double waste = options.waste(values);
    OptionalDouble density = options.gramsPerMl(values);
    long perBook = options.perBook(values);
    return CoatAnswer.of(
        m2,
        count,
        new CoatAnswer.Coating(
            options.film(values),
            options.uptake(values),
            options.leaf(values),
            coats,
            waste,
            density,
            perBook));
  }

  private static String text(CoatAnswer answer, Measures measures) {
    List<String> lines = new ArrayList<>();
    String of = answer.pieces() == 1 ? "" : " on " + Words.count(answer.pieces(), "piece");
    lines.add("area    " + measures.area(answer.areaM2()) + of);
    answer.film().ifPresent(film -> lines.addAll(film(film, measures)));
    answer.uptake().ifPresent(uptake -> lines.add(uptake(uptake, measures)));
    answer.leaf().ifPresent(leaf -> lines.add(leaf(leaf)));
    if (answer.film().isPresent() || answer.uptake().isPresent()) {
      lines.addAll(CautionText.sourced(BenchCautions.ofCoats()));
    }
    return String.join("\n", lines) + "\n";
  }

  private static List<String> film(CoatAnswer.FilmPart film, Measures measures) {
    String rate =
        measures.us()
            ? said(
                "%.1f ft²/gal",
                film.m2PerLitre() * UsUnits.ML_PER_GALLON / 1000 / UsUnits.M2_PER_SQUARE_FOOT)
            : said("%.2f m²/l", film.m2PerLitre());
    String wet =
        measures.us()
            ? said("%.2f mil", film.wetMicrons() / 25.4)
            : said("%.0f µm", film.wetMicrons());
    return List.of(
        "film    " + measures.volume(film.litres() * ML_PER_LITRE),
        "rate    " + rate + ", " + wet + " wet");
  }

  private static String uptake(CoatAnswer.UptakePart uptake, Measures measures) {
    Optional<String> volume =
        uptake.ml().isPresent()
            ? Optional.of(" or " + measures.volume(uptake.ml().getAsDouble()))
            : Optional.empty();
    return "soaks   " + measures.mass(uptake.grams()) + volume.orElse("");
  }

  private static String leaf(CoatAnswer.LeafPart leaf) {
    String eaten = said("%.1f %% of each lies on the next", leaf.overlapPercent());
    String books = Words.count(leaf.books(), "book");
    return "leaf    " + Words.count(leaf.sheets(), "sheet") + ", " + books + "; " + eaten;
  }

  private static String said(String format, double value) {
    return String.format(Locale.ROOT, format, value);
  }
}
