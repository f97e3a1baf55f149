package strickle.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A worker's busy minutes, against an array of them. */
class BusyTest {

  private static final int LAST = 400;

  private final Busy busy = new Busy();
  private final boolean[] taken = new boolean[LAST * 3];

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void theFirstFreeStretchIsTheFirstInTheArray(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 3000; i++) {
      int at = random.nextInt(LAST);
      int minutes = 1 + random.nextInt(6);
      int start = busy.firstFree(at, minutes);
      assertEquals(firstFree(at, minutes), start);
      if (start < LAST && random.nextInt(3) > 0) {
        take(start, start + minutes);
      } else if (taken[at]) {
        giveBackWithin(at, random);
      }
    }
  }

  @Test
  void whatIsGivenBackIsFreeAgain() {
    take(10, 40);
    busy.give(20, 30);
    assertEquals(0, busy.firstFree(0, 10));
    assertEquals(20, busy.firstFree(10, 10));
    assertEquals(40, busy.firstFree(10, 11));
    busy.give(10, 20);
    busy.give(30, 40);
    assertEquals(3, busy.firstFree(3, 1000));
  }

  /** Asked for again and again from the same minute, as the pours of a week are. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void theQueueIsNotForgottenAndNotRememberedTooLong(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 2000; i++) {
      int minutes = 1 + random.nextInt(4) + 32 * random.nextInt(2);
      int earliest = random.nextInt(3);
      int start = busy.firstFree(earliest, minutes);
      assertEquals(firstFree(earliest, minutes), start);
      if (start < LAST) {
        take(start, start + minutes);
      }
      int at = random.nextInt(LAST);
      if (taken[at] && random.nextInt(4) == 0) {
        giveBackWithin(at, random);
      }
    }
  }

  @Test
  void stretchesThatTouchLeaveNoRoomBetween() {
    take(0, 10);
    take(20, 30);
    take(10, 20);
    assertEquals(30, busy.firstFree(0, 1));
  }

  @Test
  void clearedMeansFree() {
    take(0, 10);
    busy.clear();
    assertEquals(0, busy.firstFree(0, 100));
  }

  private void take(int start, int end) {
    busy.take(start, end);
    Arrays.fill(taken, start, end, true);
  }

  private void giveBackWithin(int at, Random random) {
    int start = at;
    int end = at + 1;
    while (start > 0 && taken[start - 1] && random.nextInt(4) > 0) {
      start--;
    }
    while (taken[end] && random.nextInt(4) > 0) {
      end++;
    }
    busy.give(start, end);
    Arrays.fill(taken, start, end, false);
  }

  private int firstFree(int earliest, int minutes) {
    int free = 0;
    for (int minute = earliest; ; minute++) {
      free = taken[minute] ? 0 : free + 1;
      if (free == minutes) {
        return minute + 1 - minutes;
      }
    }
  }
}
