package strickle.api;

import java.util.OptionalDouble;
import strickle.cure.Evaporation;
import strickle.json.RoomAnswer;
import strickle.safety.RoomAssumption;

/**
 * An air to be judged.
 *
 * @param airC its temperature, 0 to 60 °C
 * @param humidityPercent its relative humidity, 1 to 100
 * @param mixC the mix as it is poured, 0 to 60 °C; as warm as the air without it
 * @param pieceC a piece that is to be coated, -45 to 100 °C; as warm as the air without it
 * @param windKmPerHour wind half a metre above the pour, 0 to 100; 0 without it
 */
public record AirWanted(
    double airC,
    double humidityPercent,
    OptionalDouble mixC,
    OptionalDouble pieceC,
    OptionalDouble windKmPerHour) {

  private static final String WARM = "a temperature in °C";

  /** Refuses what is out of range. */
  public AirWanted {
    new Ranges()
        .within(
            ".airC", OptionalDouble.of(airC), Evaporation.COLDEST_C, Evaporation.WARMEST_C, WARM)
        .within(".humidityPercent", OptionalDouble.of(humidityPercent), 1, 100, "a percentage")
        .within(".mixC", mixC, Evaporation.COLDEST_C, Evaporation.WARMEST_C, WARM)
        .within(".pieceC", pieceC, -45, 100, WARM)
        .within(
            ".windKmPerHour", windKmPerHour, 0, Evaporation.MOST_WIND_KM_PER_HOUR, "a wind in km/h")
        .done();
  }

  /** What it does to a pour and a coat. */
  RoomAnswer answer() {
    RoomAssumption assumption = new RoomAssumption(windKmPerHour.orElse(0), mixC, pieceC);
    return RoomAnswer.ofAir(airC, humidityPercent, assumption);
  }
}
