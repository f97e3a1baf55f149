package strickle.bench;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import strickle.book.Book;
import strickle.demo.Generator;
import strickle.plan.Bounding;
import strickle.plan.Bounds;
import strickle.plan.Cover;

/** The best plans there are of small weeks do not beat the bounds either. */
@EnabledOnOs(value = OS.LINUX, architectures = "amd64")
class ExactWeekBoundTest {

  private static final Duration LIMIT = Duration.ofSeconds(20);

  @Test
  void theBestPlansOfSmallWeeksKeepTheBounds() {
    for (ExactWeekSample week :
        List.of(
            new ExactWeekSample(4, 9, false),
            new ExactWeekSample(6, 2, false),
            new ExactWeekSample(4, 0, true),
            new ExactWeekSample(5, 1, true),
            new ExactWeekSample(6, 2, true))) {
      Book book = week.book();
      OffsetDateTime from = Generator.start(book);
      ExactWeek.Result best =
          ExactWeek.solve(book, from, ExactWeekCase.plan(book, from, 500), LIMIT);
      Bounds bounds = Bounding.of(book, from, Cover.AVERAGE);
      String what = week + " " + best + " " + bounds;
      assertTrue(best.lateHours().compareTo(bounds.weightedLateHours()) >= 0, what);
      assertTrue(best.plan().totals().attendedMinutes() >= bounds.attendedMinutes(), what);
    }
  }
}
