package strickle.paper;

import java.util.Locale;
import strickle.cure.CoatingAir;
import strickle.cure.Evaporation;
import strickle.safety.RoomDay;

/** What the room does on a day, in a line or two. */
final class RoomLine {

  private RoomLine() {}

  /** The words, full stop included. */
  static String of(RoomDay day) {
    StringBuilder line = new StringBuilder("Room from ");
    line.append(Times.localClock(day.from())).append(": ");
    line.append(text("%.1f °C", day.climate().temperatureC()));
    day.climate()
        .humidityPercent()
        .ifPresentOrElse(
            humid -> line.append(text(", %.0f %% humid", humid)),
            () -> line.append(", humidity not measured"));
    line.append('.');
    if (day.pours()) {
      day.evaporation().ifPresent(rate -> line.append(pour(rate)));
    }
    day.air().ifPresent(air -> line.append(coat(air, day.coats())));
    if (day.freezes()) {
      line.append(" Frost: fresh concrete must not freeze, and few coats dry.");
    }
    return line.toString();
  }

  private static String pour(Evaporation rate) {
    String mind =
        switch (rate.level()) {
          case LOW -> "";
          case NEAR -> ": keep wind off the pour";
          case RAISED -> ": cover the pour";
          case HIGH -> ": cover the pour at once";
        };
    return String.format(
        Locale.ROOT,
        " In still air a pour loses about %.2f kg/m²/h (%.2f to %.2f)%s.",
        rate.kgPerM2Hour(),
        rate.least(),
        rate.most(),
        mind);
  }

  private static String coat(CoatingAir air, boolean coats) {
    String dew = text(" Dew point %.1f °C", air.dewPointC());
    String side = air.marginC() < 0 ? " below it" : " above it";
    String over = text(", pieces %.1f °C", Math.abs(air.marginC())) + side;
    String go = air.isGood() ? ": a coat may go on" : ": let coats wait";
    return coats ? dew + over + go + "." : dew + ".";
  }

  private static String text(String format, double value) {
    return String.format(Locale.ROOT, format, value);
  }
}
