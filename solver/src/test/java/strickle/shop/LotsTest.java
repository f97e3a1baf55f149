package strickle.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What may share a lot, and how long its first activity then takes. */
class LotsTest {

  private static final int FAMILY = 1;
  private static final int NO_LIMIT = Integer.MAX_VALUE;

  private Timetable timetable;
  private Lots lots;

  @Test
  void jobsJoinUntilALimitIsReached() {
    begin(family(10, 100, NO_LIMIT).kind(FAMILY, 5, List.of(4L, 1L), 0, pour()));
    assertTrue(lots.join(1));
    assertFalse(lots.join(2));
    assertEquals(2, lots.count);
  }

  @Test
  void everyLimitCounts() {
    begin(family(100, 3, NO_LIMIT).kind(FAMILY, 5, List.of(4L, 1L), 0, pour()));
    assertTrue(lots.join(1) && lots.join(2));
    assertFalse(lots.join(3));
  }

  @Test
  void amountsOfDifferentKindsAddUp() {
    begin(
        family(10, 10, NO_LIMIT)
            .kind(FAMILY, 1, List.of(4L, 1L), 0, pour())
            .kind(FAMILY, 1, List.of(6L, 1L), 0, pour())
            .kind(FAMILY, 1, List.of(1L, 1L), 0, pour()));
    assertTrue(lots.join(1));
    assertFalse(lots.join(2));
  }

  @Test
  void aLotMayNotTakeLongerThanTheFamilyAllows() {
    // 8 shared, 2 for the run and 5 for each job.
    begin(family(100, 100, 25).kind(FAMILY, 5, List.of(1L, 1L), 0, pour()));
    assertTrue(lots.join(1) && lots.join(2));
    assertEquals(25, lots.minutes);
    assertFalse(lots.join(3));
  }

  @Test
  void eachRunAddsItsOwnFixedMinutesOnce() {
    begin(
        family(100, 100, NO_LIMIT)
            .kind(FAMILY, 2, List.of(1L, 1L), 0, pour())
            .kind(FAMILY, 2, List.of(1L, 1L), 0, ActivityDraft.of(3).each(7).by(0)));
    assertEquals(8 + 2 + 5, lots.minutes);
    assertTrue(lots.join(1));
    assertEquals(8 + 2 + 10, lots.minutes);
    assertTrue(lots.join(2) && lots.join(3));
    assertEquals(8 + 2 + 10 + 3 + 14, lots.minutes);
  }

  @Test
  void fixedMinutesOfARunThatWouldBeNewCountBeforeItJoins() {
    begin(
        family(100, 100, 24)
            .kind(FAMILY, 1, List.of(1L, 1L), 0, pour())
            .kind(FAMILY, 1, List.of(1L, 1L), 0, ActivityDraft.of(3).each(7).by(0)));
    assertFalse(lots.join(1));
  }

  @Test
  void whatALotOpensTogetherMustBeThereTogether() {
    ActivityDraft holding = pour().holding(0, 2, 1);
    begin(
        family(100, 100, NO_LIMIT)
            .resource(5)
            .kind(FAMILY, 2, List.of(1L, 1L), 0, holding, minute())
            .kind(FAMILY, 2, List.of(1L, 1L), 0, pour().holding(0, 1, 1), minute()));
    assertTrue(lots.join(1));
    assertTrue(lots.join(2));
    assertFalse(lots.join(3));
  }

  @Test
  void whatARunOpensLaterMustBeThereForTheRunOnly() {
    begin(
        family(100, 100, NO_LIMIT)
            .resource(2)
            .kind(FAMILY, 3, List.of(1L, 1L), 0, pour(), minute().holding(0, 1, 1))
            .kind(FAMILY, 2, List.of(1L, 1L), 0, pour(), minute().holding(0, 2, 1)));
    assertTrue(lots.join(1));
    assertFalse(lots.join(2));
    assertTrue(lots.join(3));
    assertFalse(lots.join(4));
  }

  @Test
  void jobsOfAKindAreOneRun() {
    begin(
        family(100, 100, NO_LIMIT)
            .kind(FAMILY, 2, List.of(1L, 1L), 0, pour())
            .kind(FAMILY, 2, List.of(1L, 1L), 0, pour()));
    assertTrue(lots.join(2) && lots.join(1) && lots.join(3));
    assertEquals(2, timetable.runs);
    assertEquals(List.of(2, 2), List.of(timetable.runJobs[0], timetable.runJobs[1]));
  }

  @Test
  void whatNeverSharesJoinsNothing() {
    begin(new ShopDraft().worker().kind(2, pour()));
    assertFalse(lots.join(1));
  }

  @Test
  void anotherFamilyIsAnother() {
    begin(family(9, 9, 9).kind(FAMILY, 1, List.of(1L, 1L), 0, pour()).kind(1, pour()));
    assertTrue(lots.sameFamily(0));
    assertFalse(lots.sameFamily(1));
  }

  @Test
  void aSmallerLotIsTheFirstOfItsJobs() {
    begin(
        family(5, 100, NO_LIMIT)
            .kind(FAMILY, 2, List.of(1L, 1L), 0, pour())
            .kind(FAMILY, 2, List.of(2L, 1L), 0, pour()));
    assertTrue(lots.join(2) && lots.join(1));
    lots.shrinkTo(2);
    assertEquals(List.of(2, 2), List.of(lots.count, timetable.runs));
    assertEquals(8 + 2 + 5 + 2 + 5, lots.minutes);
    lots.shrinkTo(1);
    assertEquals(List.of(1, 1), List.of(lots.count, timetable.runs));
    assertEquals(8 + 2 + 5, lots.minutes);
    assertTrue(lots.join(2));
    assertTrue(lots.join(3));
  }

  @Test
  void aSettledLotTakesWhatItIsGiven() {
    begin(family(1, 1, 1).kind(FAMILY, 2, List.of(1L, 1L), 0, pour()));
    lots.force(1);
    assertEquals(8 + 2 + 10, lots.minutes);
  }

  private static ShopDraft family(long first, long second, int longest) {
    return new ShopDraft()
        .worker()
        .family(new Family("mix", 8, 3, List.of(first, second), longest));
  }

  private static ActivityDraft pour() {
    return ActivityDraft.of(2).each(5).by(0);
  }

  private static ActivityDraft minute() {
    return ActivityDraft.of(1);
  }

  private void begin(ShopDraft draft) {
    Tables tables = new Tables(draft.shop());
    timetable = new Timetable(tables);
    timetable.clear();
    lots = new Lots(tables, timetable);
    lots.begin(0);
  }
}
