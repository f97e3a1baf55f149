package strickle.plan.promise;

import java.util.HashSet;
import java.util.Set;
import strickle.book.Order;
import strickle.plan.Lot;
import strickle.plan.Run;
import strickle.plan.Served;
import strickle.plan.Task;
import strickle.plan.TaskKind;

/**
 * Says which lots stay. An order without time to spare is late by the present plan or ready just as
 * it is due: a search that moves its lots mostly makes it later, and finds back only with luck.
 */
final class Rooms {

  private final Addition addition;
  private final Yardstick yardstick;

  Rooms(Addition addition, Yardstick yardstick) {
    this.addition = addition;
    this.yardstick = yardstick;
  }

  /** Ids of the lots of an offer's plan that stay where they are. */
  Set<String> staying(Offer offer, Room room) {
    Set<String> lots = new HashSet<>();
    if (room != Room.EVERYWHERE) {
      lots.addAll(withoutSpare(offer));
    }
    if (room == Room.BEFORE) {
      offer.plan().tasks().stream()
          .filter(task -> task.kind() == TaskKind.POUR && !task.start().isBefore(offer.ready()))
          .map(Task::lot)
          .forEach(lots::add);
    }
    return lots;
  }

  private Set<String> withoutSpare(Offer offer) {
    Served served = Served.of(offer.book(), offer.plan());
    Set<String> runs = new HashSet<>();
    for (Order order : addition.book().orders()) {
      boolean spare = yardstick.before(order.id()).ready().isBefore(addition.moment(order.due()));
      if (!spare) {
        runs.addAll(served.runs(order.id()));
      }
    }
    Set<String> lots = new HashSet<>();
    for (Lot lot : offer.plan().lots()) {
      if (lot.runs().stream().map(Run::id).anyMatch(runs::contains)) {
        lots.add(lot.id());
      }
    }
    return lots;
  }
}
