package strickle.shop;

import java.util.ArrayList;
import java.util.List;

/**
 * What settled activities hold. What lots under way hold is held from the first on; what no settled
 * activity closes, without end until its lot is placed, so that nobody counts on it before. A lot
 * to come takes what it holds when its turn is there.
 */
final class SettledHolds {

  /** Far behind every horizon. */
  private static final int WITHOUT_END = Integer.MAX_VALUE / 4;

  private record Held(int resource, int units, int from, int to) {}

  private final Tables tables;
  private final Settled settled;
  private final Held[][] held;

  SettledHolds(Tables tables, Settled settled) {
    this.tables = tables;
    this.settled = settled;
    this.held = new Held[settled.count()][];
    for (int lot = 0; lot < held.length; lot++) {
      List<Held> ofLot = new ArrayList<>();
      for (int run = settled.firstRun(lot); run < settled.firstRun(lot + 1); run++) {
        addAll(run, ofLot);
      }
      held[lot] = ofLot.toArray(Held[]::new);
    }
  }

  private void addAll(int run, List<Held> ofLot) {
    HoldTables holds = tables.holds;
    int first = tables.first[settled.part(run).kind()];
    for (int local = 0; local < settled.places(run); local++) {
      int from = settled.start(run, local);
      for (int h = holds.openFirst[first + local]; h < holds.openFirst[first + local + 1]; h++) {
        int to = closes(run, first, h);
        if (from < to) {
          int units = holds.units[h] * settled.part(run).jobs();
          ofLot.add(new Held(holds.resource[h], units, from, to));
        }
      }
    }
  }

  private int closes(int run, int first, int hold) {
    int kind = settled.part(run).kind();
    int closer = tables.holds.closer[hold] - first;
    if (closer >= settled.places(run)) {
      return WITHOUT_END;
    }
    return switch (tables.holds.until[hold]) {
      case START -> settled.start(run, closer);
      case END -> settled.end(run, closer);
      case DONE -> settled.end(run, closer) + tables.tail[kind];
    };
  }

  void take(Slots slots) {
    for (int lot = 0; lot < held.length; lot++) {
      if (settled.begun(lot)) {
        for (Held one : held[lot]) {
          slots.usage(one.resource()).add(one.from(), one.to(), one.units());
        }
      }
    }
  }

  /**
   * Leaves open what a lot holds with no end yet, so that it can be placed.
   *
   * @return whether what it holds with an end is there; of a lot that is under way it is
   */
  boolean open(int lot, Slots slots) {
    boolean begun = settled.begun(lot);
    boolean there = true;
    for (Held one : held[lot]) {
      Usage usage = slots.usage(one.resource());
      if (one.to() == WITHOUT_END) {
        usage.add(one.from(), begun ? WITHOUT_END : one.from(), -one.units());
      } else if (!begun) {
        there &= usage.firstFree(one.from(), one.to() - one.from(), one.units()) == one.from();
        usage.add(one.from(), one.to(), one.units());
      }
    }
    return there;
  }
}
