package strickle.cli;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strickle.book.Amount;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.cure.Drying;
import strickle.cure.DryingLog;
import strickle.cure.Weighing;

/**
 * The weights of a piece as they stand in a file.
 *
 * @param file the file as it was given
 * @param begin the local time of the first weighing, when the file has times; those with an offset
 *     are all by the offset of the first
 * @param log the weights
 */
record DryingSheet(String file, Optional<LocalDateTime> begin, DryingLog log) {

  private static final String TIME = "time";
  private static final String DAY = "day";
  private static final String MASS = "mass";
  private static final List<List<String>> HEADERS =
      List.of(List.of(TIME, MASS), List.of(DAY, MASS));
  private static final Pattern PLACE = Pattern.compile("^[.]weighings\\[([0-9]+)][.](.*)$");
  private static final Pattern OFFSET = Pattern.compile("T.*(Z|[+-][0-9:]+)$");
  private static final double MINUTES_PER_DAY = 24 * 60;
  private static final double MOST_DAYS = 3650;

  /**
   * Reads a file.
   *
   * @param scaleStepGrams what the scale can tell apart
   * @throws Faulty with the line of everything that is wrong
   */
  static DryingSheet read(String file, double scaleStepGrams) {
    CsvTable table = CsvTable.read("FILE", file, HEADERS);
    Given values = new Given();
    Optional<ZoneOffset> clock = clock(table);
    Optional<LocalDateTime> begin =
        table.has(TIME) ? moment(new Given(), table.rows().get(0), clock) : Optional.empty();
    List<Weighing> weighings = new ArrayList<>();
    for (CsvTable.Row row : table.rows()) {
      Optional<Double> days = days(values, row, begin, clock);
      Optional<Double> grams = grams(values, row);
      days.ifPresent(at -> grams.ifPresent(mass -> weighings.add(new Weighing(at, mass))));
    }
    values.done();
    DryingLog log = placed(file, table, () -> new DryingLog(weighings, scaleStepGrams));
    return new DryingSheet(file, begin, log);
  }

  /** The fit; what keeps it from being made is told of the file. */
  Drying fit(double limitPercent) {
    try {
      return Drying.of(log, limitPercent);
    } catch (Faulty faulty) {
      throw new Faulty(faulty.faults().stream().map(fault -> fault.under(file)).toList());
    }
  }

  private static Optional<Double> days(
      Given values, CsvTable.Row row, Optional<LocalDateTime> begin, Optional<ZoneOffset> clock) {
    if (row.cells().containsKey(TIME)) {
      return moment(values, row, clock)
          .flatMap(
              at -> begin.map(first -> Duration.between(first, at).toMinutes() / MINUTES_PER_DAY))
          .filter(
              days ->
                  values.must(
                      0 <= days && days <= MOST_DAYS,
                      row.where(TIME),
                      row.cell(TIME),
                      "a time from that of the first weighing to ten years later"));
    }
    String right = "days since the beginning such as 0 or 2.5, at most 3650";
    return values
        .decimal(row.where(DAY), row.number(DAY))
        .map(Number::doubleValue)
        .filter(
            days ->
                values.must(0 <= days && days <= MOST_DAYS, row.where(DAY), row.cell(DAY), right));
  }

  /** A time of the table, by the clock that showed the first one: so days are elapsed days. */
  private static Optional<LocalDateTime> moment(
      Given values, CsvTable.Row row, Optional<ZoneOffset> clock) {
    String where = row.where(TIME);
    String text = row.cell(TIME);
    boolean offset = hasOffset(text);
    if (!values.must(
        offset == clock.isPresent(),
        where,
        text,
        "a time with" + (offset ? "out an offset" : " its offset") + ", as the first one has it")) {
      return Optional.empty();
    }
    return clock.isPresent()
        ? values
            .offsetMoment(where, text)
            .map(at -> at.withOffsetSameInstant(clock.get()).toLocalDateTime())
        : values.moment(where, text);
  }

  /** The offset of the first time of the table; empty when its times are local. */
  private static Optional<ZoneOffset> clock(CsvTable table) {
    CsvTable.Row first = table.rows().get(0);
    return table.has(TIME) && hasOffset(first.cell(TIME))
        ? new Given()
            .offsetMoment(TIME, first.cell(TIME))
            .map(OffsetDateTime::getOffset)
            .or(() -> Optional.of(ZoneOffset.UTC))
        : Optional.empty();
  }

  private static boolean hasOffset(String text) {
    return OFFSET.matcher(text).find();
  }

  private static Optional<Double> grams(Given values, CsvTable.Row row) {
    String right = "a mass above 0 g, at most 10000 kg";
    return values
        .amount(row.where(MASS), row.number(MASS), Amount::mass)
        .filter(
            grams ->
                values.must(grams > 0 && grams <= 1e7, row.where(MASS), row.cell(MASS), right));
  }

  /** Faults of a weighing are told of its line, others of the file. */
  private static DryingLog placed(String file, CsvTable table, Supplier<DryingLog> making) {
    try {
      return making.get();
    } catch (Faulty faulty) {
      throw new Faulty(faulty.faults().stream().map(fault -> placed(file, table, fault)).toList());
    }
  }

  private static Fault placed(String file, CsvTable table, Fault fault) {
    Matcher place = PLACE.matcher(fault.path());
    if (!place.matches()) {
      return new Fault(file, fault.found(), fault.right());
    }
    CsvTable.Row row = table.rows().get(Integer.parseInt(place.group(1)));
    boolean mass = place.group(2).equals("grams");
    String column = mass ? MASS : table.has(TIME) ? TIME : DAY;
    String found = mass ? fault.found() : '"' + row.cell(column) + '"';
    return new Fault(row.where(column), found, fault.right());
  }
}
