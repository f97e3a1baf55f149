package strickle.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strickle.book.Amount;
import strickle.cure.Found;
import strickle.cure.Stretch;

/** Reads files of hours at temperatures; what is wrong is told with its line. */
final class CuringSheets {

  private static final String CASTING = "casting";
  private static final String HOURS = "hours";
  private static final String TEMPERATURE = "temperature";
  private static final double MOST_HOURS = 87_600;
  private static final double COLDEST_C = -30;
  private static final double WARMEST_C = 80;

  private CuringSheets() {}

  /** What one casting has been through. */
  static List<Stretch> log(String option, String file) {
    CsvTable table = CsvTable.read(option, file, List.of(List.of(HOURS, TEMPERATURE)));
    Given values = new Given();
    List<Stretch> stretches = new ArrayList<>();
    table.rows().forEach(row -> stretch(values, row).ifPresent(stretches::add));
    values.done();
    return List.copyOf(stretches);
  }

  /** Castings that were found ready, in the order of their first lines. */
  static List<Found> records(String option, String file) {
    CsvTable table = CsvTable.read(option, file, List.of(List.of(CASTING, HOURS, TEMPERATURE)));
    Given values = new Given();
    Map<String, List<Stretch>> castings = new LinkedHashMap<>();
    for (CsvTable.Row row : table.rows()) {
      String name = row.cell(CASTING);
      values.must(!name.isEmpty(), row.where(CASTING), name, "the name of a casting");
      stretch(values, row)
          .ifPresent(one -> castings.computeIfAbsent(name, key -> new ArrayList<>()).add(one));
    }
    values.done();
    List<Found> records = new ArrayList<>();
    castings.forEach((name, stretches) -> records.add(new Found(name, stretches)));
    return List.copyOf(records);
  }

  private static Optional<Stretch> stretch(Given values, CsvTable.Row row) {
    return stretch(
        values,
        row.where(HOURS),
        row.number(HOURS),
        row.where(TEMPERATURE),
        row.number(TEMPERATURE));
  }

  /** Hours at a temperature, each with the place it was found at. */
  static Optional<Stretch> stretch(
      Given values, String hoursAt, String hours, String temperatureAt, String temperature) {
    Optional<Double> time =
        values
            .decimal(hoursAt, hours)
            .map(Number::doubleValue)
            .filter(
                given ->
                    values.must(
                        0 < given && given <= MOST_HOURS,
                        hoursAt,
                        hours,
                        "hours above 0, at most 87600"));
    Optional<Double> warmth = temperature(values, temperatureAt, temperature);
    return time.flatMap(given -> warmth.map(celsius -> new Stretch(given, celsius)));
  }

  /** A temperature that concrete may have. */
  static Optional<Double> temperature(Given values, String option, String text) {
    return values
        .amount(option, text, Amount::temperature)
        .filter(
            given ->
                values.must(
                    COLDEST_C <= given && given <= WARMEST_C,
                    option,
                    text,
                    "a temperature from -30 to 80 °C (-22 to 176 °F)"));
  }
}
