package strickle.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Runs are read in the order in which they are done. */
class TimetableTest {

  private final Timetable timetable =
      new Timetable(
          new Tables(
              new ShopDraft()
                  .kind(40, ActivityDraft.of(1))
                  .kind(40, ActivityDraft.of(1), ActivityDraft.of(1))
                  .shop()));

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void runsOfAKindStandInTheOrderTheyAreDoneAndTiesInTheOrderTheyCame(long seed) {
    Random random = new Random(seed);
    timetable.clear();
    List<List<Integer>> expected = List.of(new ArrayList<>(), new ArrayList<>());
    for (int i = 0; i < 40; i++) {
      int kind = random.nextInt(2);
      int run = timetable.openRun(kind);
      timetable.done(run, random.nextInt(15));
      expected.get(kind).add(run);
    }
    for (int kind = 0; kind < 2; kind++) {
      expected.get(kind).sort(Comparator.comparingInt(run -> timetable.runDone[run]));
      assertEquals(expected.get(kind), inOrder(kind));
    }
  }

  @Test
  void eachRunHasASlotForEachOfItsActivities() {
    timetable.clear();
    timetable.openRun(0);
    timetable.openRun(1);
    timetable.openRun(0);
    assertEquals(List.of(0, 1, 3), slots());
    assertEquals(4, timetable.slots);
  }

  @Test
  void runsTakenBackGiveTheirSlotsBack() {
    timetable.clear();
    timetable.openRun(1);
    timetable.openRun(1);
    timetable.openRun(0);
    timetable.dropRunsFrom(1);
    assertEquals(1, timetable.runs);
    assertEquals(2, timetable.slots);
    timetable.dropRunsFrom(1);
    assertEquals(List.of(0), slots());
  }

  @Test
  void clearedItHasNoRuns() {
    timetable.clear();
    timetable.done(timetable.openRun(0), 5);
    timetable.attended = 7;
    timetable.clear();
    assertEquals(List.of(), inOrder(0));
    assertEquals(0, timetable.runs + timetable.slots + timetable.lots + timetable.attended);
  }

  private List<Integer> slots() {
    List<Integer> slots = new ArrayList<>();
    for (int run = 0; run < timetable.runs; run++) {
      slots.add(timetable.runSlot[run]);
    }
    return slots;
  }

  private List<Integer> inOrder(int kind) {
    List<Integer> runs = new ArrayList<>();
    for (int run = timetable.firstRunOfKind[kind]; run >= 0; run = timetable.runNextOfKind[run]) {
      runs.add(run);
    }
    return runs;
  }
}
