package strickle.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Units held over time, against an array of them. */
class UsageTest {

  private static final int CAPACITY = 5;
  private static final int LAST = 300;

  private record Held(int start, int end, int units) {}

  private final Usage usage = new Usage(CAPACITY);
  private final int[] held = new int[LAST * 4];
  private final List<Held> holds = new ArrayList<>();

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void unitsAreFreeWhereTheArrayHasThem(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 2000; i++) {
      int at = random.nextInt(LAST);
      int minutes = 1 + random.nextInt(12);
      int units = 1 + random.nextInt(CAPACITY);
      int start = usage.firstFree(at, minutes, units);
      assertEquals(firstFree(at, minutes, units), start);
      if (start < LAST && random.nextInt(3) > 0) {
        hold(new Held(start, start + minutes, units));
      } else if (!holds.isEmpty()) {
        release(holds.remove(random.nextInt(holds.size())));
      }
      assertEquals(held[at], usage.heldAt(at));
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {7, 8, 9})
  void theLastTakenStretchIsTheLastInTheArray(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 40; i++) {
      int start = random.nextInt(LAST);
      hold(new Held(start, start + 1 + random.nextInt(20), 1));
    }
    for (int i = 0; i < 500; i++) {
      int start = random.nextInt(LAST);
      int end = start + 1 + random.nextInt(60);
      int units = 1 + random.nextInt(CAPACITY);
      int free = usage.lastTakenBefore(start, end, units);
      // All that is left of [start, end) is free, and the minute before it is not.
      assertTrue(free >= end || usage.firstFree(free, end - free, units) == free);
      assertTrue(free == start || (free > start && held[free - 1] + units > CAPACITY));
    }
  }

  @Test
  void moreUnitsThanThereAreAreNeverFree() {
    assertTrue(usage.firstFree(0, 1, CAPACITY + 1) > 1_000_000_000);
    hold(new Held(10, 20, 1));
    assertTrue(usage.firstFree(0, 1, CAPACITY + 1) > 1_000_000_000);
  }

  @Test
  void allUnitsAreFreeUpToAHoldAndFromItsEnd() {
    hold(new Held(10, 20, 1));
    assertEquals(0, usage.firstFree(0, 10, CAPACITY));
    assertEquals(20, usage.firstFree(0, 11, CAPACITY));
    assertEquals(0, usage.firstFree(0, 11, CAPACITY - 1));
    assertEquals(20, usage.firstFree(20, 1, CAPACITY));
  }

  @Test
  void aHoldOfNoTimeHoldsNothing() {
    usage.add(10, 10, 3);
    usage.add(20, 10, 3);
    assertEquals(0, usage.heldAt(10));
    assertEquals(0, usage.firstFree(0, 100, CAPACITY));
  }

  @Test
  void clearedMeansFree() {
    hold(new Held(0, 50, CAPACITY));
    usage.clear();
    assertEquals(0, usage.firstFree(0, 100, CAPACITY));
    assertEquals(CAPACITY, usage.capacity());
  }

  private void hold(Held one) {
    usage.add(one.start(), one.end(), one.units());
    holds.add(one);
    for (int minute = one.start(); minute < one.end(); minute++) {
      held[minute] += one.units();
    }
  }

  private void release(Held one) {
    usage.add(one.start(), one.end(), -one.units());
    for (int minute = one.start(); minute < one.end(); minute++) {
      held[minute] -= one.units();
    }
  }

  private int firstFree(int earliest, int minutes, int units) {
    int free = 0;
    for (int minute = earliest; ; minute++) {
      free = held[minute] + units > CAPACITY ? 0 : free + 1;
      if (free == minutes) {
        return minute + 1 - minutes;
      }
    }
  }
}
