package strickle.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import strickle.book.Person;

class OpenHoursTest {

  private static final LocalDate MONDAY = LocalDate.parse("2027-03-01");

  private final Person evenings =
      Entries.person("e", "E", Entries.week("MON 18:00-21:00", "THU 18:00-21:00"));

  private final Person saturdays =
      Entries.person(
          "s", "S", Entries.week("SAT 09:00-12:00 13:00-17:00"), Entries.on("2027-03-13"));

  @Test
  void minutesAndDaysOfAWeekAreThoseOfAllTogether() {
    assertEquals(2 * 180 + 420, OpenHours.weeklyMinutes(List.of(evenings, saturdays)));
    assertEquals(3, OpenHours.weeklyDays(List.of(evenings, saturdays)));
  }

  @Test
  void theLongestTimeClosedIsCountedWithRoomForAClockChange() {
    // Thursday 21:00 to Monday 18:00 is 93 hours; one more is for the clock, one for rounding up.
    assertEquals(95, OpenHours.longestClosedHours(List.of(evenings), MONDAY));
  }

  @Test
  void aDayOffMakesItLonger() {
    // Saturday 17:00 to the Saturday after next 09:00 is 328 hours.
    assertEquals(330, OpenHours.longestClosedHours(List.of(saturdays), MONDAY));
  }

  @Test
  void ofSeveralPeopleTheOneWhoIsAwayLongestCounts() {
    assertEquals(330, OpenHours.longestClosedHours(List.of(evenings, saturdays), MONDAY));
  }
}
