package strickle.plan.why;

import java.util.List;
import java.util.Optional;
import strickle.shop.Calendar;

/** How soon a piece, or all that an order needs, could be ready with the studio to itself. */
final class Alone {

  private final Floor empty;
  private final Course course;

  Alone(Floor floor, Course course) {
    this.empty = floor.with(List.of());
    this.course = course;
  }

  /** The minute a single casting is ready when it is begun at once and nothing is in its way. */
  Optional<Integer> ready() {
    return ready(empty);
  }

  /** The same with everybody open all the time and a room no cooler than 20 °C. */
  Optional<Integer> readyAroundTheClock() {
    Floor open = empty;
    for (String person : empty.hours().keySet()) {
      open = open.withHours(person, Calendar.always(Usage.NEVER / 2));
    }
    Optional<Integer> here = ready(open);
    Optional<Integer> warm = new Relief.Warmth().on(open).flatMap(this::ready);
    return here.isPresent() && warm.isPresent()
        ? Optional.of(Math.min(here.get(), warm.get()))
        : here;
  }

  private Optional<Integer> ready(Floor floor) {
    boolean begun = course.done() > 0;
    Chain one = begun ? course.chain() : Chain.of(floor.book(), course.piece(), 1);
    List<Placed> kept = begun ? course.begun() : List.of();
    return Placing.place(floor, one, kept, floor.moments().begins())
        .map(tasks -> tasks.get(one.last()).end() + one.finalDryMinutes());
  }

  /** The minute at which these runs are all ready when they have the studio to themselves. */
  Optional<Integer> ready(List<Course> runs) {
    Floor floor = empty;
    int ready = 0;
    for (Course run : runs) {
      Course free = run.unsettled();
      List<Placed> kept = run.done() > 0 ? run.begun() : List.of();
      int begins = floor.moments().begins();
      Optional<List<Placed>> tasks = Placing.place(floor, free.chain(), kept, begins);
      if (tasks.isEmpty()) {
        return Optional.empty();
      }
      floor = floor.plus(free.moved(tasks.get()));
      ready = Math.max(ready, free.moved(tasks.get()).ready());
    }
    return Optional.of(ready);
  }
}
