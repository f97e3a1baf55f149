package strickle.plan.why;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class UsageTest {

  private static final Course ANYBODY = Runs.course(List.of());

  private static Usage.Holding holding(int from, int to, int units) {
    return new Usage.Holding(ANYBODY, from, to, units);
  }

  @Test
  void whatIsFreeAllAlongCanBeTakenAtOnce() {
    Usage usage = new Usage(2, List.of(holding(10, 20, 1)));
    assertEquals(5, usage.clearOf(5, 30, 1));
  }

  @Test
  void whoeverNeedsItToTheEndCannotBeginBeforeTheLastConflictIsOver() {
    Usage usage = new Usage(2, List.of(holding(10, 20, 1), holding(25, 28, 2)));
    assertEquals(20, usage.clearOf(5, 25, 2));
    assertEquals(28, usage.clearOf(5, 30, 1));
    assertEquals(28, usage.clearOf(28, 40, 2), "given back as the next takes it");
  }

  @Test
  void moreThanThereIsIsNeverFree() {
    assertEquals(Usage.NEVER, new Usage(2, List.of()).clearOf(0, 10, 3));
  }

  @Test
  void whatIsMissingIsCountedAtTheWorstMoment() {
    Usage usage = new Usage(3, List.of(holding(10, 20, 1), holding(15, 18, 2)));
    assertEquals(0, usage.missing(0, 10, 3));
    assertEquals(1, usage.missing(0, 15, 3));
    assertEquals(3, usage.missing(0, 16, 3));
    assertEquals(1, usage.missing(18, 30, 3));
  }

  /** Minute by minute, against the plain definition. */
  @Test
  void theLastConflictIsFoundAmongAnyHoldings() {
    Random chance = new Random(7);
    for (int round = 0; round < 500; round++) {
      List<Usage.Holding> holdings =
          chance
              .ints(4, 0, 30)
              .mapToObj(from -> holding(from, from + 1 + chance.nextInt(9), 1 + chance.nextInt(2)))
              .toList();
      int from = chance.nextInt(30);
      int to = from + 1 + chance.nextInt(15);
      assertEquals(clearOf(holdings, from, to), new Usage(3, holdings).clearOf(from, to, 2));
    }
  }

  /**
   * Three units, two wanted: the first minute from which on a conflict before {@code to} is over.
   */
  private static int clearOf(List<Usage.Holding> holdings, int from, int to) {
    int clear = from;
    for (int minute = from; minute < to; minute++) {
      int end = minute;
      while (taken(holdings, end) + 2 > 3) {
        end++;
      }
      clear = end > minute ? Math.max(clear, end) : clear;
    }
    return clear;
  }

  private static int taken(List<Usage.Holding> holdings, int minute) {
    return holdings.stream()
        .filter(one -> one.from() <= minute && minute < one.to())
        .mapToInt(Usage.Holding::units)
        .sum();
  }
}
