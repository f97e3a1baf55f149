package strickle.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.bench.Refusals.assertRefused;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strickle.book.Faulty;
import strickle.shop.Due;
import strickle.shop.Scheduler;
import strickle.shop.Shop;

class TardinessFileTest {

  private static List<Shop> read(String text, int problems) {
    return TardinessFile.read(Lines.of("tiny.txt", text), problems);
  }

  @Test
  void minutesThenWeightsThenDueDatesMakeAProblem() {
    List<Shop> shops = read(Tiny.ONE_MACHINE, 2);
    assertEquals(2, shops.size());
    List<Due> dues = shops.get(0).dues();
    assertEquals(List.of(1L, 5L, 1L), dues.stream().map(Due::weight).toList());
    assertEquals(List.of(2, 3, 20), dues.stream().map(Due::at).toList());
    assertEquals(10, Scheduler.first(shops.get(0)).orElseThrow().value().late());
    assertEquals(0, Scheduler.first(shops.get(1)).orElseThrow().value().late());
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 4, 5, 7})
  void theNumbersHaveToGoEvenlyIntoTheProblems(int problems) {
    Faulty refused = assertThrows(Faulty.class, () -> read(Tiny.ONE_MACHINE, problems));
    String right = "right would be as many minutes, weights and due dates for each";
    assertTrue(refused.getMessage().contains(right), refused::getMessage);
  }

  @Test
  void aJobOfNoMinutesAndAWordAreRefused() {
    assertRefused("1 minute or more", Tiny.ONE_MACHINE, "2     3;", "2     0;", t -> read(t, 2));
    assertRefused("line 3: found \"2.5\"", Tiny.ONE_MACHINE, "20;", "2.5;", t -> read(t, 2));
  }
}
