package strickle.json;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import strickle.cure.CoatingAir;
import strickle.cure.Evaporation;
import strickle.safety.RoomAssumption;
import strickle.safety.RoomDay;

/**
 * What was found out of a room ({@code strickle-room/1}).
 *
 * @param windKmPerHour the wind assumed
 * @param days the room as a book has it, in order; one for an air that was given
 * @param unknownDays on which a plan pours or coats before the first climate of the book
 */
public record RoomAnswer(double windKmPerHour, List<Day> days, List<LocalDate> unknownDays) {

  /**
   * The room from a moment on.
   *
   * @param from when; missing for an air that was given
   * @param pour what it does to a pour; missing when nothing is poured, or nothing can be said
   * @param coat what it does to a coat; missing when nothing is coated, or nothing can be said
   */
  public record Day(
      Optional<LocalDateTime> from,
      double airC,
      OptionalDouble humidityPercent,
      Optional<Pour> pour,
      Optional<Coat> coat) {}

  /** An evaporation with the least and most it may be. */
  public record Pour(
      double evaporationKgPerM2Hour, double atLeast, double atMost, Evaporation.Level level) {

    /** What an evaporation comes to. */
    public static Pour of(Evaporation rate) {
      return new Pour(rate.kgPerM2Hour(), rate.least(), rate.most(), rate.level());
    }
  }

  /** A dew point, and by how much a piece is above it. */
  public record Coat(double dewPointC, double pieceC, double aboveC, boolean good) {

    /** What an air comes to. */
    public static Coat of(CoatingAir air) {
      return new Coat(air.dewPointC(), air.surfaceC(), air.marginC(), air.isGood());
    }
  }

  /** The word of its format. */
  public static final String FORMAT = "strickle-room/1";

  /**
   * An air that was given.
   *
   * @param airC its temperature
   * @param humidityPercent its relative humidity
   * @param assumption the wind; the mix and the piece are as warm as the air when it does not say
   */
  public static RoomAnswer ofAir(double airC, double humidityPercent, RoomAssumption assumption) {
    double wind = assumption.windKmPerHour();
    double mixC = assumption.concreteC().orElse(airC);
    Evaporation rate = Evaporation.of(mixC, airC, humidityPercent, wind);
    CoatingAir air = CoatingAir.of(airC, humidityPercent, assumption.surfaceC().orElse(airC));
    Day day =
        new Day(
            Optional.empty(),
            airC,
            OptionalDouble.of(humidityPercent),
            Optional.of(Pour.of(rate)),
            Optional.of(Coat.of(air)));
    return new RoomAnswer(wind, List.of(day), List.of());
  }

  /** The days of a book or of a plan. */
  public static RoomAnswer of(double windKmPerHour, List<RoomDay> days, List<LocalDate> unknown) {
    return new RoomAnswer(windKmPerHour, days.stream().map(RoomAnswer::day).toList(), unknown);
  }

  private static Day day(RoomDay day) {
    return new Day(
        Optional.of(day.from()),
        day.climate().temperatureC(),
        day.climate().humidityPercent(),
        day.evaporation().filter(rate -> day.pours()).map(Pour::of),
        day.air().filter(air -> day.coats()).map(Coat::of));
  }
}
