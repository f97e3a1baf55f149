package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import strickle.book.Person;
import strickle.book.SpecialDay;
import strickle.book.Window;
import strickle.shop.Calendar;

/** The clock changes are those of {@link StudioTimeTest}. */
class HoursTest {

  private static final int DAY = 24 * 60;

  /** Somebody who keeps the same hours every day, but for the exceptions. */
  private static Person daily(List<SpecialDay> exceptions, String... windows) {
    Map<DayOfWeek, List<Window>> week = new EnumMap<>(DayOfWeek.class);
    for (DayOfWeek day : DayOfWeek.values()) {
      week.put(day, windows(windows));
    }
    return new Person("ana", "Ana", week, exceptions);
  }

  private static List<Window> windows(String... windows) {
    return Stream.of(windows).map(Window::parse).toList();
  }

  private static SpecialDay on(String date, String... windows) {
    return new SpecialDay(LocalDate.parse(date), windows(windows));
  }

  /** The windows from a moment on, each as the moments it opens and closes. */
  private static List<String> open(Person person, String from, String zone, int minutes) {
    StudioTime time = new StudioTime(OffsetDateTime.parse(from).toInstant(), ZoneId.of(zone));
    Calendar calendar = Hours.calendar(person, time, minutes);
    List<String> windows = new ArrayList<>();
    for (int i = 0; i < calendar.windows(); i++) {
      windows.add(time.at(calendar.opens(i)) + " " + time.at(calendar.closes(i)));
    }
    return windows;
  }

  private static List<String> inChicago(Person person, String from, int minutes) {
    return open(person, from, "America/Chicago", minutes);
  }

  @Test
  void aDayOfItsOwnReplacesTheWeekdayAltogether() {
    Person person =
        daily(
            List.of(on("2027-04-06"), on("2027-04-07", "20:00-21:00")),
            "09:00-12:00",
            "13:00-17:00");
    assertEquals(
        List.of(
            "2027-04-05T09:00-05:00 2027-04-05T12:00-05:00",
            "2027-04-05T13:00-05:00 2027-04-05T17:00-05:00",
            "2027-04-07T20:00-05:00 2027-04-07T21:00-05:00",
            "2027-04-08T09:00-05:00 2027-04-08T12:00-05:00",
            "2027-04-08T13:00-05:00 2027-04-08T17:00-05:00"),
        inChicago(person, "2027-04-05T00:00-05:00", 4 * DAY));
  }

  @Test
  void aWeekdayWithoutHoursHasNone() {
    Person person = Studios.weekdays("ana");
    assertEquals(
        List.of(
            "2027-04-09T09:00-05:00 2027-04-09T17:00-05:00",
            "2027-04-12T09:00-05:00 2027-04-12T17:00-05:00"),
        inChicago(person, "2027-04-09T00:00-05:00", 4 * DAY));
  }

  @Test
  void aBeginningWithinAWindowCutsItOff() {
    Person person = daily(List.of(), "09:00-12:00", "13:00-17:00");
    assertEquals(
        List.of("2027-04-05T13:10-05:00 2027-04-05T17:00-05:00"),
        inChicago(person, "2027-04-05T13:10-05:00", 600));
    assertEquals(List.of(), inChicago(person, "2027-04-05T17:00-05:00", 600));
  }

  @Test
  void theHorizonCutsOffTheLastWindow() {
    Person person = daily(List.of(), "09:00-12:00");
    assertEquals(
        List.of("2027-04-05T09:00-05:00 2027-04-05T10:30-05:00"),
        inChicago(person, "2027-04-05T00:00-05:00", 630));
    assertEquals(List.of(), inChicago(person, "2027-04-05T00:00-05:00", 540));
  }

  @Test
  void aWindowMayEndAtMidnightAndTheNextBeginThere() {
    Person person = daily(List.of(), "00:00-01:00", "20:00-24:00");
    assertEquals(
        List.of(
            "2027-04-05T20:00-05:00 2027-04-06T00:00-05:00",
            "2027-04-06T00:00-05:00 2027-04-06T01:00-05:00",
            "2027-04-06T20:00-05:00 2027-04-07T00:00-05:00"),
        inChicago(person, "2027-04-05T02:00-05:00", 2 * DAY - 120));
  }

  @Test
  void hoursAreLocalSoAWindowAcrossTheSpringChangeIsAnHourShorter() {
    Person person = daily(List.of(), "01:00-04:00");
    assertEquals(
        List.of(
            "2027-03-14T01:00-06:00 2027-03-14T04:00-05:00",
            "2027-03-15T01:00-05:00 2027-03-15T04:00-05:00"),
        inChicago(person, "2027-03-14T00:00-06:00", 2 * DAY));
    StudioTime time =
        new StudioTime(OffsetDateTime.parse("2027-03-14T00:00-06:00").toInstant(), Studios.ZONE);
    assertEquals(120, Hours.calendar(person, time, DAY).workingMinutes());
  }

  @Test
  void aWindowAcrossTheAutumnChangeIsAnHourLonger() {
    Person person = daily(List.of(), "00:30-02:30");
    assertEquals(
        List.of("2027-11-07T00:30-05:00 2027-11-07T02:30-06:00"),
        inChicago(person, "2027-11-07T00:00-05:00", DAY));
    StudioTime time =
        new StudioTime(OffsetDateTime.parse("2027-11-07T00:00-05:00").toInstant(), Studios.ZONE);
    assertEquals(180, Hours.calendar(person, time, DAY).workingMinutes());
  }

  @Test
  void aWindowWithinTheHourThatComesTwiceIsOpenTheFirstTimeOnly() {
    Person person = daily(List.of(), "01:15-01:45");
    assertEquals(
        List.of("2027-11-07T01:15-05:00 2027-11-07T01:45-05:00"),
        inChicago(person, "2027-11-07T00:00-05:00", DAY));
  }

  @Test
  void aWindowWithinTheSkippedHourIsSoMuchLater() {
    Person person = daily(List.of(), "02:15-02:45");
    assertEquals(
        List.of("2027-03-14T03:15-05:00 2027-03-14T03:45-05:00"),
        inChicago(person, "2027-03-14T00:00-06:00", DAY - 60));
  }

  @Test
  void ofTwoWindowsThatASpringChangePushesTogetherTheLaterGivesWay() {
    Person person = daily(List.of(), "01:00-02:30", "03:00-04:00", "04:00-05:00");
    assertEquals(
        List.of(
            "2027-03-14T01:00-06:00 2027-03-14T03:30-05:00",
            "2027-03-14T03:30-05:00 2027-03-14T04:00-05:00",
            "2027-03-14T04:00-05:00 2027-03-14T05:00-05:00"),
        inChicago(person, "2027-03-14T00:00-06:00", DAY - 60));
  }

  @Test
  void aWindowThatASpringChangePushesIntoAnotherWhollyIsGone() {
    Person person = daily(List.of(), "02:15-02:45", "03:00-03:30", "03:30-03:45");
    assertEquals(
        List.of("2027-03-14T03:15-05:00 2027-03-14T03:45-05:00"),
        inChicago(person, "2027-03-14T00:00-06:00", DAY - 60));
  }

  @Test
  void aChangeOfHalfAnHourIsKept() {
    Person person = daily(List.of(), "01:00-03:00");
    String zone = "Australia/Lord_Howe";
    assertEquals(
        List.of("2027-04-04T01:00+11:00 2027-04-04T03:00+10:30"),
        open(person, "2027-04-04T00:00+11:00", zone, DAY));
    assertEquals(
        List.of("2027-10-03T01:00+10:30 2027-10-03T03:00+11:00"),
        open(person, "2027-10-03T00:00+10:30", zone, DAY));
  }

  @Test
  void aDateThatAZoneLeavesOutHasNoHoursOfItsOwn() {
    // Apia crossed the date line: 30 December 2011 never was (public time zone database).
    Person person = daily(List.of(), "09:00-17:00");
    assertEquals(
        List.of(
            "2011-12-29T09:00-10:00 2011-12-29T17:00-10:00",
            "2011-12-31T09:00+14:00 2011-12-31T17:00+14:00"),
        open(person, "2011-12-29T00:00-10:00", "Pacific/Apia", 2 * DAY));
  }
}
