package strickle.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import strickle.cli.Table.Column;
import strickle.cure.AgeRule;
import strickle.cure.Calibration;
import strickle.cure.Ready;
import strickle.json.CuringAnswer;
import strickle.json.CuringAnswer.Room;
import strickle.json.CuringAnswer.Strong;
import strickle.json.CuringQuestion;

/** What is known of setting and curing, as a page of text. */
final class CuringText {

  private final CuringQuestion question;
  private final CuringAnswer answer;
  private final Measures measures;
  private final List<String> lines = new ArrayList<>();

  private CuringText(CuringQuestion question, CuringAnswer answer, Measures measures) {
    this.question = question;
    this.answer = answer;
    this.measures = measures;
  }

  /** The page, with a newline behind each line. */
  static String of(CuringQuestion question, CuringAnswer answer, Measures measures) {
    CuringText text = new CuringText(question, answer, measures);
    text.add("Hours of age are hours at " + measures.temperature(20) + "; " + text.rule());
    answer.calibration().ifPresent(text::calibration);
    text.rooms();
    text.spent();
    text.frost();
    answer.strength().ifPresent(text::strength);
    return String.join("\n", text.lines) + "\n";
  }

  private String rule() {
    return measures.us() && question.rule() instanceof AgeRule.NurseSaul saul
        ? "Nurse and Saul, datum " + measures.temperature(saul.datumC())
        : answer.rule();
  }

  private void calibration(Calibration fit) {
    lines.add("");
    add(
        "From "
            + Words.count(fit.castings(), "casting")
            + ": ready after "
            + figure("%.1f h of age; ", fit.referenceHours())
            + figure("90 of 100 further ones between %.1f", fit.lowHours())
            + figure(" and %.1f h", fit.highHours())
            + figure(" (one casting differs by %.0f %%).", fit.spreadPercent()));
    if (fit.isContradictory()) {
      add(
          "They contradict each other, so that little can be told from them: look for a slip in the"
              + " records, and fit each mix and each mould by itself.");
    }
    add("Castings may have been ready some time before they were found so: look sooner at times.");
    fit.activation()
        .ifPresent(
            own ->
                add(
                    figure("Their own activation is %.0f K", own.kelvin())
                        + figure(", in 90 of 100 such cases %.0f", own.lowKelvin())
                        + figure(" to %.0f K.", own.highKelvin())));
  }

  private void rooms() {
    if (answer.rooms().isEmpty()) {
      return;
    }
    boolean left = answer.spent().isPresent();
    Table table =
        new Table(
            "  ",
            Column.right(8, 10),
            Column.right(11, 12),
            Column.left(20),
            Column.right(11, 12),
            Column.left(20));
    table.row("room", "ready after", "between", left ? "still" : "", left ? "between" : "");
    for (Room room : answer.rooms()) {
      table.row(
          measures.temperature(room.temperatureC()),
          likely(room.readyHours()),
          between(room.readyHours()),
          left ? likely(room.stillHours()) : "",
          left ? between(room.stillHours()) : "");
    }
    lines.add("");
    answer
        .referenceHours()
        .ifPresent(hours -> add("Castings ready after " + figure("%.1f h of age:", hours)));
    lines.addAll(table.lines());
    add(
        "No promise: rules of age miss by a fifth and more. Look at the piece before you demould"
            + " it.");
  }

  private void spent() {
    answer
        .spent()
        .ifPresent(
            past -> {
              lines.add("");
              add(
                  "The casting has had "
                      + figure("%.1f h", past.hours())
                      + " at "
                      + Words.count(question.spent().size(), "temperature")
                      + figure(" and is %.3f h of age old", past.ageHours())
                      + past.degreeHours()
                          .map(
                              degrees ->
                                  figure(" (%.1f °C·h, ", degrees)
                                      + figure("%.1f °C·d above the datum)", degrees / 24))
                          .orElse("")
                      + ".");
            });
  }

  private void frost() {
    boolean frost =
        question.rooms().stream().anyMatch(celsius -> celsius < 0)
            || question.spent().stream().anyMatch(one -> one.temperatureC() < 0);
    if (frost) {
      lines.add("");
      add(
          "Fresh concrete that freezes is lost, whatever its age by a rule; that of EN 1992-1-1 is"
              + " for "
              + measures.temperature(0)
              + " to "
              + measures.temperature(80)
              + " (value from memory).");
    }
  }

  private void strength(Strong strong) {
    lines.add("");
    add(
        figure("At %.2f days of age, for information only: between ", strong.ageDays())
            + figure("%.0f and ", 100 * strong.low())
            + figure("%.0f %% of the strength at 28 days", 100 * strong.high())
            + (strong.belowADay() ? ", and for less than a day the curves are not meant" : "")
            + ".");
    Table table = new Table("  ", Column.left(30), Column.right(8, 8), Column.left(40));
    strong
        .en1992()
        .forEach(
            part ->
                table.row(
                    "EN 1992-1-1, cement " + part.cement(),
                    figure("%.1f %%", 100 * part.part()),
                    part.characteristicMpa()
                        .map(mpa -> figure("characteristic %.2f MPa", mpa))
                        .orElse("")));
    table.row("ACI 209R, Type I, moist", figure("%.1f %%", 100 * strong.aci209()), "");
    lines.addAll(table.lines());
    boolean asked = question.characteristicMpa().isPresent();
    if (asked && strong.en1992().stream().allMatch(part -> part.characteristicMpa().isEmpty())) {
      add("No characteristic strength is told up to 3 days, for which the rule is not meant.");
    }
    add("The curves are of building concrete that is kept moist; yours is another.");
  }

  private static String likely(Optional<Ready> ready) {
    return ready.map(hours -> figure("%.1f h", hours.likely())).orElse("never");
  }

  private static String between(Optional<Ready> ready) {
    return ready
        .map(hours -> figure("%.1f and ", hours.low()) + figure("%.1f h", hours.high()))
        .orElse("");
  }

  private void add(String text) {
    lines.addAll(Lines.wrap(text, Lines.WIDEST));
  }

  private static String figure(String format, double value) {
    return String.format(Locale.ROOT, format, value);
  }
}
