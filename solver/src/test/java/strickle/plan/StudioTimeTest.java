package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Clock changes of 2027, from the public time zone database: Chicago 14 March 2:00 to 3:00 and 7
 * November 2:00 to 1:00; Lord Howe, half an hour, 4 April 2:00 to 1:30 and 3 October 2:00 to 2:30.
 */
class StudioTimeTest {

  private static StudioTime from(String from, String zone) {
    return new StudioTime(OffsetDateTime.parse(from).toInstant(), ZoneId.of(zone));
  }

  private static long minute(StudioTime time, String local) {
    return time.minute(LocalDateTime.parse(local));
  }

  @Test
  void everyMinuteHasTheOffsetTheStudioHasThen() {
    StudioTime spring = from("2027-03-14T00:00-06:00", "America/Chicago");
    assertEquals("2027-03-14T00:00-06:00", spring.at(0).toString());
    assertEquals("2027-03-14T01:59-06:00", spring.at(119).toString());
    assertEquals("2027-03-14T03:00-05:00", spring.at(120).toString());
    StudioTime autumn = from("2027-11-07T00:00-05:00", "America/Chicago");
    assertEquals("2027-11-07T01:59-05:00", autumn.at(119).toString());
    assertEquals("2027-11-07T01:00-06:00", autumn.at(120).toString());
    assertEquals("2027-11-07T02:00-06:00", autumn.at(180).toString());
  }

  @ParameterizedTest
  @CsvSource({
    // a day of 23 hours, one of 25, one half an hour longer, one half an hour shorter
    "2027-03-14T00:00-06:00, America/Chicago, 2027-03-15T00:00, 1380",
    "2027-11-07T00:00-05:00, America/Chicago, 2027-11-08T00:00, 1500",
    "2027-04-04T00:00+11:00, Australia/Lord_Howe, 2027-04-05T00:00, 1470",
    "2027-10-03T00:00+10:30, Australia/Lord_Howe, 2027-10-04T00:00, 1410",
    "2027-06-01T00:00-05:00, America/Chicago, 2027-06-02T00:00, 1440",
  })
  void minutesAreElapsedMinutesAlsoAcrossAClockChange(
      String from, String zone, String local, long minutes) {
    assertEquals(minutes, minute(from(from, zone), local));
  }

  @Test
  void aLocalTimeThatIsSkippedCountsAsSoMuchLater() {
    StudioTime time = from("2027-03-14T00:00-06:00", "America/Chicago");
    assertEquals(120, minute(time, "2027-03-14T02:00"));
    assertEquals(150, minute(time, "2027-03-14T02:30"));
    assertEquals(150, minute(time, "2027-03-14T03:30"));
    assertEquals("2027-03-14T03:30-05:00", time.at(150).toString());
  }

  @Test
  void ofALocalTimeThatComesTwiceTheFirstIsMeant() {
    StudioTime time = from("2027-11-07T00:00-05:00", "America/Chicago");
    assertEquals(90, minute(time, "2027-11-07T01:30"));
    assertEquals("2027-11-07T01:30", time.local(150).toString());
  }

  @Test
  void whatLiesBeforeTheBeginningIsNegativeAndRoundedDown() {
    StudioTime time = from("2027-04-05T09:00-05:00", "America/Chicago");
    assertEquals(-60, minute(time, "2027-04-05T08:00"));
    assertEquals(-1, time.minute(Instant.parse("2027-04-05T13:59:59Z")));
    assertEquals(0, time.minute(Instant.parse("2027-04-05T14:00:59Z")));
  }

  @Test
  void secondsOfTheBeginningAreCutOff() {
    StudioTime time = from("2027-04-05T09:00:59.9-05:00", "America/Chicago");
    assertEquals("2027-04-05T09:00-05:00", time.at(0).toString());
    assertEquals(0, minute(time, "2027-04-05T09:00"));
  }

  @Test
  void theBeginningMayBeGivenWithAnotherOffset() {
    StudioTime time = from("2027-04-05T16:00+02:00", "America/Chicago");
    assertEquals("2027-04-05T09:00-05:00", time.at(0).toString());
    assertEquals(ZoneId.of("America/Chicago"), time.zone());
  }
}
