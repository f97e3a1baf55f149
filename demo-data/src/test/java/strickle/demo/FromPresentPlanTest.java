package strickle.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strickle.book.Book;
import strickle.plan.Effort;
import strickle.plan.Plan;
import strickle.plan.PlanRequest;
import strickle.plan.Planning;
import strickle.plan.audit.Audit;

/** Planning that begins from a plan goes on from there. */
class FromPresentPlanTest {

  /** Enough to lay a plan out again, and a small part of what it took to find it. */
  private static final Effort LITTLE = Effort.ofSchedules(150);

  private static Plan plan(Book book, PlanRequest request) {
    return Planning.of(book, request, progress -> {}).run();
  }

  @ParameterizedTest
  @ValueSource(ints = {4, 8, 12, 20, 30})
  void aPlanIsFoundAgainAndNotLostInTheSearch(int castings) {
    List<String> worse = new ArrayList<>();
    for (long seed = 1; seed <= 6; seed++) {
      Book book = Generator.book(castings, seed);
      OffsetDateTime from = Generator.start(book);
      Plan present = plan(book, new PlanRequest(from, Effort.ofSchedules(3000), seed));
      Plan again = plan(book, new PlanRequest(from, LITTLE, 7).startingFrom(present));
      assertEquals(List.of(), Audit.of(book, again));
      if (again.totals().weightedLateHours().compareTo(present.totals().weightedLateHours()) > 0) {
        worse.add(castings + " castings, seed " + seed + ": " + present.totals() + again.totals());
      }
    }
    assertTrue(worse.isEmpty(), worse.toString());
  }

  @Test
  void thePlanOfAnotherBookDoesNoHarm() {
    Book book = Generator.book(12, 3);
    OffsetDateTime from = Generator.start(book);
    Book other = Generator.book(20, 4);
    Plan strange = plan(other, new PlanRequest(Generator.start(other), Effort.ofSchedules(50), 0));
    Plan plan = plan(book, new PlanRequest(from, LITTLE, 0).startingFrom(strange));
    assertEquals(List.of(), Audit.of(book, plan));
  }
}
