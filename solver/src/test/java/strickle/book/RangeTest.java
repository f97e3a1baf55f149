package strickle.book;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The bounds of every single number, id, name and time of the book. */
class RangeTest {

  private static final double JUST_MORE = 1e-9;

  /** A number of a record and the least and most it may be. */
  private record Range(Record of, String component, double least, double most) {}

  private static Stream<Range> closedRanges() {
    return Stream.of(
        new Range(AllRecords.CLIMATE, "temperatureC", -30, 60),
        new Range(AllRecords.CLIMATE, "humidityPercent", 0, 100),
        new Range(new Core(2600, 140, 1.5), "massGrams", 0, 10_000_000),
        new Range(new Core(2600, 140, 1.5), "safetyFactor", 1, 100),
        new Range(SampleBook.planterDeep(), "wastePercent", 0, 100),
        new Range(SampleBook.planterDeep(), "setAtMostHours", 20, 8760),
        new Range(
            Altered.of(AllRecords.AFTER, "atMostHours", OptionalDouble.empty()), "hours", 0, 8760),
        new Range(AllRecords.AFTER, "atMostHours", 4, 8760),
        new Range(
            Altered.of(SampleBook.planterDeep(), "setAtMostHours", OptionalDouble.empty()),
            "setHours",
            0,
            8760),
        new Range(SampleBook.whiteBlend(), "relativeDensity", 0.05, 25),
        new Range(SampleBook.whiteBlend(), "cementPercent", 0, 100),
        new Range(AllRecords.DOSE, "percent", 0, 100),
        new Range(AllRecords.WATER, "percent", 0, 1000),
        new Range(SampleBook.slate(), "wetDensityKgPerM3", 200, 5000),
        new Range(SampleBook.planterSlate(), "finalDryHours", 0, 8760));
  }

  private static Stream<Range> rangesAboveZero() {
    return Stream.of(
        new Range(SampleBook.studio(), "batchLimitGrams", 0, 10_000_000),
        new Range(SampleBook.planterDeep(), "volumeMl", 0, 10_000_000),
        new Range(new Core(2600, 140, 1.5), "displacedMl", 0, 10_000_000),
        new Range(SampleBook.ironBlack(), "mostPercentOfCement", 0, 100),
        new Range(new Part("white-blend", 100), "parts", 0, 1_000_000),
        new Range(SampleBook.planterSlate(), "goodPercent", 0, 100));
  }

  private static Stream<Range> wholeRanges() {
    return Stream.of(
        new Range(SampleBook.rack(), "places", 1, 100_000),
        new Range(SampleBook.tubA(), "count", 1, 1000),
        new Range(SampleBook.tubA(), "lifeCastings", 1, 1_000_000),
        new Range(new FormUse("tub-a", 1), "count", 1, 1000),
        new Range(SampleBook.planterDeep(), "cavities", 1, 1000),
        new Range(SampleBook.planterDeep(), "prepMinutes", 0, 100_000),
        new Range(SampleBook.planterDeep(), "pourMinutes", 0, 100_000),
        new Range(SampleBook.planterDeep(), "demouldMinutes", 1, 100_000),
        new Range(SampleBook.whiteBlend(), "leadDays", 0, 3650),
        new Range(SampleBook.slate(), "mixMinutes", 0, 100_000),
        new Range(SampleBook.slate(), "workingMinutes", 1, 100_000),
        new Range(SampleBook.slate(), "washMinutes", 0, 100_000),
        new Range(SampleBook.planterSlate(), "onHand", 0, 100_000),
        new Range(SampleBook.planterSlate(), "typicalRun", 1, 1000),
        new Range(SampleBook.sandTheRim(), "setupMinutes", 0, 100_000),
        new Range(SampleBook.sandTheRim(), "minutesEach", 0, 100_000),
        new Range(new RestsOn("rack", 1), "placesEach", 1, 1000),
        new Range(AllRecords.LINE, "quantity", 1, 100_000),
        new Range(AllRecords.PIN, "castings", 1, 1000));
  }

  private static Stream<Arguments> amounts() {
    return Stream.of(
        Arguments.of(SampleBook.studio(), "wagePerHour"),
        Arguments.of(SampleBook.studio(), "overheadPerMonth"),
        Arguments.of(SampleBook.tubA(), "costEach"),
        Arguments.of(SampleBook.pack("1", "1"), "price"),
        Arguments.of(SampleBook.whiteBlend(), "onHand"),
        Arguments.of(SampleBook.planterSlate(), "price"),
        Arguments.of(SampleBook.planterSlate(), "leftoverValue"),
        Arguments.of(AllRecords.LINE, "price"),
        Arguments.of(SampleBook.ownTable(), "fixedFee"),
        Arguments.of(SampleBook.springFair(), "tableCost"),
        Arguments.of(AllRecords.DEMAND, "price"));
  }

  private static Stream<Arguments> amountsAboveZero() {
    return Stream.of(
        Arguments.of(SampleBook.studio(), "productiveHoursPerMonth"),
        Arguments.of(SampleBook.pack("1", "1"), "quantity"),
        Arguments.of(SampleBook.use("sealer", "18"), "quantity"));
  }

  private static Stream<Arguments> percentagesOff() {
    return Stream.of(
        Arguments.of(SampleBook.ownTable(), "percentFee"),
        Arguments.of(SampleBook.ownTable(), "discountPercent"));
  }

  static Stream<Arguments> refused() {
    Stream<Arguments> numbers =
        closedRanges()
            .flatMap(r -> numbers(r, r.least - JUST_MORE, justAbove(r.most), -1e300, Double.NaN));
    Stream<Arguments> aboveZero =
        rangesAboveZero().flatMap(r -> numbers(r, 0, -0.0, -1, justAbove(r.most), Double.NaN));
    Stream<Arguments> infinite =
        Stream.concat(closedRanges(), rangesAboveZero())
            .flatMap(r -> numbers(r, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY));
    Stream<Arguments> whole =
        wholeRanges().flatMap(r -> whole(r, (int) r.least - 1, (int) r.most + 1, -7));
    return Stream.of(numbers, aboveZero, infinite, whole, refusedAmounts()).flatMap(s -> s);
  }

  private static Stream<Arguments> refusedAmounts() {
    return Stream.of(
            decimals(amounts(), "-0.01", "1000000000.01", "1e999999999", "0.0000000000001"),
            decimals(amountsAboveZero(), "0", "-1", "1000000000.01", "1e-999999999"),
            decimals(percentagesOff(), "-0.01", "100", "250", "0.0000000000001"),
            decimals(
                Stream.of(Arguments.of(SampleBook.gardenShop(), "weight")),
                "-1",
                "1000000.000001",
                "0.0000001"),
            airPercents(-0.001, 80, Double.NaN, Double.POSITIVE_INFINITY))
        .flatMap(s -> s);
  }

  static Stream<Arguments> accepted() {
    Stream<Arguments> numbers = closedRanges().flatMap(r -> numbers(r, r.least, r.most));
    Stream<Arguments> aboveZero = rangesAboveZero().flatMap(r -> numbers(r, JUST_MORE, r.most));
    Stream<Arguments> whole = wholeRanges().flatMap(r -> whole(r, (int) r.least, (int) r.most));
    return Stream.of(
            numbers,
            aboveZero,
            whole,
            decimals(amounts(), "0", "0.000000000001", "1000000000", "1e9"),
            decimals(amountsAboveZero(), "0.000000000001", "1000000000"),
            decimals(percentagesOff(), "0", "99.999"),
            decimals(
                Stream.of(Arguments.of(SampleBook.gardenShop(), "weight")),
                "0",
                "0.000001",
                "1000000",
                "2.5000000000000"),
            airPercents(0, 79.999))
        .flatMap(s -> s);
  }

  private static double justAbove(double most) {
    return Math.max(Math.nextUp(most), most + JUST_MORE);
  }

  private static Stream<Arguments> numbers(Range range, double... values) {
    return DoubleStream.of(values)
        .mapToObj(v -> Arguments.of(range.of, range.component, asGiven(range, v)));
  }

  private static Object asGiven(Range range, double value) {
    boolean optional =
        Stream.of(range.of.getClass().getRecordComponents())
            .anyMatch(
                c -> c.getName().equals(range.component) && c.getType() == OptionalDouble.class);
    return optional ? OptionalDouble.of(value) : (Object) value;
  }

  private static Stream<Arguments> whole(Range range, int... values) {
    return IntStream.of(values).mapToObj(v -> Arguments.of(range.of, range.component, v));
  }

  private static Stream<Arguments> airPercents(double... values) {
    return DoubleStream.of(values).mapToObj(v -> Arguments.of(SampleBook.slate(), "airPercent", v));
  }

  private static Stream<Arguments> decimals(Stream<Arguments> places, String... values) {
    return places.flatMap(
        place ->
            Stream.of(values)
                .map(value -> decimal((Record) place.get()[0], (String) place.get()[1], value)));
  }

  private static Arguments decimal(Record record, String component, String value) {
    boolean optional =
        Stream.of(record.getClass().getRecordComponents())
            .anyMatch(c -> c.getName().equals(component) && c.getType() == Optional.class);
    BigDecimal number = new BigDecimal(value);
    return Arguments.of(record, component, optional ? Optional.of(number) : number);
  }

  @ParameterizedTest
  @MethodSource("refused")
  void aNumberOutsideItsBoundsIsRefusedAtItsPath(Record record, String component, Object value) {
    assertEquals("." + component, Faults.only(() -> Altered.of(record, component, value)).path());
  }

  @ParameterizedTest
  @MethodSource("accepted")
  void aNumberAtItsBoundsIsTaken(Record record, String component, Object value) {
    assertDoesNotThrow(() -> Altered.of(record, component, value));
  }

  @ParameterizedTest
  @MethodSource("moments")
  void aTimeIsAWholeMinuteThatCanBeMeant(Record record, String component) {
    Stream.of(
            "2027-04-05T09:00:01", "2027-04-05T09:00:00.5", "1969-12-31T23:59", "2200-01-01T00:00")
        .map(LocalDateTime::parse)
        .forEach(
            moment ->
                assertEquals(
                    "." + component,
                    Faults.only(() -> Altered.of(record, component, moment)).path()));
    altered(record, component, LocalDateTime.parse("1970-01-01T00:00"));
    altered(record, component, LocalDateTime.parse("2199-12-31T23:59"));
  }

  static Stream<Arguments> moments() {
    return Stream.of(
        Arguments.of(AllRecords.CLIMATE, "from"),
        Arguments.of(SampleBook.gardenShop(), "due"),
        Arguments.of(SampleBook.springFair(), "opens"),
        Arguments.of(AllRecords.PIN, "start"));
  }

  @ParameterizedTest
  @MethodSource("farDates")
  void aSpecialDayIsInAYearThatCanBeMeant(LocalDate date) {
    assertEquals(
        ".date", Faults.only(() -> Altered.of(AllRecords.SPECIAL_DAY, "date", date)).path());
  }

  static Stream<LocalDate> farDates() {
    return Stream.of(LocalDate.parse("1969-12-31"), LocalDate.parse("2200-01-01"), LocalDate.MAX);
  }

  private static Record altered(Record record, String component, Object value) {
    return assertDoesNotThrow(() -> Altered.of(record, component, value));
  }
}
