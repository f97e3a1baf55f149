package strickle.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class DiceTest {

  @Test
  void aSeedGivesTheSameDrawsOnEveryMachine() {
    // Worked out apart from this code, by the algorithm that java.util.Random documents.
    assertEquals(List.of(760, 335, 581, 331, 676, 283, 405, 401), draws(7));
  }

  @Test
  void neighbouringSeedsGiveOtherDraws() {
    assertNotEquals(draws(7), draws(8));
  }

  @Test
  void theFirstDrawsOfNeighbouringSeedsAreSpreadOverTheRange() {
    Set<Integer> firsts =
        LongStream.range(0, 100)
            .mapToObj(seed -> new Dice(seed).from(1, 10))
            .collect(Collectors.toSet());
    assertEquals(10, firsts.size());
  }

  @Test
  void bothEndsOfARangeAreDrawnAndNothingBeyondThem() {
    Dice dice = new Dice(1);
    var drawn = IntStream.range(0, 200).map(i -> dice.from(3, 6)).summaryStatistics();
    assertEquals(3, drawn.getMin());
    assertEquals(6, drawn.getMax());
  }

  @Test
  void tenthsHaveOneDecimal() {
    Dice dice = new Dice(1);
    for (int i = 0; i < 50; i++) {
      double drawn = dice.tenths(15, 25);
      assertTrue(1.5 <= drawn && drawn <= 2.5);
      assertEquals(Math.rint(drawn * 10), drawn * 10, 1e-9);
    }
  }

  private static List<Integer> draws(long seed) {
    Dice dice = new Dice(seed);
    return IntStream.range(0, 8).map(i -> dice.from(0, 999)).boxed().toList();
  }
}
