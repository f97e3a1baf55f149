package strickle.shop;

import java.util.ArrayList;
import java.util.List;

/** What a schedule says of itself: when runs are done, due dates met, and how good it is. */
final class ValueRules {

  private ValueRules() {}

  static List<String> broken(Shop shop, Schedule schedule, List<Rules.Chain> chains) {
    List<String> broken = new ArrayList<>();
    long flow = 0;
    long attended = 0;
    for (Rules.Chain chain : chains) {
      int end = chain.place(chain.places().size() - 1).end();
      if (chain.run().done() != end + chain.kind().tailMinutes()) {
        broken.add(chain.kind().name() + " done at " + chain.run().done() + ", ended " + end);
      }
      flow += (long) chain.run().jobs() * chain.run().done();
      for (int i = chain.first() ? 0 : 1; i < chain.places().size(); i++) {
        attended += chain.place(i).worker() < 0 ? 0 : chain.place(i).minutes();
      }
    }
    List<Integer> met = shop.dues().stream().map(due -> met(due, chains)).toList();
    Value value = new Value(late(shop, met), attended, flow);
    if (!met.equals(schedule.met()) || !value.equals(schedule.value())) {
      broken.add(schedule.met() + " " + schedule.value() + ", should be " + met + " " + value);
    }
    return broken;
  }

  /** The jobs of each kind are counted in the order in which they are done. */
  private static int met(Due due, List<Rules.Chain> chains) {
    int met = 0;
    for (Due.Need need : due.needs()) {
      List<Integer> done = new ArrayList<>();
      for (Rules.Chain chain : chains) {
        for (int job = 0; chain.run().kind() == need.kind() && job < chain.run().jobs(); job++) {
          done.add(chain.run().done());
        }
      }
      done.sort(null);
      met = Math.max(met, done.get(need.count() - 1));
    }
    return met;
  }

  private static long late(Shop shop, List<Integer> met) {
    long late = 0;
    for (int i = 0; i < met.size(); i++) {
      Due due = shop.dues().get(i);
      long units = 0;
      while (due.at() + units * shop.lateUnitMinutes() < met.get(i)) {
        units++;
      }
      late += units * due.weight();
    }
    return late;
  }
}
