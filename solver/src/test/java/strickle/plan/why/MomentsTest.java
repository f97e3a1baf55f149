package strickle.plan.why;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MomentsTest {

  private static final int DAY = 24 * 60;

  private final Moments moments =
      new Moments(OffsetDateTime.parse("2027-04-05T00:00-05:00"), ZoneId.of("America/Chicago"));

  @Test
  void aMomentIsSaidWithDayAndTime() {
    assertEquals("Mon 5 Apr 00:00", moments.say(0));
    assertEquals("Tue 6 Apr 14:10", moments.say(DAY + 14 * 60 + 10));
    assertEquals("Sun 4 Apr 23:59", moments.say(-1));
  }

  @Test
  void theYearIsSaidWhenItIsNotThePlansFirst() {
    assertEquals("Fri 31 Dec 23:59", moments.say(moments.minute(at("2027-12-31T23:59"))));
    assertEquals("Sat 1 Jan 2028 00:00", moments.say(moments.minute(at("2028-01-01T00:00"))));
    assertEquals("Thu 31 Dec 2026 12:00", moments.say(moments.minute(at("2026-12-31T12:00"))));
  }

  @Test
  void aMomentIsSaidTheSameWhateverTheMachineSpeaks() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-u-nu-arab"));
      assertEquals("Fri 16 Apr 09:05", moments.say(moments.minute(at("2027-04-16T09:05"))));
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void elapsedMinutesAreLocalTimeAgainAfterAClockChange() {
    int winter = moments.minute(at("2027-11-07T12:00"));
    assertEquals("Sun 7 Nov 12:00", moments.say(winter));
    assertEquals(25 * 60, winter - moments.minute(at("2027-11-06T12:00")));
  }

  @Test
  void twoMomentsOfOneDayNameItOnce() {
    assertEquals("between Mon 5 Apr 09:00 and 09:45", moments.between(540, 585));
    assertEquals("between Mon 5 Apr 23:00 and Tue 6 Apr 01:00", moments.between(1380, 1500));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0 min",
    "34, 34 min",
    "60, 1 h",
    "244, 4 h 4 min",
    "4319, 71 h 59 min",
    "4320, 3 days",
    "7930, 5 days 12 h",
  })
  void aWhileIsSaidInMinutesThenHoursThenDays(int minutes, String said) {
    assertEquals(said, Moments.lasting(minutes));
  }

  @ParameterizedTest
  @CsvSource({"20.0, 20 h", "0.5, 0.5 h", "120.25, 120.25 h"})
  void hoursAreSaidWithoutANeedlessFraction(double hours, String said) {
    assertEquals(said, Moments.hours(hours));
  }

  static LocalDateTime at(String local) {
    return LocalDateTime.parse(local);
  }
}
