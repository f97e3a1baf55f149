package strickle.plan.whatif;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import strickle.book.Book;
import strickle.book.Climate;
import strickle.plan.Plan;
import strickle.plan.Planning;

/** What changes of the room leave alone: the air in which castings have lain until now. */
final class Hereafter {

  private Hereafter() {}

  /**
   * A changed book of which the room is as it was up to the moment a plan was laid out anew; the
   * changed book itself when the plan has not begun to be carried out.
   */
  static Book of(Book book, Book changed, Plan plan) {
    List<Climate> before = book.studio().climate();
    List<Climate> after = changed.studio().climate();
    return plan.history().isEmpty() || before.equals(after)
        ? changed
        : Rebuilt.with(changed, from(Planning.begins(plan).toLocalDateTime(), before, after));
  }

  private static List<Climate> from(LocalDateTime now, List<Climate> before, List<Climate> after) {
    List<Climate> climate = new ArrayList<>();
    before.stream().filter(one -> one.from().isBefore(now)).forEach(climate::add);
    after.stream()
        .filter(one -> one.from().isBefore(now))
        .reduce((one, next) -> next)
        .map(one -> new Climate(now, one.temperatureC(), one.humidityPercent()))
        .ifPresent(climate::add);
    after.stream().filter(one -> !one.from().isBefore(now)).forEach(one -> replace(climate, one));
    return climate;
  }

  private static void replace(List<Climate> climate, Climate one) {
    climate.removeIf(other -> other.from().equals(one.from()));
    climate.add(one);
  }
}
