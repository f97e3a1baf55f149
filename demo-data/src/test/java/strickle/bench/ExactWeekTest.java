package strickle.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import strickle.book.Book;
import strickle.demo.Generator;
import strickle.plan.Effort;
import strickle.plan.Plan;
import strickle.plan.audit.Audit;

/** Two tiny weeks are solved to the end; of what solves them only the library for Linux is here. */
@EnabledOnOs(value = OS.LINUX, architectures = "amd64")
class ExactWeekTest {

  private static final Duration LIMIT = Duration.ofMinutes(2);
  private static final int SCHEDULES = 1000;

  private static final ExactWeekSample PLAIN = new ExactWeekSample(4, 9, false);
  private static final ExactWeekSample LATE = new ExactWeekSample(6, 2, false);

  private static ExactWeek.Result solve(ExactWeekSample week, int schedules) {
    Book book = week.book();
    OffsetDateTime from = Generator.start(book);
    return ExactWeek.solve(book, from, ExactWeekCase.plan(book, from, schedules), LIMIT);
  }

  @Test
  void theBestPlanPassesTheAuditAndComesToWhatTheModelCounts() {
    ExactWeek.Result best = solve(LATE, 1);
    assertEquals(List.of(), Audit.of(LATE.book(), best.plan()));
    assertEquals(best.lateHours(), best.plan().totals().weightedLateHours());
    assertEquals(best.attendedMinutes(), best.plan().totals().attendedMinutes());
    assertEquals(best.flowMinutes(), ExactWeekCase.flow(best.plan()));
  }

  @Test
  void whateverPlanItBeginsWithTheBestIsAsGood() {
    ExactWeek.Result fromTheFirst = solve(LATE, 1);
    ExactWeek.Result fromAGoodOne = solve(LATE, SCHEDULES);
    assertTrue(fromTheFirst.flowIsProved() && fromAGoodOne.flowIsProved());
    assertEquals(fromAGoodOne.lateHours(), fromTheFirst.lateHours());
    assertEquals(fromAGoodOne.attendedMinutes(), fromTheFirst.attendedMinutes());
    assertEquals(fromAGoodOne.flowMinutes(), fromTheFirst.flowMinutes());
  }

  @Test
  void thePlannerFindsTheBestPlanOfATinyWeek() {
    for (ExactWeekSample week : List.of(PLAIN, LATE)) {
      ExactWeekCase both = ExactWeekCase.of(week, Effort.ofSchedules(SCHEDULES), LIMIT);
      assertTrue(both.best().attendedIsProved(), both::toString);
      assertEquals(both.best().lateHours(), both.plan().totals().weightedLateHours());
      assertEquals(both.best().attendedMinutes(), both.plan().totals().attendedMinutes());
    }
  }

  @Test
  void aPlanThatBeginsLaterIsAPlanInTheModel() {
    Book book = PLAIN.book();
    OffsetDateTime from = Generator.start(book);
    Plan later = ExactWeekCase.plan(book, from.plusDays(2).plusMinutes(7), 1);
    ExactWeek.Result best = ExactWeek.solve(book, from, later, LIMIT);
    assertEquals(solve(PLAIN, SCHEDULES).attendedMinutes(), best.attendedMinutes());
  }
}
