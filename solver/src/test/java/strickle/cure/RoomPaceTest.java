package strickle.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.Test;
import strickle.book.Climate;

class RoomPaceTest {

  private static final Instant MONDAY = Instant.parse("2027-04-05T00:00:00Z");
  private static final RoomPace NO_CLIMATE = RoomPace.of(List.of(), ZoneOffset.UTC);

  private static Climate climate(String from, double temperatureC) {
    return new Climate(LocalDateTime.parse(from), temperatureC, OptionalDouble.empty());
  }

  private static RoomPace room(Climate... climate) {
    return RoomPace.of(List.of(climate), ZoneOffset.UTC);
  }

  private static long minutes(RoomPace room, Instant from, double hours) {
    return Duration.between(from, room.end(from, hours)).toMinutes();
  }

  @Test
  void withoutAClimateAnHourIsAnHour() {
    assertEquals(1200, minutes(NO_CLIMATE, MONDAY, 20));
    assertEquals(0, minutes(NO_CLIMATE, MONDAY, 0));
    assertEquals(20, NO_CLIMATE.hours(MONDAY, MONDAY.plusSeconds(72_000)), 1e-12);
    // Hours that no sum of binary fractions hits: six minutes, not seven.
    assertEquals(6, minutes(NO_CLIMATE, MONDAY, 0.1));
    assertEquals(18, minutes(NO_CLIMATE, MONDAY, 0.1 + 0.2));
  }

  @Test
  void aWaitIsOverAtTheFirstWholeMinute() {
    assertEquals(1, minutes(NO_CLIMATE, MONDAY, 0.0001));
    assertEquals(2, minutes(NO_CLIMATE, MONDAY, 1.0001 / 60));
    Instant between = MONDAY.plusSeconds(30).plusNanos(1);
    assertEquals(MONDAY.plusSeconds(60), NO_CLIMATE.end(between, 0));
    assertEquals(MONDAY.plusSeconds(60), NO_CLIMATE.end(between, 29.9 / 3600));
    assertEquals(MONDAY.plusSeconds(120), NO_CLIMATE.end(between, 30.1 / 3600));
  }

  @Test
  void beforeTheFirstClimateTheFactorIsOne() {
    RoomPace room = room(climate("2027-04-06T00:00", 10));
    assertEquals(1200, minutes(room, MONDAY, 20));
    assertEquals(24, room.hours(MONDAY, MONDAY.plusSeconds(86_400)), 1e-12);
  }

  @Test
  void aClimateAtTwentyDegreesHasTheFactorOfTheStandard() {
    // formats.md: at 20 °C the standard's own factor is 0.998, so 20 h take 3 minutes more.
    RoomPace room = room(climate("2027-04-05T00:00", 20));
    assertEquals(1203, minutes(room, MONDAY, 20));
  }

  @Test
  void aClimateHoldsUntilTheNext() {
    RoomPace room = room(climate("2027-04-05T00:00", 10), climate("2027-04-05T12:00", 30));
    // EN 1992-1-1 Annex B, Eq. B.10, values from memory: 0.6161 at 10 °C, 1.5662 at 30 °C.
    double hours = 12 * 0.6161 + 8 * 1.5662;
    assertEquals(hours, room.hours(MONDAY, MONDAY.plusSeconds(20 * 3600)), 0.001);
    assertTrue(Math.abs(minutes(room, MONDAY, hours) - 1200) <= 1);
  }

  @Test
  void pacesAreToldInTheOrderOfTime() {
    RoomPace room = room(climate("2027-04-07T00:00", 30), climate("2027-04-05T00:00", 10));
    assertEquals(
        List.of(
            new Pace(MONDAY, EquivalentAge.factor(10)),
            new Pace(MONDAY.plusSeconds(2 * 86_400), EquivalentAge.factor(30))),
        room.paces());
  }

  @Test
  void ofTwoClimatesFromOneMomentTheLaterInTheListCounts() {
    RoomPace room = room(climate("2027-04-05T00:00", 10), climate("2027-04-05T00:00", 30));
    assertEquals(List.of(new Pace(MONDAY, EquivalentAge.factor(30))), room.paces());
  }

  @Test
  void climateIsLocalTimeAndWaitsAreElapsedHours() {
    // Chicago's clocks go from 02:00 to 03:00 on 14 March 2027 (IANA time zone data).
    ZoneId chicago = ZoneId.of("America/Chicago");
    List<Climate> climate =
        List.of(climate("2027-03-14T01:00", 10), climate("2027-03-14T04:00", 20));
    RoomPace room = RoomPace.of(climate, chicago);
    assertEquals(
        List.of(Instant.parse("2027-03-14T07:00:00Z"), Instant.parse("2027-03-14T09:00:00Z")),
        room.paces().stream().map(Pace::from).toList());
    Instant from = LocalDateTime.parse("2027-03-13T20:00").atZone(chicago).toInstant();
    Instant end = RoomPace.of(List.of(), chicago).end(from, 20);
    assertEquals(LocalDateTime.parse("2027-03-14T17:00"), end.atZone(chicago).toLocalDateTime());
  }

  @Test
  void waitsThatCannotBeAreRefused() {
    for (double hours : new double[] {-1, Double.NaN, 1e7}) {
      assertThrows(IllegalArgumentException.class, () -> NO_CLIMATE.end(MONDAY, hours));
    }
    Instant before = MONDAY.minusSeconds(1);
    assertThrows(IllegalArgumentException.class, () -> NO_CLIMATE.hours(MONDAY, before));
    assertThrows(IllegalArgumentException.class, () -> new Pace(MONDAY, 0));
  }

  /** Calls the rule with many rooms; fixed start, so that every run tries the same. */
  private static void always(BiConsumer<Random, RoomPace> rule) {
    Random random = new Random(47);
    for (int i = 0; i < 400; i++) {
      List<Climate> climate = new ArrayList<>();
      LocalDateTime from = LocalDateTime.parse("2027-04-05T00:00");
      for (int k = random.nextInt(8); k > 0; k--) {
        from = from.plusMinutes(random.nextInt(3000));
        climate.add(climate(from.toString(), -30 + 90 * random.nextDouble()));
      }
      rule.accept(random, RoomPace.of(climate, ZoneOffset.UTC));
    }
  }

  private static Instant anyMinute(Random random) {
    return MONDAY.plusSeconds(60L * (random.nextInt(20_000) - 2_000));
  }

  @Test
  void theEndIsTheFirstMinuteAtWhichTheHoursAreGained() {
    always(
        (random, room) -> {
          Instant from = anyMinute(random);
          double hours = 200 * random.nextDouble() + 0.001;
          Instant end = room.end(from, hours);
          assertEquals(0, end.getEpochSecond() % 60);
          assertTrue(room.hours(from, end) + 1e-9 >= hours);
          assertTrue(room.hours(from, end.minusSeconds(60)) + 1e-9 < hours);
        });
  }

  @Test
  void hoursAreTheSumOverTheMinutes() {
    always(
        (random, room) -> {
          Instant from = anyMinute(random);
          double sum = 0;
          Instant at = from;
          for (int minute = 0; minute < 500; minute++, at = at.plusSeconds(60)) {
            sum += factorAt(room, at) / 60;
          }
          assertEquals(sum, room.hours(from, at), 1e-9);
        });
  }

  private static double factorAt(RoomPace room, Instant moment) {
    double factor = 1;
    for (Pace pace : room.paces()) {
      factor = pace.from().isAfter(moment) ? factor : pace.factor();
    }
    return factor;
  }

  @Test
  void aLaterOrLongerWaitNeverEndsEarlier() {
    always(
        (random, room) -> {
          Instant from = anyMinute(random);
          Instant later = from.plusSeconds(random.nextInt(100_000));
          double hours = 100 * random.nextDouble();
          double longer = hours + 10 * random.nextDouble();
          assertTrue(!room.end(later, hours).isBefore(room.end(from, hours)));
          assertTrue(!room.end(from, longer).isBefore(room.end(from, hours)));
        });
  }

  @Test
  void aWarmerRoomIsNeverSlower() {
    always(
        (random, room) -> {
          List<Climate> warmer = room.paces().stream().map(pace -> warmer(random, pace)).toList();
          Instant from = anyMinute(random);
          double hours = 100 * random.nextDouble();
          Instant end = RoomPace.of(warmer, ZoneOffset.UTC).end(from, hours);
          assertTrue(!end.isAfter(room.end(from, hours)));
        });
  }

  /** A climate warmer than the one that has this pace, which B.10 turned round gives. */
  private static Climate warmer(Random random, Pace pace) {
    double temperatureC = 4000 / (13.65 - Math.log(pace.factor())) - 273;
    return new Climate(
        LocalDateTime.ofInstant(pace.from(), ZoneOffset.UTC),
        Math.min(60, temperatureC + 1e-6 + random.nextDouble()),
        OptionalDouble.empty());
  }
}
