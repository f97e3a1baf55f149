package strickle.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Working minutes and wall minutes, against counting minute by minute. */
class CalendarTest {

  private static final int LAST = 300;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void workedCountsTheOpenMinutesBefore(long seed) {
    Calendar calendar = windows(seed);
    boolean[] open = openMinutes(calendar);
    int count = 0;
    for (int minute = 0; minute < LAST; minute++) {
      assertEquals(count, calendar.worked(minute), "before minute " + minute + " of " + calendar);
      count += open[minute] ? 1 : 0;
    }
    assertEquals(count, calendar.workingMinutes());
    assertEquals(count, calendar.worked(LAST * 1000));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void aWorkingMinuteStartsAtItsOpenMinuteAndEndsOneLater(long seed) {
    Calendar calendar = windows(seed);
    boolean[] open = openMinutes(calendar);
    int worked = 0;
    for (int minute = 0; minute < LAST; minute++) {
      if (open[minute]) {
        assertEquals(minute, calendar.startOf(worked), "start of " + worked + " in " + calendar);
        assertEquals(minute + 1, calendar.endOf(worked + 1), "end in " + calendar);
        worked++;
      }
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void spellsAreTheWindowsCutToTheTask(long seed) {
    Calendar calendar = windows(seed);
    Random random = new Random(seed);
    for (int i = 0; i < 200; i++) {
      int from = random.nextInt(calendar.workingMinutes());
      int minutes = 1 + random.nextInt(calendar.workingMinutes() - from);
      assertEquals(cut(calendar, from, minutes), calendar.spells(from, minutes));
    }
  }

  @Test
  void aTaskAcrossTouchingWindowsHasASpellInEach() {
    Calendar calendar = Calendar.of(new int[] {0, 60}, new int[] {60, 120});
    assertEquals(
        List.of(new Calendar.Spell(50, 60), new Calendar.Spell(60, 70)), calendar.spells(50, 20));
  }

  @Test
  void aTaskThatFillsAWindowHasOneSpell() {
    Calendar calendar = Calendar.of(new int[] {10, 100}, new int[] {40, 130});
    assertEquals(List.of(new Calendar.Spell(10, 40)), calendar.spells(0, 30));
    assertEquals(List.of(new Calendar.Spell(100, 130)), calendar.spells(30, 30));
  }

  @Test
  void anEmptyCalendarHasNoMinutes() {
    Calendar calendar = Calendar.of(new int[0], new int[0]);
    assertEquals(0, calendar.workingMinutes());
    assertEquals(0, calendar.worked(0));
    assertEquals(0, calendar.worked(1_000_000));
    assertEquals(0, calendar.windows());
  }

  @Test
  void alwaysIsOneWindowUpToTheMinuteGiven() {
    Calendar calendar = Calendar.always(500);
    assertEquals(1, calendar.windows());
    assertEquals(0, calendar.opens(0));
    assertEquals(500, calendar.closes(0));
    assertEquals(499, calendar.worked(499));
  }

  @Test
  void aCalendarKeepsItsOwnWindows() {
    int[] opens = {10};
    Calendar calendar = Calendar.of(opens, new int[] {20});
    opens[0] = 0;
    assertEquals(10, calendar.opens(0));
  }

  @ParameterizedTest
  @CsvSource({"5,5,10,20", "5,4,10,20", "0,10,9,20", "20,30,0,10", "-1,10,20,30"})
  void windowsThatAreEmptyOverlapOrAreOutOfOrderAreRefused(int a, int b, int c, int d) {
    Exception refused =
        assertThrows(
            IllegalArgumentException.class, () -> Calendar.of(new int[] {a, c}, new int[] {b, d}));
    assertTrue(refused.getMessage().startsWith("window "), refused.getMessage());
  }

  @Test
  void asManyOpensAsClosesAreAskedFor() {
    assertThrows(
        IllegalArgumentException.class, () -> Calendar.of(new int[] {0, 20}, new int[] {10}));
  }

  private static Calendar windows(long seed) {
    Random random = new Random(seed);
    int count = 1 + random.nextInt(8);
    int[] opens = new int[count];
    int[] closes = new int[count];
    int last = 0;
    for (int i = 0; i < count; i++) {
      opens[i] = last + (random.nextInt(3) == 0 ? 0 : random.nextInt(20));
      closes[i] = opens[i] + 1 + random.nextInt(15);
      last = closes[i];
    }
    return Calendar.of(opens, closes);
  }

  private static boolean[] openMinutes(Calendar calendar) {
    boolean[] open = new boolean[LAST];
    for (int i = 0; i < calendar.windows(); i++) {
      Arrays.fill(open, calendar.opens(i), calendar.closes(i), true);
    }
    return open;
  }

  private static List<Calendar.Spell> cut(Calendar calendar, int from, int minutes) {
    List<Calendar.Spell> spells = new ArrayList<>();
    int before = 0;
    for (int i = 0; i < calendar.windows(); i++) {
      int length = calendar.closes(i) - calendar.opens(i);
      int first = Math.max(from - before, 0);
      int last = Math.min(from + minutes - before, length);
      if (first < last) {
        spells.add(new Calendar.Spell(calendar.opens(i) + first, calendar.opens(i) + last));
      }
      before += length;
    }
    return spells;
  }
}
