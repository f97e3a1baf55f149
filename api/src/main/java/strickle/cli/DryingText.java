package strickle.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleFunction;
import strickle.cli.Table.Column;
import strickle.cure.Between;
import strickle.cure.Drying;
import strickle.cure.DryingLog;

/** A drying log and what is read from it, as a page of text. */
final class DryingText {

  private static final String ADVICE =
      "A slow daily loss is not dry: the free water left is what counts under a coat. The limit is"
          + " a rule of the house; standards ask for less than 0.5 % (ASTM C642) between two"
          + " weighings 24 hours apart in an oven. Bands hold in about 90 of 100 logs if drying"
          + " slows evenly, and concrete slows more than that towards its end: weigh on, and ask"
          + " again.";

  private DryingText() {}

  /** The page, with a newline behind each line. */
  static String of(DryingSheet sheet, Drying drying, Measures measures) {
    DryingLog log = sheet.log();
    double days = log.lastDays() - log.firstDays();
    List<String> lines = new ArrayList<>();
    lines.addAll(
        Lines.wrap(
            sheet.file()
                + ": "
                + Words.count(log.weighings().size(), "weighing")
                + " over "
                + figure("%.1f days", days)
                + ", "
                + measures.mass(log.lostGrams())
                + " lost",
            Lines.WIDEST));
    lines.add("");
    lines.addAll(table(sheet, drying, measures).lines());
    if (drying.limitDays().likely() <= days) {
      lines.add("");
      lines.addAll(Lines.wrap("By this curve the limit has been reached already.", Lines.WIDEST));
    }
    lines.add("");
    lines.addAll(Lines.wrap(ADVICE, Lines.WIDEST));
    return String.join("\n", lines) + "\n";
  }

  private static Table table(DryingSheet sheet, Drying drying, Measures measures) {
    DoubleFunction<String> mass = measures::mass;
    Table table = new Table("  ", Column.left(32), Column.left(26), Column.left(36));
    row(table, "free water at the last weighing", drying.waterNowGrams(), mass);
    row(table, "all dried out it would weigh", drying.finalGrams(), mass);
    row(
        table,
        "free water lost in a day",
        percent(drying.ratePerDay()),
        part -> figure("%.1f %%", part));
    table.row(
        "last two weighings, for a day", figure("%.2f %%", sheet.log().lastDailyPercent()), "");
    limit(table, sheet, drying);
    row(table, "free water still in it then", drying.waterAtLimitGrams(), mass);
    return table;
  }

  private static Between percent(Between rate) {
    return new Between(lost(rate.low()), lost(rate.likely()), lost(rate.high()));
  }

  private static double lost(double rate) {
    return -100 * Math.expm1(-rate);
  }

  private static void row(Table table, String what, Between band, DoubleFunction<String> words) {
    table.row(
        what,
        words.apply(band.likely()),
        words.apply(band.low()) + " to " + words.apply(band.high()));
  }

  private static void limit(Table table, DryingSheet sheet, Drying drying) {
    Between days = drying.limitDays();
    String likely = figure("day %.0f", days.likely());
    table.row(
        "a day's loss under " + Words.percent(drying.limitPercent()),
        date(sheet, days.likely()).map(date -> date + ", " + likely).orElse(likely),
        date(sheet, days.low()).orElse(figure("day %.0f", days.low()))
            + " to "
            + date(sheet, days.high()).orElse(figure("%.0f", days.high())));
  }

  private static Optional<String> date(DryingSheet sheet, double days) {
    return sheet.begin().map(begin -> Moments.day(begin.plusDays((long) days).toLocalDate()));
  }

  private static String figure(String format, double value) {
    return String.format(Locale.ROOT, format, value);
  }
}
