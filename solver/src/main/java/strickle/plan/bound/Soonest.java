package strickle.plan.bound;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import strickle.plan.bound.Hands.Stage;
import strickle.shop.Shop;

/** The minute before which so many castings of each kind cannot all be ready. */
final class Soonest {

  private final Shop shop;
  private final Reach reach;
  private final List<Turns> turns;
  private final List<Hands> hands;

  Soonest(Shop shop, Reach reach, List<Turns> turns, List<Hands> hands) {
    this.shop = shop;
    this.reach = reach;
    this.turns = turns;
    this.hands = hands;
  }

  /** The latest of what each argument says by itself: a lone casting, turns of forms, hands. */
  int ready(int[] castings) {
    int ready =
        IntStream.range(0, castings.length)
            .filter(kind -> castings[kind] > 0)
            .map(kind -> reach.ready(kind, castings[kind], 0))
            .max()
            .orElse(0);
    for (Turns one : turns) {
      ready = one.concerns(castings) ? Math.max(ready, one.ready(castings)) : ready;
    }
    for (Hands one : hands) {
      ready = one.concerns(castings) ? Math.max(ready, ready(one, castings, ready)) : ready;
    }
    return ready;
  }

  /**
   * The last minute of work belongs to some stage, and what follows that one is still to come; not
   * above {@code enough}, which is all that is asked, when any of them is not.
   */
  private int ready(Hands one, int[] castings, int enough) {
    int through = one.through(castings);
    int ready = shop.horizonMinutes();
    // Last stages first: they have least to come, so it is soon seen when nothing is gained.
    List<Stage> stages =
        one.stages().stream()
            .filter(stage -> castings[stage.kind()] > 0)
            .sorted(Comparator.comparingInt(Stage::index).reversed())
            .toList();
    for (Stage stage : stages) {
      int most = castings[stage.kind()];
      ready = Math.min(ready, reach.readyAfter(stage.kind(), most, stage.index(), through));
      if (ready <= enough) {
        return ready;
      }
    }
    return ready;
  }
}
