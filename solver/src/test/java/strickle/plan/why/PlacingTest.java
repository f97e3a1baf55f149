package strickle.plan.why;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.Draft;
import strickle.book.Line;
import strickle.book.Order;
import strickle.book.Piece;

/** The earliest places, against the plans themselves. */
class PlacingTest {

  private static final int BOOKS = 25;

  @Test
  void aRunAloneInItsLotGoesNoLaterThanThePlanHasIt() {
    int placed = 0;
    for (int number = 0; number < BOOKS; number++) {
      Book book = AlteredStudios.book(number);
      Optional<Floor> floor = Floors.plan(book).map(plan -> Floors.of(book, plan));
      for (Course course : floor.map(Floor::courses).orElse(List.of())) {
        if (floor.get().companions(course).isEmpty()) {
          Floor others = floor.get().without(course);
          int ready = course.moved(place(others, course)).ready();
          assertTrue(ready <= course.ready(), () -> course.run() + " " + ready);
          placed++;
        }
      }
    }
    assertTrue(placed > 50, "too few runs: " + placed);
  }

  private static List<Placed> place(Floor floor, Course course) {
    return Placing.place(floor, course.chain(), List.of(), 0).orElseThrow();
  }

  /**
   * What is said to take until a moment even with nothing in its way does so in a plan of its own.
   */
  @Test
  void oneCastingAloneIsReadyWhenAPlanOfItAloneHasIt() {
    int planned = 0;
    for (int number = 0; number < BOOKS; number++) {
      Book book = alone(AlteredStudios.book(number));
      Optional<Floor> floor = Floors.plan(book).map(plan -> Floors.of(book, plan));
      if (floor.isPresent()) {
        Course only = floor.get().courses().get(0);
        assertEquals(Optional.of(only.ready()), new Alone(floor.get(), only).ready());
        planned++;
      }
    }
    assertTrue(planned > 15, "too few plans: " + planned);
  }

  private static Book alone(Book book) {
    Piece piece = Altered.of(book.piece("planter-slate"), "onHand", 0);
    piece = Altered.of(piece, "goodPercent", 100.0);
    Order order =
        new Order(
            "O-1",
            "someone",
            "custom",
            LocalDateTime.parse("2027-04-06T12:00"),
            BigDecimal.ONE,
            List.of(new Line("planter-slate", 1, Optional.empty())));
    return Draft.of(book).pieces(piece, book.piece("saucer")).orders(order).pins().book();
  }
}
