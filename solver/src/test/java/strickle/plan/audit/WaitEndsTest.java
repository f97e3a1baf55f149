package strickle.plan.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import strickle.book.Climate;

/** When waits end. Paces are worked out from EN 1992-1-1 B.10, by hand. */
class WaitEndsTest {

  private static final ZonedMinutes TIME = new ZonedMinutes(ZoneId.of("America/Chicago"));
  private static final long MONDAY = minute("2027-04-05T00:00");

  @Test
  void theStandardsOwnPaceAtTwentyDegreesIsJustUnderOne() {
    // exp(13.65 − 4000/293) = exp(−0.00187713).
    assertEquals(0.99812463, WaitEnds.pace(20), 1e-8);
  }

  @Test
  void thePaceFollowsTheTemperature() {
    // 4000/291 = 13.74570447, 4000/283 = 14.13427562, 4000/303 = 13.20132013.
    assertEquals(Math.exp(-0.09570447), WaitEnds.pace(18), 1e-8);
    assertEquals(0.908732537, WaitEnds.pace(18), 1e-8);
    assertEquals(Math.exp(-0.48427562), WaitEnds.pace(10), 1e-8);
    assertEquals(Math.exp(0.44867987), WaitEnds.pace(30), 1e-8);
  }

  @Test
  void withoutAClimateAnHourIsAnHour() {
    WaitEnds ends = ends();
    assertEquals(MONDAY + 1200, ends.afterAge(MONDAY, 20));
    assertEquals(MONDAY, ends.afterAge(MONDAY, 0));
    assertEquals(MONDAY + 1, ends.afterAge(MONDAY, 0.001));
  }

  @Test
  void aColdRoomTakesLonger() {
    // 20 h / 0.908732537 = 22.00867604 h = 1320.52 min.
    assertEquals(MONDAY + 1321, ends(climate("2027-04-05T00:00", 18)).afterAge(MONDAY, 20));
  }

  @Test
  void beforeTheFirstClimateAnHourIsAnHour() {
    // 10 h at pace 1, then 10 h / 0.908732537 = 660.26 min.
    WaitEnds ends = ends(climate("2027-04-05T10:00", 18));
    assertEquals(MONDAY + 600 + 661, ends.afterAge(MONDAY, 20));
    assertEquals(MONDAY + 600, ends.afterAge(MONDAY, 10));
  }

  @Test
  void aClimateHoldsUntilTheNext() {
    // 6 h at 18 °C count 5.45239522 h; the other 14.54760478 h at 30 °C, where an hour counts
    // exp(0.44867987) = 1.56624305, take 9.28821696 h = 557.293 min.
    WaitEnds ends = ends(climate("2027-04-05T00:00", 18), climate("2027-04-05T06:00", 30));
    assertEquals(MONDAY + 360 + 558, ends.afterAge(MONDAY, 20));
  }

  @Test
  void climatesMayStandInAnyOrderAndTheLastWordHolds() {
    WaitEnds ends =
        ends(
            climate("2027-04-05T06:00", 10),
            climate("2027-04-05T00:00", 18),
            climate("2027-04-05T06:00", 30));
    assertEquals(MONDAY + 360 + 558, ends.afterAge(MONDAY, 20));
  }

  @Test
  void halvingAgreesWithCountingMinuteByMinute() {
    Climate[] climates = new Climate[100];
    for (int i = 0; i < climates.length; i++) {
      LocalDateTime from = LocalDateTime.parse("2027-03-01T00:17").plusMinutes(i * 367L);
      climates[i] = new Climate(from, 20 + 14 * Math.sin(i * 1.7), OptionalDouble.empty());
    }
    WaitEnds ends = ends(climates);
    for (int i = 0; i < 30; i++) {
      long from = minute("2027-02-27T00:00") + i * 1501L;
      double hours = 0.3 + i * 3.7;
      assertEquals(minuteByMinute(climates, from, hours), ends.afterAge(from, hours));
    }
  }

  @Test
  void elapsedHoursEndAtTheFirstWholeMinute() {
    WaitEnds ends = ends();
    assertEquals(MONDAY + 240, ends.afterHours(MONDAY, 4));
    assertEquals(MONDAY + 240, ends.afterHours(MONDAY, 3.99));
    assertEquals(MONDAY + 1, ends.afterHours(MONDAY, 1 / 60.0));
    assertEquals(MONDAY, ends.afterHours(MONDAY, 0));
  }

  @Test
  void aBillionthOfAnHourIsNoHour() {
    WaitEnds ends = ends();
    assertEquals(MONDAY + 60, ends.afterHours(MONDAY, 1 + 0.9e-9));
    assertEquals(MONDAY + 61, ends.afterHours(MONDAY, 1 + 1.1e-9));
    assertEquals(MONDAY + 60, ends.afterAge(MONDAY, 1 + 0.9e-9));
    assertEquals(MONDAY + 61, ends.afterAge(MONDAY, 1 + 1.1e-9));
    assertTrue(WaitEnds.isWithin(MONDAY, MONDAY + 60, 1 - 0.9e-9));
    assertFalse(WaitEnds.isWithin(MONDAY, MONDAY + 60, 1 - 1.1e-9));
  }

  @Test
  void elapsedHoursGoOnOverAClockChange() {
    // On 14 March 2027 Chicago leaves out the hour from 2:00 to 3:00.
    long saturday = minute("2027-03-13T10:00");
    assertEquals(minute("2027-03-14T11:00"), ends().afterHours(saturday, 24));
    assertEquals(minute("2027-03-14T11:00"), ends().afterAge(saturday, 24));
    // On 7 November 2027 it has the hour from 1:00 to 2:00 twice.
    long november = minute("2027-11-06T10:00");
    assertEquals(minute("2027-11-07T09:00"), ends().afterHours(november, 24));
  }

  @Test
  void aWaitThatNeverEndsIsNoEndlessSearch() {
    Climate frozen = climate("2027-04-05T00:00", -30);
    long end = ends(frozen).afterAge(MONDAY, 1e9);
    assertTrue(end > MONDAY + 900L * 365 * 24 * 60);
  }

  private static WaitEnds ends(Climate... climate) {
    return new WaitEnds(Arrays.asList(climate), TIME);
  }

  private static Climate climate(String from, double temperatureC) {
    return new Climate(LocalDateTime.parse(from), temperatureC, OptionalDouble.empty());
  }

  private static long minute(String local) {
    return TIME.minute(LocalDateTime.parse(local));
  }

  private static long minuteByMinute(Climate[] climates, long from, double hours) {
    long[] changes = Arrays.stream(climates).mapToLong(c -> TIME.minute(c.from())).toArray();
    double age = 0;
    long minute = from;
    while (age < hours * 60 - 6e-8) {
      int last = changes.length - 1;
      while (last >= 0 && changes[last] > minute) {
        last--;
      }
      age += last < 0 ? 1 : WaitEnds.pace(climates[last].temperatureC());
      minute++;
    }
    return minute;
  }
}
