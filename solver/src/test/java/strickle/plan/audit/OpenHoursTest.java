package strickle.plan.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import strickle.book.Altered;
import strickle.book.Person;
import strickle.book.SampleBook;
import strickle.book.SpecialDay;
import strickle.book.Window;

class OpenHoursTest {

  private static final ZonedMinutes TIME = new ZonedMinutes(ZoneId.of("America/Chicago"));

  private final OpenHours ana = new OpenHours(SampleBook.ana(), TIME);

  @Test
  void aPersonIsThereFromOpeningToClosing() {
    assertTrue(ana.isOpen(minute("2027-04-05T09:00"), minute("2027-04-05T12:00")));
    assertFalse(ana.isOpen(minute("2027-04-05T08:59"), minute("2027-04-05T12:00")));
    assertFalse(ana.isOpen(minute("2027-04-05T09:00"), minute("2027-04-05T12:01")));
    assertFalse(ana.isOpen(minute("2027-04-05T12:00"), minute("2027-04-05T13:00")));
    assertFalse(ana.isOpen(minute("2027-04-07T10:00"), minute("2027-04-07T10:01")));
  }

  @Test
  void afterClosingAPersonIsBackWhenTheNextWindowOpens() {
    assertEquals(next("2027-04-05T13:00"), ana.backAt(minute("2027-04-05T12:00")));
    assertEquals(next("2027-04-06T09:00"), ana.backAt(minute("2027-04-05T17:00")));
    // Wednesday is free and Thursday the 8th taken off.
    assertEquals(next("2027-04-09T09:00"), ana.backAt(minute("2027-04-06T17:00")));
  }

  @Test
  void aWindowEndsAtClosingOnly() {
    assertTrue(ana.isWindowEnd(minute("2027-04-05T12:00")));
    assertFalse(ana.isWindowEnd(minute("2027-04-05T13:00")));
    assertFalse(ana.isWindowEnd(minute("2027-04-08T17:00")));
  }

  @Test
  void afterALongHolidayThereIsAnOpening() {
    List<SpecialDay> holiday = new ArrayList<>();
    for (int week = 0; week < 6; week++) {
      holiday.add(new SpecialDay(LocalDate.parse("2027-04-12").plusWeeks(week), List.of()));
    }
    Person mondays = SampleBook.person("mo", List.of(SampleBook.hours(9, 12)), DayOfWeek.MONDAY);
    OpenHours hours = new OpenHours(Altered.of(mondays, "exceptions", holiday), TIME);
    assertEquals(next("2027-05-24T09:00"), hours.backAt(minute("2027-04-05T12:00")));
  }

  @Test
  void somebodyWithoutWeeklyHoursComesOnDatesOfTheirOwn() {
    SpecialDay summer =
        new SpecialDay(LocalDate.parse("2028-07-03"), List.of(SampleBook.hours(9, 12)));
    Person helper = new Person("jo", "Jo", Map.of(), List.of(summer));
    OpenHours hours = new OpenHours(helper, TIME);
    assertEquals(next("2028-07-03T09:00"), hours.backAt(minute("2027-04-05T12:00")));
    assertEquals(OptionalLong.empty(), hours.backAt(minute("2028-07-03T12:00")));
  }

  @Test
  void windowsThatTouchAreWorkedThrough() {
    Person nights =
        SampleBook.person(
            "no", List.of(new Window(0, 240), new Window(1320, 1440)), DayOfWeek.values());
    OpenHours hours = new OpenHours(nights, TIME);
    assertTrue(hours.isOpen(minute("2027-04-05T22:00"), minute("2027-04-06T04:00")));
    assertTrue(hours.isWindowEnd(minute("2027-04-06T00:00")));
    assertEquals(next("2027-04-06T00:00"), hours.backAt(minute("2027-04-06T00:00")));
    assertFalse(hours.isOpen(minute("2027-04-06T03:00"), minute("2027-04-06T05:00")));
  }

  @Test
  void aWindowOverTheSpringChangeIsAnHourShorter() {
    // 14 March 2027: 1:59 is followed by 3:00.
    OpenHours hours = sundays(60, 240);
    long opens = minute("2027-03-14T01:00");
    assertTrue(hours.isOpen(opens, opens + 120));
    assertFalse(hours.isOpen(opens, opens + 121));
  }

  @Test
  void aWindowOverTheAutumnChangeIsAnHourLonger() {
    // 7 November 2027: the second 1:59 is followed by 2:00.
    OpenHours hours = sundays(0, 180);
    long opens = minute("2027-11-07T00:00");
    assertTrue(hours.isOpen(opens, opens + 240));
    assertFalse(hours.isOpen(opens, opens + 241));
  }

  @Test
  void ofTwoAlikeTimesTheEarlierIsMeant() {
    OpenHours hours = sundays(90, 180);
    assertTrue(
        hours.isOpen(minuteOf("2027-11-07T01:30-05:00"), minuteOf("2027-11-07T03:00-06:00")));
    assertFalse(
        hours.isOpen(minuteOf("2027-11-07T01:29-05:00"), minuteOf("2027-11-07T01:30-05:00")));
    OpenHours closing = sundays(0, 90);
    assertTrue(closing.isWindowEnd(minuteOf("2027-11-07T01:30-05:00")));
    assertFalse(closing.isWindowEnd(minuteOf("2027-11-07T01:30-06:00")));
  }

  @Test
  void aTimeLeftOutInSpringIsMovedLaterByWhatWasLeftOut() {
    assertEquals(minuteOf("2027-03-14T03:30-05:00"), minute("2027-03-14T02:30"));
    OpenHours hours = sundays(150, 300);
    assertTrue(
        hours.isOpen(minuteOf("2027-03-14T03:30-05:00"), minuteOf("2027-03-14T05:00-05:00")));
    assertFalse(
        hours.isOpen(minuteOf("2027-03-14T03:29-05:00"), minuteOf("2027-03-14T03:30-05:00")));
  }

  @Test
  void windowsThatAClockChangePushesTogetherAreWorkedThrough() {
    // From 1:00 to 2:30, which is 3:30 that night, and from 3:00 to 5:00.
    List<Window> windows = List.of(new Window(60, 150), new Window(180, 300));
    OpenHours hours = new OpenHours(SampleBook.person("su", windows, DayOfWeek.SUNDAY), TIME);
    long closes = minuteOf("2027-03-14T03:30-05:00");
    assertTrue(hours.isOpen(minute("2027-03-14T01:00"), minute("2027-03-14T05:00")));
    assertTrue(hours.isWindowEnd(closes));
    assertEquals(OptionalLong.of(closes), hours.backAt(closes));
  }

  private static OpenHours sundays(int startMinute, int endMinute) {
    List<Window> windows = List.of(new Window(startMinute, endMinute));
    return new OpenHours(SampleBook.person("su", windows, DayOfWeek.SUNDAY), TIME);
  }

  private static OptionalLong next(String local) {
    return OptionalLong.of(minute(local));
  }

  private static long minute(String local) {
    return TIME.minute(LocalDateTime.parse(local));
  }

  private static long minuteOf(String moment) {
    return ZonedMinutes.minute(OffsetDateTime.parse(moment));
  }
}
