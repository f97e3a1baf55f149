package strickle.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Option;
import strickle.book.Amount;
import strickle.book.Fault;
import strickle.cure.Evaporation;
import strickle.safety.RoomAssumption;

/** What of a room is measured or assumed, on the command line. */
final class RoomOptions {

  /** The option for the air's temperature. */
  static final String AIR = "--air-c";

  /** The option for its humidity. */
  static final String HUMIDITY = "--humidity-percent";

  private static final String MIX = "--mix-c";
  private static final String PIECE = "--piece-c";

  @Option(
      names = AIR,
      paramLabel = "TEMPERATURE",
      description = "the air's temperature, 0 to 60 °C, such as 22 or 72F; in place of a book")
  private String air;

  @Option(
      names = HUMIDITY,
      paramLabel = "PERCENT",
      description = "the air's relative humidity, 1 to 100; in place of a book")
  private String humidity;

  @Option(
      names = MIX,
      paramLabel = "TEMPERATURE",
      description = "the mix as it is poured, 0 to 60 °C; as warm as the air when left out")
  private String mix;

  @Option(
      names = PIECE,
      paramLabel = "TEMPERATURE",
      description = {
        "a piece that is to be coated, -45 to 100 °C; when left out as warm as the air, or with a"
            + " book as cold as the room was in the last 12 hours"
      })
  private String piece;

  @Option(
      names = "--wind-km-h",
      paramLabel = "SPEED",
      description = "wind half a metre above the pour, such as 10 or 6mph; 0 when left out")
  private String wind;

  /** Whether the air was given, or a part of it. */
  boolean hasAir() {
    return air != null || humidity != null;
  }

  /** What is missing of the air. */
  List<Fault> missing() {
    List<Fault> faults = new ArrayList<>();
    if (air == null) {
      faults.add(new Fault(AIR, "nothing", "the air's temperature, beside " + HUMIDITY));
    }
    if (humidity == null) {
      faults.add(new Fault(HUMIDITY, "nothing", "the air's humidity, beside " + AIR));
    }
    return faults;
  }

  /** The air's temperature in °C; what is wrong is noted. */
  double air(Given values) {
    return within(values, AIR, air, Evaporation.COLDEST_C, Evaporation.WARMEST_C).orElse(0);
  }

  /** The air's humidity in percent; what is wrong is noted. */
  double humidity(Given values) {
    String right = "a percentage from 1 to 100";
    return values
        .decimal(HUMIDITY, humidity)
        .map(Number::doubleValue)
        .filter(percent -> values.must(percent >= 1 && percent <= 100, HUMIDITY, humidity, right))
        .orElse(1.0);
  }

  /** The rest of it; what is wrong is noted. */
  RoomAssumption assumption(Given values) {
    Optional<Double> speed = values.amount("--wind-km-h", wind, WindText::read);
    OptionalDouble concrete =
        within(values, MIX, mix, Evaporation.COLDEST_C, Evaporation.WARMEST_C);
    OptionalDouble surface = within(values, PIECE, piece, -45, 100);
    return new RoomAssumption(speed.orElse(0.0), concrete, surface);
  }

  private static OptionalDouble within(
      Given values, String option, String text, double least, double most) {
    String right =
        String.format(
            Locale.ROOT,
            "a temperature from %.0f to %.0f °C (%.0f to %.0f °F)",
            least,
            most,
            least * 9 / 5 + 32,
            most * 9 / 5 + 32);
    return values
        .amount(option, text, Amount::temperature)
        .filter(c -> values.must(least <= c && c <= most, option, text, right))
        .map(OptionalDouble::of)
        .orElseGet(OptionalDouble::empty);
  }
}
