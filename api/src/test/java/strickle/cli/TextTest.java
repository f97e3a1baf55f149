package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import strickle.cli.Table.Column;
import strickle.plan.OrderOutcome;
import strickle.plan.Progress;

/** How numbers, times, lines and tables are written. */
class TextTest {

  @Test
  void workIsToldInHoursAndMinutes() {
    assertEquals("0 min", Words.work(0));
    assertEquals("59 min", Words.work(59));
    assertEquals("1 h", Words.work(60));
    assertEquals("27 h 3 min", Words.work(27 * 60 + 3));
  }

  @Test
  void timeThatPassesIsToldInDaysFromADayOn() {
    assertEquals("23 h 59 min", Words.span(24 * 60 - 1));
    assertEquals("1 d", Words.span(24 * 60 + 59));
    assertEquals("3 d 4 h", Words.span((3 * 24 + 4) * 60 + 30));
  }

  @Test
  void numbersAreWrittenTheSameInEveryLanguage() {
    assertEquals("12,400", Words.grouped(12_400));
    assertEquals("1937.3", Words.grams(1937.25001));
    assertEquals("51.9", Words.kilograms(51_940));
    assertEquals("1 lot", Words.count(1, "lot"));
    assertEquals("0 lots", Words.count(0, "lot"));
  }

  @Test
  void timesCarryWeekdayAndDate() {
    assertEquals("Tue 2 Mar 2027", Moments.day(LocalDate.parse("2027-03-02")));
    assertEquals("Tue 2 Mar 2027 18:30", Moments.full(LocalDateTime.parse("2027-03-02T18:30")));
  }

  @Test
  void aWeekdayAloneIsUsedForTheNextSixDaysOnly() {
    OffsetDateTime now = OffsetDateTime.parse("2027-03-02T18:30-04:00");
    assertEquals("Mon 18:29", Moments.near(now.plusDays(6).minusMinutes(1), now));
    assertEquals("8 Mar 18:30", Moments.near(now.plusDays(6), now));
  }

  @Test
  void whatLastsUntilMidnightEndsAtTwentyFour() {
    OffsetDateTime start = OffsetDateTime.parse("2027-03-02T23:00-04:00");
    assertEquals("23:00-24:00", Moments.spell(start, start.plusHours(1)));
    assertEquals("23:00-23:30", Moments.spell(start, start.plusMinutes(30)));
  }

  @Test
  void linesAreBrokenAtSpacesAndInsideWordsOnlyWhenTheyMust() {
    assertEquals(List.of("rub down", "the rim"), Lines.wrap("rub down the rim", 8));
    assertEquals(List.of("a", "abcde", "fg hi"), Lines.wrap("a abcdefg hi", 5));
    assertEquals(List.of(""), Lines.wrap(" ", 5));
    assertEquals(List.of("石", "灯"), Lines.wrap("石灯", 3));
    assertEquals(List.of("石", "灯"), Lines.wrap("石灯", 1));
  }

  @Test
  void paragraphsAreIndented() {
    String text = "word ".repeat(30).strip();
    List<String> lines = Lines.paragraph("* ", "    ", text);
    assertEquals(2, lines.size());
    assertEquals("* word", lines.get(0).substring(0, 6));
    assertEquals("    word", lines.get(1).substring(0, 8));
  }

  @Test
  void widthCountsColumnsAndNotCharacters() {
    assertEquals(4, Width.of("cafe\u0301"));
    assertEquals(4, Width.of("石灯"));
    assertEquals(2, Width.of("\uFF11"));
    assertEquals(0, Width.of(""));
  }

  @Test
  void tablesKeepTheirColumnsUnderEachOther() {
    Table table =
        new Table("  ", Column.left(8), Column.right(4, 10))
            .row("sand", "12.0 g")
            .heading("and")
            .row("fine dried sand", "1.0 g")
            .row("石", "2 g")
            .row("water");
    assertEquals(
        List.of(
            "  sand      12.0 g",
            "and",
            "  fine       1.0 g",
            "  dried",
            "  sand",
            "  石           2 g",
            "  water"),
        table.lines());
  }

  @Test
  void columnsAreNeverNarrowerThanTheirLeast() {
    assertEquals(List.of("   1"), new Table("", Column.right(4, 10)).row("1").lines());
  }

  @Test
  void progressIsToldInPlainWords() {
    Progress progress = new Progress(Duration.ZERO, 12_400, new BigDecimal("30e-1"), 580);
    assertEquals(
        "laying out… 12,400 schedules, late hours 3, handwork 9 h 40 min",
        ProgressLine.text(progress));
  }

  @Test
  void theFirstSentenceCountsTheLateOrders() {
    assertEquals("The order is on time.", PlanText.summary(List.of(late(0))));
    assertEquals("All 2 orders are on time.", PlanText.summary(List.of(late(0), late(0))));
    assertEquals("1 of 2 orders is late, by 4 h.", PlanText.summary(List.of(late(0), late(240))));
    assertEquals(
        "2 of 3 orders are late, the latest by 2 d 1 h.",
        PlanText.summary(List.of(late(49 * 60), late(0), late(1))));
  }

  private static OrderOutcome late(long minutes) {
    OffsetDateTime ready = OffsetDateTime.parse("2027-03-02T18:30-04:00");
    return new OrderOutcome("O", ready, minutes, List.of());
  }
}
