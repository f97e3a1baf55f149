package strickle.plan.bound;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import strickle.shop.Activity;
import strickle.shop.Kind;
import strickle.shop.Shop;
import strickle.shop.Wait;

/**
 * The work that nobody but some people can do, and only from some minute on: when they can be
 * through with it at the earliest if everything else waits and anything may be broken off.
 */
final class Hands {

  private final Shop shop;
  private final Sizes sizes;
  private final long people;
  private final int from;
  private final List<Stage> stages;
  private final boolean pours;

  /** A stage of a kind that is in it. */
  record Stage(int kind, int index, Activity activity) {}

  private Hands(Shop shop, Sizes sizes, long people, int from, List<Stage> stages) {
    this.shop = shop;
    this.sizes = sizes;
    this.people = people;
    this.from = from;
    this.stages = List.copyOf(stages);
    this.pours = stages.stream().anyMatch(stage -> stage.index() == 0);
  }

  /** Everything worth a look: for those who alone may do something, every minute work begins. */
  static List<Hands> of(Shop shop, Sizes sizes, Reach reach) {
    List<Stage> all = new ArrayList<>();
    List<Integer> begun = new ArrayList<>();
    for (int kind = 0; kind < shop.kinds().size(); kind++) {
      Kind what = shop.kinds().get(kind);
      for (int stage = 0; stage < what.chain().size(); stage++) {
        all.add(new Stage(kind, stage, what.chain().get(stage)));
        begun.add(reach.begun(kind, what.jobs(), stage));
      }
    }
    List<Hands> found = new ArrayList<>();
    for (long people : groups(shop, all)) {
      new TreeSet<>(begun).forEach(from -> add(shop, sizes, all, begun, people, from, found));
    }
    return found;
  }

  /** Those who may do a stage, for each stage, and all of them together. */
  private static Set<Long> groups(Shop shop, List<Stage> stages) {
    Set<Long> groups = new TreeSet<>();
    stages.forEach(stage -> groups.add(bits(stage.activity().workers())));
    groups.add(shop.workers().size() == Long.SIZE ? -1L : (1L << shop.workers().size()) - 1);
    return groups;
  }

  private static void add(
      Shop shop,
      Sizes sizes,
      List<Stage> all,
      List<Integer> begun,
      long people,
      int from,
      List<Hands> found) {
    List<Stage> stages = new ArrayList<>();
    boolean begins = false;
    for (int i = 0; i < all.size(); i++) {
      if (begun.get(i) >= from && (bits(all.get(i).activity().workers()) & ~people) == 0) {
        stages.add(all.get(i));
        begins |= begun.get(i) == from;
      }
    }
    if (begins) {
      found.add(new Hands(shop, sizes, people, from, stages));
    }
  }

  private static long bits(List<Integer> workers) {
    return workers.stream().mapToLong(worker -> 1L << worker).reduce(0, (a, b) -> a | b);
  }

  /** The stages in it. */
  List<Stage> stages() {
    return stages;
  }

  /** Whether castings of any of these kinds make work for them. */
  boolean concerns(int[] castings) {
    return stages.stream().anyMatch(stage -> castings[stage.kind()] > 0);
  }

  /**
   * The same as a bottleneck: after the last of the work comes at least the shortest way that any
   * of its stages has still to go, by the clock alone.
   */
  Bottleneck bottleneck() {
    int tail = stages.stream().mapToInt(this::tail).min().orElse(0);
    return new Bottleneck() {
      @Override
      public boolean concerns(int[] castings) {
        return Hands.this.concerns(castings);
      }

      @Override
      public int ready(int[] castings) {
        return through(castings) + tail;
      }
    };
  }

  /** The least minutes from the end of a stage until the casting is ready. */
  private int tail(Stage stage) {
    Kind kind = shop.kinds().get(stage.kind());
    int washed = shop.families().get(kind.family()).tailMinutes();
    int tail = kind.tailMinutes() - (stage.index() == 0 ? washed : 0);
    for (Activity later : kind.chain().subList(stage.index() + 1, kind.chain().size())) {
      Wait wait = later.before();
      int least = shop.clocks().get(wait.clock()).atLeast(wait.hours());
      tail += least + later.fixedMinutes() + later.eachMinutes();
    }
    return Math.max(0, tail);
  }

  /** The minute by which they can have done their part of so many castings of each kind. */
  int through(int[] castings) {
    long minutes = minutes(castings);
    int low = from;
    int high = shop.horizonMinutes();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (open(middle) >= minutes) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  private long minutes(int[] castings) {
    long minutes = 0;
    int[] poured = new int[castings.length];
    for (Stage stage : stages) {
      int count = castings[stage.kind()];
      Activity activity = stage.activity();
      minutes += (long) count * activity.eachMinutes();
      minutes += sizes.runs(stage.kind(), count) * activity.fixedMinutes();
      poured[stage.kind()] = stage.index() == 0 ? count : poured[stage.kind()];
    }
    for (int family = 0; pours && family < shop.families().size(); family++) {
      minutes += sizes.lots(family, poured) * shop.families().get(family).sharedMinutes();
    }
    return minutes;
  }

  private long open(int until) {
    long open = 0;
    for (int worker = 0; worker < shop.workers().size(); worker++) {
      if ((people >> worker & 1) != 0) {
        open += shop.workers().get(worker).worked(until) - shop.workers().get(worker).worked(from);
      }
    }
    return open;
  }
}
