package strickle.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import strickle.cli.Table.Column;
import strickle.cure.CoatingAir;
import strickle.cure.Evaporation;
import strickle.safety.RoomDay;

/** What the room does to pours and coats, day by day. */
final class RoomText {

  /** What the figures are good for. */
  static final String NOTE =
      "Evaporation is an estimate by Uno's formula (ACI Materials Journal 95-M34) that may be 40 %"
          + " off (Hover, ACI SP-338); from about 1 kg/m²/h (0.2 lb/ft²/h) on, half of that for"
          + " rich and fine mixes, a fresh face can crack (ACI 305R as quoted). That a piece should"
          + " be 3 °C (5.4 °F) above the dew point and the air at most 85 % humid is a rule of"
          + " thumb from painting steel (second-hand, after ISO 8502-4): follow the product's"
          + " sheet.";

  private final RoomWords words;

  private RoomText(RoomWords words) {
    this.words = words;
  }

  /** A table of all the days. */
  static List<String> table(List<RoomDay> days, RoomWords words) {
    RoomText text = new RoomText(words);
    Table table =
        new Table(
            "  ",
            Column.left(21),
            Column.left(13),
            Column.right(0, 8),
            Column.right(0, 6),
            Column.right(0, 14),
            Column.right(0, 9));
    table.row("from", "what", "air", "humid", "evaporation", "over dew");
    for (RoomDay day : days) {
      table.row(text.cells(day));
      text.minds(day).forEach(mind -> table.heading("    " + mind));
    }
    unknown(days).forEach(table::heading);
    return table.lines();
  }

  /** What a plan has to mind: a line for each day there is something, and what is usual. */
  static List<String> brief(List<RoomDay> days, List<LocalDate> dark, RoomWords words) {
    RoomText text = new RoomText(words);
    List<String> lines = new ArrayList<>();
    for (RoomDay day : days) {
      for (String mind : text.minds(day)) {
        String when = Moments.full(day.from()) + ", " + what(day) + ": ";
        lines.addAll(Lines.paragraph("  ", "    ", when + mind));
      }
    }
    boolean known = days.stream().anyMatch(day -> !day.isUnknown());
    if (lines.isEmpty() && known) {
      lines.addAll(Lines.paragraph("  ", "    ", text.nothing(days)));
    }
    unknown(days).forEach(line -> lines.addAll(Lines.paragraph("  ", "    ", line)));
    dark(dark).ifPresent(line -> lines.addAll(Lines.paragraph("  ", "    ", line)));
    return lines;
  }

  /** On which days a plan works in a room the book does not know yet. */
  static Optional<String> dark(List<LocalDate> days) {
    return days.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "nothing is known of the room before the first climate of the book: "
                + Words.count(days.size(), "day")
                + " with pours or coats, from "
                + Moments.day(days.get(0))
                + " on");
  }

  /** What cannot be said, and why; nothing when everything is known. */
  private static List<String> unknown(List<RoomDay> days) {
    List<String> lines = new ArrayList<>();
    long dark = days.stream().filter(day -> day.climate().humidityPercent().isEmpty()).count();
    if (dark > 0) {
      lines.add(
          "humidity not measured at "
              + dark
              + " of "
              + Words.count(days.size(), "time")
              + ": nothing can be said of drying pours and damp coats there");
    }
    return lines;
  }

  private String nothing(List<RoomDay> days) {
    double rate =
        days.stream()
            .filter(RoomDay::pours)
            .flatMap(day -> day.evaporation().stream())
            .mapToDouble(Evaporation::kgPerM2Hour)
            .max()
            .orElse(0);
    double margin =
        days.stream()
            .filter(RoomDay::coats)
            .flatMap(day -> day.air().stream())
            .mapToDouble(CoatingAir::marginC)
            .min()
            .orElse(Double.NaN);
    String most = words.rate(rate * (1 + Evaporation.UNCERTAINTY));
    return "fine for pours and coats: in still air a pour loses about "
        + words.rate(rate)
        + " at most, "
        + most
        + " if the estimate is low"
        + (Double.isNaN(margin)
            ? ""
            : "; pieces are at least " + words.degrees(margin) + " above the dew point");
  }

  private String[] cells(RoomDay day) {
    return new String[] {
      Moments.full(day.from()),
      what(day),
      words.temperature(day.climate().temperatureC()),
      day.climate().humidityPercent().isPresent()
          ? String.format(Locale.ROOT, "%.0f %%", day.climate().humidityPercent().getAsDouble())
          : "-",
      day.evaporation()
          .filter(rate -> day.pours())
          .map(rate -> words.rate(rate.kgPerM2Hour()))
          .orElse("-"),
      day.air().filter(air -> day.coats()).map(air -> words.degrees(air.marginC())).orElse("-")
    };
  }

  private static String what(RoomDay day) {
    return day.pours() && day.coats() ? "pour and coat" : day.pours() ? "pour" : "coat";
  }

  /** What there is to mind on a day. */
  private List<String> minds(RoomDay day) {
    List<String> minds = new ArrayList<>();
    day.evaporation()
        .filter(rate -> day.driesPours())
        .ifPresent(rate -> minds.add("evaporation " + words.advice(rate)));
    day.air()
        .filter(air -> day.dampensCoats())
        .ifPresent(
            air ->
                minds.add(
                    "coats: "
                        + words.advice(air)
                        + " ("
                        + words.degrees(Math.abs(air.marginC()))
                        + (air.marginC() < 0 ? " below it)" : " above it)")));
    frost(day).ifPresent(minds::add);
    return minds;
  }

  /** In frost nothing is estimated, and nothing should be poured or coated. */
  private static Optional<String> frost(RoomDay day) {
    if (!day.freezes()) {
      return Optional.empty();
    }
    String pours = "fresh concrete must not freeze, and no evaporation is estimated";
    String coats = "few coats dry, and what is on the product's sheet decides";
    String both = pours + "; " + coats;
    return Optional.of("frost: " + (day.pours() ? day.coats() ? both : pours : coats));
  }
}
