package strickle.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.time.zone.ZoneOffsetTransition;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Times of the studio's zone in a browser that stands in another: held against java.time, also
 * where clocks are changed by an hour or half of one, at midnight, or a day is left out.
 */
@FunctionTest
class TimesTest {

  private static final DateTimeFormatter LOCAL = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm");

  private static final String MOMENTS =
      """
      async ({load, wear}, [zone, texts]) => {
        const {moment} = await load('app/times.js');
        const {localMinute} = await load('board/clock.js');
        await wear({zone});
        return texts.map(text => [moment(text) / 60000, localMinute(text, zone)]).flat();
      }
      """;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "America/Halifax", "America/St_Johns", "America/New_York", "Europe/Vienna",
        "Europe/Lisbon", "Australia/Hobart", "Australia/Lord_Howe", "Pacific/Auckland",
        "Pacific/Chatham", "Asia/Kathmandu", "Asia/Tokyo", "UTC",
      })
  void aLocalTimeIsTheMomentThatTheServiceTakesItFor(String name) {
    ZoneId zone = ZoneId.of(name);
    List<LocalDateTime> times = times(zone);
    List<?> minutes =
        Functions.list(MOMENTS, List.of(name, times.stream().map(LOCAL::format).toList()));
    List<String> wrong = new ArrayList<>();
    for (int i = 0; i < times.size(); i++) {
      long right = ZonedDateTime.ofLocal(times.get(i), zone, null).toEpochSecond() / 60;
      for (Object found : minutes.subList(2 * i, 2 * i + 2)) {
        if (((Number) found).doubleValue() != right) {
          wrong.add(times.get(i) + " is " + right + ", found " + found);
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  /** Any times of three years, and every quarter of an hour around each change of the clocks. */
  private static List<LocalDateTime> times(ZoneId zone) {
    Random random = new Random(3);
    LocalDateTime first = LocalDateTime.parse("2026-01-01T00:00");
    List<LocalDateTime> times = new ArrayList<>();
    for (int i = 0; i < 100; i++) {
      times.add(first.plusMinutes(random.nextInt(3 * 525_600)));
    }
    for (LocalDateTime change : changes(zone)) {
      IntStream.rangeClosed(-12, 12)
          .forEach(quarter -> times.add(change.plusMinutes(15L * quarter)));
    }
    return times;
  }

  private static List<LocalDateTime> changes(ZoneId zone) {
    List<LocalDateTime> changes = new ArrayList<>();
    Instant end = Instant.parse("2029-01-01T00:00:00Z");
    ZoneOffsetTransition next =
        zone.getRules().nextTransition(Instant.parse("2026-01-01T00:00:00Z"));
    while (next != null && next.getInstant().isBefore(end)) {
      changes.add(next.getDateTimeBefore());
      next = zone.getRules().nextTransition(next.getInstant());
    }
    return changes;
  }

  @Test
  void aDayThatWasLeftOutIsTakenAsADayLater() {
    ZoneId apia = ZoneId.of("Pacific/Apia"); // went over the date line: no 30 December 2011
    LocalDateTime never = LocalDateTime.parse("2011-12-30T12:00");
    long right = ZonedDateTime.ofLocal(never, apia, null).toEpochSecond() / 60;
    for (Object found :
        Functions.list(MOMENTS, List.of("Pacific/Apia", List.of("2011-12-30T12:00")))) {
      assertEquals((double) right, ((Number) found).doubleValue());
    }
  }

  private static final String LOCALS =
      """
      async ({load, wear}, [zone, moments]) => {
        const {dayOf, toLocal} = await load('app/times.js');
        const {localText} = await load('board/clock.js');
        await wear({zone});
        return moments.map(text => [toLocal(text), localText(Date.parse(text) / 60000, zone), dayOf(text)]).flat();
      }
      """;

  @ParameterizedTest
  @ValueSource(
      strings = {"America/Halifax", "Europe/Vienna", "Australia/Lord_Howe", "Asia/Kathmandu"})
  void aMomentIsWrittenAsTheStudiosClockShowsIt(String name) {
    ZoneId zone = ZoneId.of(name);
    List<ZonedDateTime> moments = new ArrayList<>();
    for (LocalDateTime time : times(zone)) {
      moments.add(time.atZone(zone));
      moments.add(time.atZone(zone).withLaterOffsetAtOverlap());
    }
    List<String> expected =
        moments.stream()
            .flatMap(
                at -> List.of(LOCAL.format(at), LOCAL.format(at), "" + at.toLocalDate()).stream())
            .toList();
    List<String> asked =
        moments.stream().map(DateTimeFormatter.ISO_OFFSET_DATE_TIME::format).toList();
    assertEquals(expected, Functions.list(LOCALS, List.of(name, asked)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"en-GB", "en-US", "de-DE", "fr-FR", "nl-NL", "sv-SE", "ja-JP"})
  void aDateIsWrittenAsJavaWritesItInTheReadersLanguage(String locale) {
    LocalDate april = LocalDate.parse("2027-04-06");
    DateTimeFormatter written =
        DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG)
            .withLocale(Locale.forLanguageTag(locale));
    assertEquals(
        written.format(april),
        Functions.call(
            """
            async ({load, wear}, locale) => {
              const {showDate} = await load('app/times.js');
              await wear({locale, zone: 'America/Halifax'});
              return showDate('2027-04-06T00:30');
            }
            """,
            locale));
  }

  @Test
  void aStretchNamesItsDaysOnlyWhereTheyDiffer() {
    assertEquals(
        List.of(
            "10:00\u202f–\u202f11:30", "Tue 6 Apr, 23:00 – Wed 7 Apr, 10:00", "5–11 April 2027"),
        Functions.list(
            """
            async ({load, wear}) => {
              const {showDays, showSpan} = await load('app/times.js');
              await wear({locale: 'en-GB', zone: 'America/Halifax'});
              return [showSpan('2027-04-06T13:00Z', '2027-04-06T14:30Z'),
                showSpan('2027-04-07T02:00Z', '2027-04-07T13:00Z'),
                showDays('2027-04-05T00:00', '2027-04-11T12:00').replaceAll(/[\\s\\u2009]/g, ' ').replaceAll(' – ', '–')];
            }
            """,
            null));
  }

  @Test
  void howLongIsToldInTwoUnitsAndWorkNeverInDays() {
    assertEquals(
        List.of(
            "0 min", "40 min", "1 h", "2 h 40 min", "1 d 1 min", "3 d 5 h", "26 h 14 min", "77 h"),
        Functions.list(
            """
            async ({load, wear}) => {
              const {showMinutes, showWork} = await load('app/times.js');
              await wear({});
              return [...[0, 39.6, 60, 160, 1441, 4629].map(showMinutes), showWork(1574), showWork(4620)];
            }
            """,
            null));
  }

  @Test
  void howLongAgoIsToldInTheLargestUnitThatIsFull() {
    assertEquals(
        List.of("3 minutes ago", "2 hours ago", "yesterday", "in 2 days"),
        Functions.list(
            """
            async ({load, wear}) => {
              const {showAgo} = await load('app/times.js');
              await wear({locale: 'en-GB'});
              const now = Date.parse('2027-04-06T12:00Z');
              return ['2027-04-06T11:57Z', '2027-04-06T10:00Z', '2027-04-05T12:00Z', '2027-04-08T12:00Z']
                .map(at => showAgo(at, now));
            }
            """,
            null));
  }

  @Test
  void daysAreCountedByTheCalendarAndWeeksBeginOnMonday() {
    assertEquals(
        List.of("2028-03-01", "2027-02-28", 0, 6, "2027-04-05", "2027-04-05"),
        Functions.list(
            """
            async ({load}) => {
              const {addDays, weekOf, weekday} = await load('app/times.js');
              return [addDays('2028-02-28', 2), addDays('2027-03-01', -1), weekday('2027-04-05'),
                weekday('2027-04-11'), weekOf('2027-04-05'), weekOf('2027-04-11')];
            }
            """,
            null));
  }

  @ParameterizedTest
  @ValueSource(strings = {"America/Halifax", "Europe/Vienna", "Australia/Lord_Howe", "UTC"})
  void aDayOfTheBoardReachesFromMidnightToMidnightWhateverTheClocksDo(String name) {
    ZoneId zone = ZoneId.of(name);
    LocalDate first = LocalDate.parse("2027-01-01");
    List<Integer> hours =
        IntStream.range(0, 365)
            .mapToObj(first::plusDays)
            .map(
                day -> Duration.between(day.atStartOfDay(zone), day.plusDays(1).atStartOfDay(zone)))
            .map(length -> (int) length.toMinutes())
            .toList();
    assertEquals(
        hours,
        Functions.list(
            """
            async ({load}, zone) => {
              const {daysBetween, localMinute} = await load('board/clock.js');
              const [from, to] = ['2027-01-01', '2028-01-01'].map(day => localMinute(`${day}T00:00`, zone));
              const days = daysBetween(from, to, zone);
              const joined = days.every(({to: end}, at) => end === (days[at + 1]?.from ?? to));
              return joined ? days.map(day => day.to - day.from) : ['not joined'];
            }
            """,
            name));
  }
}
