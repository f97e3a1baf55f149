package strickle.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static strickle.bench.Refusals.assertRefused;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strickle.shop.Activity;
import strickle.shop.Hold;
import strickle.shop.Shop;

class JobShopFileTest {

  private static Shop read(String text) {
    return JobShopFile.read(Lines.of("tiny.jss", text));
  }

  @Test
  void everyJobGoesOverTheMachinesInItsOwnOrder() {
    Shop shop = read(Tiny.FT06);
    assertEquals(6, shop.resources().size());
    assertEquals(6, shop.kinds().size());
    List<Activity> last = shop.kinds().get(5).chain();
    assertEquals(List.of(3, 3, 9, 10, 4, 1), last.stream().map(Activity::fixedMinutes).toList());
    assertEquals(List.of(Hold.during(1, 1, 0)), last.get(0).holds());
    assertEquals(List.of(Hold.during(2, 1, 5)), last.get(5).holds());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "6 6; | 6; | tiny.jss line 3: found \"6\"; right would be jobs and machines, two numbers",
        "6 6; | 6 0; | line 3: found \"6 0\"; right would be 1 job or more on 1 machine or more",
        "6 6; | 7 6; | tiny.jss: found its end; right would be a line for each job",
        "6 6; | 5 6; | right would be no line after the last of 5 jobs",
        "4  6; | 4; | line 4: found \"11\"; right would be 12 numbers",
        "2  1  0  3  1  6 | 2  1  0  3  0  6 | line 4: found \"[0, 0, 2, 3, 4, 5]\"; right would be"
            + " each",
        "2  1  0  3 | 6  1  0  3 | line 4: found \"[0, 1, 3, 4, 5, 6]\"; right would be each"
            + " machine",
        "2  1  0  3 | 2  x  0  3 | line 4: found \"x\"; right would be a whole number",
      })
  void aFileThatIsNoJobShopIsRefused(String right, String wrong, String message) {
    assertRefused(message, Tiny.FT06, right, wrong, JobShopFileTest::read);
  }
}
