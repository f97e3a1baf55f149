package strickle.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import strickle.book.UsUnits;
import strickle.cli.Table.Column;
import strickle.json.BallastAnswer;
import strickle.json.BallastAnswer.Lift;
import strickle.json.BallastAnswer.PieceLift;
import strickle.json.BallastAnswer.Pressure;
import strickle.safety.BenchCautions;
import strickle.safety.Load;

/** Lift, ballast and pressure as a page of text. */
final class BallastText {

  private static final String SEALED = ", as long as no mix gets under what is sealed.";

  /** Standard gravity, m/s². */
  private static final double GRAVITY = 9.80665;

  private static final double ROUND_OFF = 1e-9;

  /** A pound's weight, from the exact pound and standard gravity. */
  private static final double NEWTONS_PER_POUND_FORCE = UsUnits.KG_PER_POUND * GRAVITY;

  private static final double PASCALS_PER_POUND_ON_A_SQUARE_FOOT =
      NEWTONS_PER_POUND_FORCE / UsUnits.M2_PER_SQUARE_FOOT;

  private final Measures measures;
  private final List<String> lines = new ArrayList<>();

  private BallastText(Measures measures) {
    this.measures = measures;
  }

  /** The page, with a newline behind each line. */
  static String of(BallastAnswer answer, Measures measures) {
    BallastText text = new BallastText(measures);
    answer.lift().ifPresent(text::lift);
    if (answer.lift().isPresent() && answer.pressure().isPresent()) {
      text.lines.add("");
    }
    answer.pressure().ifPresent(text::pressure);
    if (answer.lift().isEmpty() && answer.pressure().isEmpty()) {
      text.pieces(answer.pieces());
    }
    text.cautions(answer);
    return String.join("\n", text.lines) + "\n";
  }

  private void lift(Lift lift) {
    Table table = new Table("", Column.left(50), Column.left(40));
    table.row("the core displaces", measures.volume(lift.displacedMl()));
    table.row("of wet mix that is", measures.mass(lift.displacedGrams()));
    double gross = lift.grossNewtons();
    table.row(
        gross < 0 ? "the mix presses it down with" : "the mix lifts it with",
        force(Math.abs(gross)));
    double net = lift.netNewtons();
    String down = gross < 0 ? "and with its own weight, with" : "its own weight holds it, with";
    table.row(net < 0 ? down : "less its own weight", force(Math.abs(net)));
    String ballast = measures.mass(lift.ballastGrams());
    table.row("ballast, " + Words.plain(lift.safetyFactor()) + " times that", ballast);
    lines.addAll(table.lines());
    if (lift.netNewtons() <= 0) {
      add("It stays down by itself" + (isSealed(lift) ? SEALED : "."));
    } else {
      add("Hold the core against turning and shifting too: ballast only keeps it down.");
    }
  }

  // The mix lifts a core that hangs in it with the weight of all that the core displaces.
  private static boolean isSealed(Lift lift) {
    double hung = lift.displacedGrams() / 1000 * GRAVITY;
    return lift.grossNewtons() < hung * (1 - ROUND_OFF);
  }

  private void pressure(Pressure pressure) {
    Table table = new Table("", Column.left(50), Column.left(40));
    table.row(
        "the mix presses, " + measures.length(pressure.depthMm()) + " down, with",
        pressureText(pressure.pascals()));
    pressure
        .wallNewtons()
        .ifPresent(
            push ->
                table.row(
                    "on a wall "
                        + measures.length(pressure.wallWidthMm().orElseThrow())
                        + " wide, in all, with",
                    force(push)));
    lines.addAll(table.lines());
    add(
        "As a liquid of its density, the full head (ACI 347, for a slump above 175 mm or 7 in): so"
            + " do fluid mixes that are poured in one go.");
    if (pressure.wallNewtons().isPresent()) {
      add("The push acts a third of the depth above the floor: brace a thin wall there.");
    }
  }

  private void pieces(List<PieceLift> pieces) {
    if (pieces.isEmpty()) {
      add("No piece of the book is cast with a core.");
      return;
    }
    Table table =
        new Table(
            "",
            Column.left(24),
            Column.left(18),
            Column.right(10, 14),
            Column.right(8, 12),
            Column.right(14, 16));
    table.row("piece", "mix", "displaces", "lift", "ballast each");
    for (PieceLift one : pieces) {
      table.row(
          one.piece(),
          one.mix(),
          measures.volume(one.lift().displacedMl()),
          one.lift().netNewtons() > 0 ? force(one.lift().netNewtons()) : "none",
          measures.mass(one.lift().ballastGrams()));
    }
    lines.addAll(table.lines());
    add(
        "Lift is less the core's own weight; ballast is for one casting, its safety factor"
            + " included.");
  }

  private void cautions(BallastAnswer answer) {
    List<Load> loads = new ArrayList<>();
    answer.lift().ifPresent(lift -> loads.add(new Load("the ballast", lift.ballastGrams())));
    for (PieceLift one : answer.pieces()) {
      loads.add(new Load("the ballast of " + one.piece(), one.lift().ballastGrams()));
    }
    lines.addAll(CautionText.sourced(BenchCautions.ofLoads(loads)));
  }

  private String force(double newtons) {
    return measures.us()
        ? figure("%.2f lbf", newtons / NEWTONS_PER_POUND_FORCE)
        : figure("%.3f N", newtons);
  }

  private String pressureText(double pascals) {
    return measures.us()
        ? figure("%.1f lb/ft²", pascals / PASCALS_PER_POUND_ON_A_SQUARE_FOOT)
        : figure("%.2f kPa", pascals / 1000);
  }

  private void add(String text) {
    lines.addAll(Lines.wrap(text, Lines.WIDEST));
  }

  private static String figure(String format, double value) {
    return String.format(Locale.ROOT, format, value);
  }
}
