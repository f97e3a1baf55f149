package strickle.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static strickle.bench.Refusals.assertRefused;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strickle.shop.Budget;
import strickle.shop.Due;
import strickle.shop.Hold;
import strickle.shop.Kind;
import strickle.shop.Link;
import strickle.shop.NoRoomException;
import strickle.shop.Resource;
import strickle.shop.Scheduler;
import strickle.shop.Shop;

class LagFileTest {

  private static LagFile read(String text) {
    return LagFile.read(Lines.of("tiny.sch", text));
  }

  @Test
  void activitiesBetweenTheFirstAndTheLastBecomeKinds() {
    Shop shop = read(Tiny.LAGS).shop();
    List<Kind> kinds = shop.kinds();
    List<Integer> minutes = kinds.stream().map(kind -> kind.chain().get(0).fixedMinutes()).toList();
    assertEquals(List.of(5, 2, 4), minutes);
    assertEquals(List.of(3, 1), shop.resources().stream().map(Resource::capacity).toList());
    assertEquals(List.of(Hold.during(0, 1, 0)), kinds.get(0).chain().get(0).holds());
    List<Hold> both = List.of(Hold.during(0, 3, 0), Hold.during(1, 1, 0));
    assertEquals(both, kinds.get(2).chain().get(0).holds());
  }

  @Test
  void lagsFromStartToStartBecomeLinksFromEndToStart() {
    List<Link> links = List.of(new Link(0, 1, -4), new Link(1, 0, -5), new Link(1, 2, 0));
    assertEquals(links, read(Tiny.LAGS).shop().links());
  }

  @Test
  void onlyThoseWithALagToTheLastDecideWhenAllEnds() {
    List<Due.Need> needs = List.of(new Due.Need(0, 1), new Due.Need(2, 1));
    assertEquals(needs, read(Tiny.LAGS).shop().dues().get(0).needs());
    String longer = Tiny.LAGS.replace("2\t1\t2\t2\t0", "2\t1\t9\t1\t0");
    // 2 runs from 1 to 10 with its one unit, so 3 waits for it, and all ends at 14.
    assertEquals(14, best(longer));
    String shared = longer.replace("3\t1\t4\t3\t1", "3\t1\t4\t1\t1");
    // Nobody waits: 3 runs from 3 to 7, and that 2 has not ended by then does not count.
    assertEquals(7, best(shared));
  }

  @Test
  void theLatenessIsTheMakespan() {
    assertEquals(9, best(Tiny.LAGS));
    assertThrows(NoRoomException.class, () -> best(Tiny.LAGS_WITHOUT_SCHEDULE));
  }

  @Test
  void theCriticalPathIsTheLongestWayAlongTheLags() {
    assertEquals(7, read(Tiny.LAGS).criticalPath());
    assertEquals(0, read(Tiny.LAGS.replace("[-3]", "[0]")).criticalPath(), "1 after 2 after 1");
  }

  private static long best(String text) {
    Budget budget = Budget.ofSchedules(100);
    return new Scheduler(read(text).shop(), budget, 0, report -> {}).run().value().late();
  }

  /** Blanks stand for tabs, which the reader takes alike. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "3 2 0 0 | 3 2 1 0 | line 1: found \"[3, 2, 1, 0]\"; right would be [activities, renewable",
        "3 2 0 0 | 3 2 0 | line 1: found \"[3, 2, 0]\"; right would be [activities, renewable",
        "0 1 1 1 [0] | 0 1 1 1 [4] | line 2: found \"[4]\"; right would be [0], as everything",
        "0 1 1 1 [0] | 0 1 | line 2: found \"2\"; right would be a number, modes, successors",
        "1 1 2 2 4 | 2 1 2 2 4 | line 3: found \"2\"; right would be a line for activity 1",
        "1 1 2 2 4 | 1 2 2 2 4 | line 3: found \"2\"; right would be one mode",
        "1 1 2 2 4 | 1 1 3 2 4 | line 3: found \"7\"; right would be 9 cells",
        "1 1 2 2 4 | 1 1 2 1 4 | line 3: found \"1\"; right would be another activity, from 1 to 4",
        "1 1 2 2 4 | 1 1 2 2 5 | line 3: found \"5\"; right would be another activity, from 1 to 4",
        "1 1 2 2 4 | 1 1 2 0 4 | line 3: found \"0\"; right would be another activity, from 1 to 4",
        "[-3] | -3 | line 4: found \"-3\"; right would be a whole number in brackets",
        "[-3] | [3.5] | line 4: found \"[3.5]\"; right would be a whole number in brackets",
        "4 1 0;0 | 4 1 1 2 [0];0 | line 6: found \"1\"; right would be no successors of the last",
        "1 1 5 1 0 | 1 1 6 1 0 | line 8: found \"6\"; right would be 5 minutes, as is its lag",
        "1 1 5 1 0 | 1 1 5 1 | line 8: found \"1\"; right would be 2 uses",
        "1 1 5 1 0 | 1 2 5 1 0 | line 8: found \"2\"; right would be one mode",
        "4 1 0 0 0 | 4 1 0 1 0 | line 11: found \"0\"; right would be no minutes and no uses",
        "0 0;3 1; | 0 0;3; | line 12: found \"1\"; right would be 2 of them",
        "0 0;3 1; | 0 0; | tiny.sch: found its end; right would be what there is of each",
      })
  void aFileThatIsNoProjectWithLagsIsRefused(String right, String wrong, String message) {
    assertRefused(message, Tiny.LAGS.replace('\t', ' '), right, wrong, LagFileTest::read);
  }
}
