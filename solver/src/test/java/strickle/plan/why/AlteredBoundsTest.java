package strickle.plan.why;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import strickle.book.Book;
import strickle.plan.Bounding;
import strickle.plan.Bounds;
import strickle.plan.Cover;
import strickle.plan.OrderOutcome;
import strickle.plan.Plan;

/** No plan beats the bounds of books with tight most-waits, tiny racks, few people and pins. */
class AlteredBoundsTest {

  @Test
  void noPlanOfAnAlteredStudioIsBetterThanCanBe() {
    List<String> beaten = new ArrayList<>();
    int planned = 0;
    for (long number = 0; number < 300; number++) {
      Book book = AlteredStudios.book(number);
      Optional<Plan> plan = Floors.plan(book);
      planned += plan.isPresent() ? 1 : 0;
      if (plan.isPresent() && isBeaten(book, plan.get())) {
        beaten.add("studio " + number);
      }
    }
    assertEquals(List.of(), beaten);
    assertTrue(planned > 100, planned + " could be planned");
  }

  private static boolean isBeaten(Book book, Plan plan) {
    Bounds bounds = Bounding.of(book, plan.from(), Cover.AVERAGE);
    boolean beaten =
        plan.totals().weightedLateHours().compareTo(bounds.weightedLateHours()) < 0
            || plan.totals().attendedMinutes() < bounds.attendedMinutes();
    for (int i = 0; i < bounds.orders().size(); i++) {
      OrderOutcome outcome = plan.orders().get(i);
      beaten |= outcome.ready().isBefore(bounds.orders().get(i).served());
      beaten |= outcome.ready().isBefore(bounds.orders().get(i).alone());
    }
    return beaten;
  }
}
