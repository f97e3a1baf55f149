package strickle.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import strickle.book.Book;
import strickle.book.Mould;
import strickle.cli.Table.Column;
import strickle.json.BatchAnswer;
import strickle.json.BatchFilling;
import strickle.mix.Batch;
import strickle.mix.BatchLine;
import strickle.mix.Enough;
import strickle.mix.Leftover;
import strickle.mix.PigmentCheck;
import strickle.safety.BenchCautions;

/** A batch as a page of text. */
final class BatchText {

  private static final int MOST_TAKERS = 8;
  private static final String VOLUME = "volume";

  private final Optional<Book> book;
  private final Chosen chosen;
  private final BatchAnswer answer;
  private final Measures measures;
  private final double stepGrams;
  private final List<String> lines = new ArrayList<>();

  private BatchText(
      Optional<Book> book, Chosen chosen, BatchAnswer answer, Measures measures, double stepGrams) {
    this.book = book;
    this.chosen = chosen;
    this.answer = answer;
    this.measures = measures;
    this.stepGrams = stepGrams;
  }

  /**
   * The page, with a newline behind each line.
   *
   * @param stepGrams what the scale counts in; less is no leftover
   */
  static String of(
      Optional<Book> book, Chosen chosen, BatchAnswer answer, Measures measures, double stepGrams) {
    BatchText text = new BatchText(book, chosen, answer, measures, stepGrams);
    text.heading();
    text.weighOut();
    text.figures();
    text.enough();
    text.leftover();
    text.notes();
    text.cautions();
    return String.join("\n", text.lines) + "\n";
  }

  private void heading() {
    Batch batch = answer.batch();
    String what =
        chosen.mix().name()
            + ": "
            + measures.mass(batch.wetGrams())
            + " of wet mix, "
            + measures.volume(batch.wetMl())
            + " at "
            + measures.density(batch.wetDensityKgPerM3());
    lines.addAll(Lines.wrap(what, Lines.WIDEST));
    for (BatchFilling filling : answer.fillings()) {
      String text =
          filling.castings()
              + " x "
              + mould(filling.mould().orElse(VOLUME))
              + ", "
              + measures.volume(filling.volumeMl())
              + " and "
              + measures.mass(filling.gramsEach())
              + " each"
              + (filling.wastePercent() > 0
                  ? ", " + Words.percent(filling.wastePercent()) + " waste in it"
                  : "");
      lines.addAll(Lines.paragraph("  ", "    ", text));
    }
  }

  private void weighOut() {
    lines.add("");
    Column number = Column.right(0, 18);
    Table table = new Table("  ", Column.left(30), number, number, number, number, number, number);
    table.row("", "weigh", "off by", "of dry", "of cement", "of water", "of all");
    for (BatchLine line : answer.batch().lines()) {
      table.row(
          chosen.name(line.material()),
          measures.weighed(line.grams(), stepGrams),
          off(line.errorPercent()),
          String.format(Locale.ROOT, "%.1f %%", line.percentOfDry()),
          percent(line.percentOfCement()),
          percent(line.percentOfWater()),
          String.format(Locale.ROOT, "%.1f %%", line.percentOfTotal()));
    }
    Batch batch = answer.batch();
    double asked = batch.lines().stream().mapToDouble(BatchLine::exactGrams).sum();
    double over = asked == 0 ? 0 : 100 * (batch.wetGrams() - asked) / asked;
    table.row("wet mix, all together", measures.weighed(batch.wetGrams(), stepGrams), off(over));
    lines.addAll(table.lines());
  }

  private static String off(double percent) {
    return String.format(Locale.ROOT, "%+.2f %%", Math.rint(percent * 100) / 100 + 0.0);
  }

  private static String percent(OptionalDouble percent) {
    return percent.isPresent() ? String.format(Locale.ROOT, "%.1f %%", percent.getAsDouble()) : "?";
  }

  private void figures() {
    lines.add("");
    Batch batch = answer.batch();
    pigment(batch.pigment());
    batch
        .airPercent()
        .ifPresent(
            air ->
                lines.add(
                    String.format(
                        Locale.ROOT,
                        "  air      %.1f %% by volume",
                        Math.rint(air * 10) / 10 + 0.0)));
    batch
        .cementKgPerM3()
        .ifPresent(kg -> lines.add("  cement   " + measures.density(kg) + " of the wet mix"));
  }

  private void pigment(PigmentCheck check) {
    if (check.verdict() == PigmentCheck.Verdict.NONE) {
      return;
    }
    List<PigmentCheck.Against> rows = new ArrayList<>(check.pigments());
    if (rows.size() > 1) {
      rows.add(check.total());
    }
    for (PigmentCheck.Against one : rows) {
      String name = one.material().equals("all") ? "together" : chosen.name(one.material());
      String ofCement =
          one.percentOfCement().isPresent()
              ? String.format(
                  Locale.ROOT, "%.1f %% of the cement", one.percentOfCement().getAsDouble())
              : "of the cement cannot be checked";
      lines.add(
          String.format(
                  Locale.ROOT, "  pigment  %s: %.1f %% of the dry mix, ", name, one.percentOfDry())
              + ofCement);
    }
    List<String> unknown = check.limit().unknown().stream().map(chosen::name).toList();
    if (check.verdict() != PigmentCheck.Verdict.CANNOT_BE_CHECKED && !unknown.isEmpty()) {
      String text =
          "pigment  not checked against a most of its own, which is not known: "
              + String.join(", ", unknown);
      lines.addAll(Lines.paragraph("  ", "           ", text));
    }
  }

  private void enough() {
    for (BatchFilling filling : answer.fillings()) {
      List<String> parts = new ArrayList<>();
      filling
          .onHand()
          .ifPresent(
              there ->
                  parts.add(
                      "what is on hand makes "
                          + there.castings()
                          + " ("
                          + chosen.name(there.limitedBy())
                          + " runs out first)"));
      for (Enough bag : filling.bags()) {
        parts.add("a bag of " + chosen.name(bag.limitedBy()) + " makes " + bag.castings());
      }
      if (!parts.isEmpty()) {
        String text = mould(filling.mould().orElse(VOLUME)) + ": " + String.join(", ", parts);
        lines.addAll(Lines.paragraph("  ", "    ", text));
      }
    }
  }

  private void leftover() {
    if (answer.batch().leftoverGrams() < Math.max(1, stepGrams)) {
      return;
    }
    String left = "  left over " + measures.mass(answer.batch().leftoverGrams());
    lines.add(
        left + (answer.leftover().isEmpty() ? ": no mould that is free is small enough" : ""));
    for (Leftover.Taker taker : answer.leftover().stream().limit(MOST_TAKERS).toList()) {
      String text = taker.castings() + " x " + mould(taker.mould()) + " would leave ";
      lines.addAll(Lines.paragraph("    ", "      ", text + measures.mass(taker.leftGrams())));
    }
  }

  private void notes() {
    for (String note : answer.notes()) {
      lines.add("");
      lines.addAll(Lines.wrap("Note: " + note + ".", Lines.WIDEST));
    }
  }

  private void cautions() {
    double grams = answer.batch().wetGrams();
    lines.addAll(CautionText.sourced(BenchCautions.ofBatch(chosen.mix(), chosen.finder(), grams)));
  }

  private String mould(String id) {
    return book.stream()
        .flatMap(b -> b.moulds().stream())
        .filter(mould -> mould.id().equals(id))
        .map(Mould::name)
        .findFirst()
        .orElse(id);
  }
}
