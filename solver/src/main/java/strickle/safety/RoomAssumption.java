package strickle.safety;

import java.util.OptionalDouble;
import strickle.cure.Evaporation;

/**
 * What a book does not say of its room.
 *
 * @param windKmPerHour half a metre above a pour, 0 to 100; 0 is a room without a fan or a draught
 * @param concreteC the mix as it is poured, 0 to 60 °C; empty when as warm as the room
 * @param surfaceC of a piece that is coated, −45 to 100 °C; empty when as cold as the room was at
 *     its coldest in the hours before
 */
public record RoomAssumption(
    double windKmPerHour, OptionalDouble concreteC, OptionalDouble surfaceC) {

  /** For so many hours a piece may keep the cold of the room; common practice, no source. */
  public static final long COLD_KEPT_HOURS = 12;

  /** Refuses what no studio has. */
  public RoomAssumption {
    boolean good =
        windKmPerHour >= 0
            && windKmPerHour <= Evaporation.MOST_WIND_KM_PER_HOUR
            && within(concreteC, Evaporation.COLDEST_C, Evaporation.WARMEST_C)
            && within(surfaceC, -45, 100);
    if (!good) {
      throw new IllegalArgumentException(
          "A room with "
              + windKmPerHour
              + " km/h, "
              + concreteC
              + " and "
              + surfaceC
              + " cannot be; wind is from 0 to 100 km/h, concrete from 0 to 60 °C, a surface from"
              + " -45 to 100 °C.");
    }
  }

  /** Still air, a mix as warm as the room, pieces as cold as the room was. */
  public static RoomAssumption usual() {
    return new RoomAssumption(0, OptionalDouble.empty(), OptionalDouble.empty());
  }

  private static boolean within(OptionalDouble value, double lowest, double highest) {
    return value.stream().allMatch(given -> lowest <= given && given <= highest);
  }
}
