package strickle.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import strickle.book.Amount;
import strickle.json.AnswerFile;
import strickle.json.LiftAnswer;
import strickle.safety.Caution;
import strickle.safety.Lift;

/** {@code strickle lift}: what may be lifted with both hands, by the NIOSH equation. */
@Command(
    name = "lift",
    mixinStandardHelpOptions = true,
    version = Version.TEXT,
    description = {
      "Says what one person should lift at most, and how near a load is to that, by the lifting"
          + " equation of NIOSH in its metric form. It needs no book. Without options: from the"
          + " floor to a table, 40 cm in front, now and then, with a poor grip.",
      "It is for a steady load held with both hands; a mould full of fluid mix is none."
    },
    footer = {
      "",
      "Examples:",
      "  strickle lift --mass 25kg",
      "  strickle lift --mass 44lb --reach-mm 16in --height-mm 30in --travel-mm 1ft --units us",
      "  strickle lift --reach-mm 300 --height-mm 750 --twist-degrees 45 --often 0.88 --json"
    })
final class LiftCommand implements Runnable {

  private static final double MM_PER_CM = 10;
  private static final double GRAMS_PER_KG = 1000;
  private static final double MOST_GRAMS = 1e7;
  private static final double MOST_MM = 10_000;
  private static final double MOST_DEGREES = 180;

  private final Surroundings here;

  @Option(names = "--mass", paramLabel = "MASS", description = "what is lifted, such as 12kg")
  private String mass;

  @Option(
      names = "--reach-mm",
      paramLabel = "LENGTH",
      description = "from the ankles to the hands, level; 400 when left out")
  private String reach;

  @Option(
      names = "--height-mm",
      paramLabel = "LENGTH",
      description = "of the hands above the floor where the lift begins; 0 when left out")
  private String height;

  @Option(
      names = "--travel-mm",
      paramLabel = "LENGTH",
      description = "up or down; 750 when left out")
  private String travel;

  @Option(
      names = "--twist-degrees",
      paramLabel = "NUMBER",
      description = "to the side, 0 to 180; 0 when left out")
  private String twist;

  @Option(
      names = "--often",
      paramLabel = "NUMBER",
      description = "the equation's multiplier for how often, 0 to 1; 1, now and then, if left out")
  private String often;

  @Option(
      names = "--grip",
      paramLabel = "NUMBER",
      description = "its multiplier for the grip, 0 to 1: 1 good handles, 0.9 hard to hold (0.9)")
  private String grip;

  @Mixin private final UnitsOption units = new UnitsOption();

  @Option(names = "--json", description = "print the answer as JSON (strickle-lift/1), metric")
  private boolean json;

  private Given values;

  LiftCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public void run() {
    values = new Given();
    Measures measures = units.read(values);
    Lift lift = read();
    Optional<Double> grams =
        values
            .amountAboveZero("--mass", mass, Amount::mass, "a mass above 0")
            .filter(g -> values.must(g <= MOST_GRAMS, "--mass", mass, "a mass up to 10000 kg"));
    values.done();
    here.out()
        .print(
            json
                ? AnswerFile.write(LiftAnswer.FORMAT, LiftAnswer.of(lift, kilograms(grams)))
                : text(lift, grams, measures));
  }

  private Lift read() {
    Lift usual = Lift.fromTheFloor();
    return new Lift(
        cm("--reach-mm", reach, usual.reachCm()),
        cm("--height-mm", height, usual.heightCm()),
        cm("--travel-mm", travel, usual.travelCm()),
        number("--twist-degrees", twist, MOST_DEGREES, usual.twistDegrees()),
        number("--often", often, 1, usual.often()),
        number("--grip", grip, 1, usual.grip()));
  }

  private double cm(String option, String text, double usual) {
    return values
        .amount(option, text, Amount::length)
        .filter(mm -> values.must(mm <= MOST_MM, option, text, "a length up to 10 m"))
        .map(mm -> mm / MM_PER_CM)
        .orElse(usual);
  }

  private double number(String option, String text, double most, double usual) {
    String right = String.format(Locale.ROOT, "a number from 0 to %.0f", most);
    return values
        .decimal(option, text)
        .map(Number::doubleValue)
        .filter(given -> values.must(0 <= given && given <= most, option, text, right))
        .orElse(usual);
  }

  private static OptionalDouble kilograms(Optional<Double> grams) {
    return grams
        .map(mass -> OptionalDouble.of(mass / GRAMS_PER_KG))
        .orElseGet(OptionalDouble::empty);
  }

  private static String text(Lift lift, Optional<Double> grams, Measures measures) {
    List<String> lines = new ArrayList<>();
    String limit = measures.mass(lift.limitKg() * GRAMS_PER_KG);
    lines.addAll(Lines.paragraph("limit   ", "        ", limit + ": " + factors(lift, measures)));
    grams
        .map(mass -> measures.mass(mass) + ": " + judged(lift, mass))
        .ifPresent(load -> lines.addAll(Lines.paragraph("load    ", "        ", load)));
    lines.addAll(Lines.paragraph("source  ", "        ", Caution.LIFTING.source()));
    lines.add("");
    String steady = "For a steady load, held with both hands; a mould full of fluid mix is none. ";
    lines.addAll(Lines.wrap(steady + Caution.FOLLOW, Lines.WIDEST));
    return String.join("\n", lines) + "\n";
  }

  private static String factors(Lift lift, Measures measures) {
    return measures.mass(Lift.MOST_KG * GRAMS_PER_KG)
        + String.format(
            Locale.ROOT,
            " at the very best x %.3f reach x %.3f height x %.3f travel x %.3f twist x %.3f how"
                + " often x %.3f grip",
            lift.reachFactor(),
            lift.heightFactor(),
            lift.travelFactor(),
            lift.twistFactor(),
            lift.often(),
            lift.grip());
  }

  private static String judged(Lift lift, double grams) {
    double index = lift.index(grams / GRAMS_PER_KG);
    if (!Double.isFinite(index)) {
      return "nothing should be lifted so";
    }
    String times = String.format(Locale.ROOT, "%.2f x the limit", index);
    return index > 1 ? times + "; " + Caution.LIFTING.brief() : times;
  }
}
