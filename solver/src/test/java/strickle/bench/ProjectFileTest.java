package strickle.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static strickle.bench.Refusals.assertRefused;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strickle.shop.Budget;
import strickle.shop.Hold;
import strickle.shop.Kind;
import strickle.shop.Link;
import strickle.shop.Resource;
import strickle.shop.Scheduler;
import strickle.shop.Shop;

class ProjectFileTest {

  private static Shop read(String text) {
    return ProjectFile.read(Lines.of("tiny.sm", text));
  }

  @Test
  void jobsBetweenTheFirstAndTheLastBecomeKinds() {
    Shop shop = read(Tiny.PROJECT);
    List<Kind> kinds = shop.kinds();
    assertEquals(List.of(2, 3, 4), kinds.stream().map(ProjectFileTest::minutes).toList());
    assertEquals(List.of(3, 1), shop.resources().stream().map(Resource::capacity).toList());
    assertEquals(List.of(Hold.during(0, 3, 0)), kinds.get(0).chain().get(0).holds());
    List<Hold> both = List.of(Hold.during(0, 2, 0), Hold.during(1, 1, 0));
    assertEquals(both, kinds.get(1).chain().get(0).holds());
    assertEquals(List.of(new Link(0, 2, 0)), shop.links());
  }

  @Test
  void theLatenessIsTheMakespan() {
    Scheduler scheduler =
        new Scheduler(read(Tiny.PROJECT), Budget.ofSchedules(100), 0, report -> {});
    assertEquals(9, scheduler.run().value().late());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "):  5 | ):  2 | line 6: found \"2\"; right would be 3 jobs or more",
        "0   N | 1   N | line 10: found \"1\"; right would be 0, only renewable",
        "0   D | 2   D | line 11: found \"2\"; right would be 0, only renewable",
        "2   R | two   R | line 9: found \"two\"; right would be a whole number from 0",
        "PRECEDENCE | BEFORE | tiny.sm: found its end; right would be a line that begins with",
        "3        1          1 | 3        2          1 | line 21: found \"2\"; right would be one"
            + " mode",
        "1           4 | 1           6 | line 20: found \"6\"; right would be a later job, up to 5",
        "1           4 | 1           2 | line 20: found \"2\"; right would be a later job, up to 5",
        "1           4 | 2           4 | line 20: found \"1\"; right would be 2 successors",
        "2        1          1           4; | '' | found \"3\"; right would be a line for job 2",
        "2       3    0 | 2       3 | line 29: found \"1\"; right would be 2 uses",
        "5      1     0 | 5      1     1 | no minutes and no uses of the first and the last job",
        "3       2    1 | 3       2   -1 | line 30: found \"-1\"; right would be a whole number",
        "3       2    1 | 3       2    2 | found \"1\"; right would be 2 or more, which a job uses",
        "3    1; | 3; | line 36: found \"1\"; right would be 2 availabilities",
      })
  void aFileThatIsNoProjectIsRefused(String right, String wrong, String message) {
    assertRefused(message, Tiny.PROJECT, right, wrong, ProjectFileTest::read);
  }

  private static int minutes(Kind kind) {
    return kind.chain().get(0).fixedMinutes();
  }
}
