package strickle.plan.why;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import strickle.book.Order;

/**
 * Looks for what would free an order, and tries it before it is said: with the change made and all
 * runs of others left where they are, the order's runs are laid out again one after the other, the
 * last first. What comes out is a plan that keeps the rules, so the time found is a promise.
 */
final class Freeing {

  private static final int MOST_RUNS = 16;
  private static final int MOST_TOGETHER = 3;
  private static final int MOST_FOR_LITTLE = 2;
  private static final int ALTERNATIVES = 2;

  /** What takes less than this part off the lateness is no help. */
  private static final int SHARE = 5;

  /**
   * What reliefs come to.
   *
   * @param reliefs made together
   * @param floor the floor with them and with the order's runs where they can be then
   * @param ready the minute the order has everything
   */
  record Freed(List<Relief> reliefs, Floor floor, int ready) {}

  private final Floor floor;
  private final Order order;
  private final int due;
  private final int worthwhile;
  private final Freed again;

  /** Only what brings the order forward by {@code worthwhile} minutes or more counts. */
  Freeing(Floor floor, Order order, int worthwhile) {
    this.floor = floor;
    this.order = order;
    this.due = floor.moments().minute(order.due());
    this.worthwhile = worthwhile;
    this.again = tryOut(List.of()).orElseThrow();
  }

  boolean inTime(Freed freed) {
    return freed.ready() <= due;
  }

  /** Whether it is not too much to ask for something that is not enough. */
  private static boolean isPlain(Freed freed) {
    return freed.reliefs().size() <= MOST_FOR_LITTLE;
  }

  /** Whether it helps, and more than laying the runs out again does by itself. */
  boolean helps(Freed freed) {
    int least = Math.max(worthwhile, (again.ready() - due) / SHARE);
    return again.ready() - freed.ready() >= least;
  }

  /** What comes of laying out the order's runs again with nothing changed. */
  Freed again() {
    return again;
  }

  /** What comes of laying out the order's runs again with these reliefs. */
  Optional<Freed> tryOut(List<Relief> reliefs) {
    Course course = Serving.of(floor).of(order.id()).last().orElseThrow();
    Floor changed = floor.without(course);
    for (Relief relief : reliefs) {
      Optional<Floor> next = relief.on(changed);
      if (next.isEmpty()) {
        return Optional.empty();
      }
      changed = next.get();
      course = relief instanceof Relief.Unpinned ? course.unsettled() : course;
    }
    return Optional.of(layOut(reliefs, changed, course));
  }

  private Freed layOut(List<Relief> reliefs, Floor changed, Course first) {
    Set<String> moved = new HashSet<>();
    Floor rest = changed;
    Course course = first;
    while (true) {
      moved.add(course.run());
      Floor full = rest.plus(earlier(rest, course));
      Serving.Service service = Serving.of(full).of(order.id());
      Course last = service.last().orElseThrow();
      boolean done = service.ready() <= due || moved.contains(last.run());
      if (done || moved.size() >= MOST_RUNS) {
        return new Freed(reliefs, full, service.ready());
      }
      rest = full.without(last);
      course = last;
    }
  }

  /** The run as early as it goes: in its lot's pour where that is, or poured apart. */
  private static Course earlier(Floor rest, Course course) {
    int begins = rest.moments().begins();
    Stream<Course> inItsLot =
        Placing.place(rest, course.chain(), course.begun(), begins).map(course::with).stream();
    Stream<Course> apart =
        course.settled()
            ? Stream.of()
            : Placing.place(rest, course.chain(), List.of(), begins).map(course::moved).stream();
    return Stream.concat(apart, inItsLot)
        .filter(moved -> moved.ready() < course.ready())
        .min(Comparator.comparingInt(Course::ready))
        .orElse(course);
  }

  /**
   * The ways to free the order: up to two single changes that have it in time; else several changes
   * together that do; else the one change, or two together, that bring it forward most; else none.
   */
  List<Freed> ways() {
    List<Freed> singles = singles();
    List<Freed> enough = alternatives(singles.stream().filter(this::inTime).toList());
    if (!enough.isEmpty()) {
      return enough;
    }
    Optional<Freed> together = together(singles);
    if (together.isPresent() && inTime(together.get())) {
      return List.of(pruned(together.get(), together.get()));
    }
    return singles.stream()
        .filter(this::helps)
        .min(Comparator.comparingInt(Freed::ready))
        .or(
            () ->
                together.filter(this::helps).map(all -> pruned(all, all)).filter(Freeing::isPlain))
        .stream()
        .toList();
  }

  /** The first two that are not more of the same. */
  private static List<Freed> alternatives(List<Freed> singles) {
    List<Freed> alternatives = new ArrayList<>();
    for (Freed single : singles) {
      Relief relief = single.reliefs().get(0);
      boolean other = alternatives.stream().noneMatch(a -> a.reliefs().get(0).isLike(relief));
      if (other && alternatives.size() < ALTERNATIVES) {
        alternatives.add(single);
      }
    }
    return alternatives;
  }

  private List<Freed> singles() {
    List<Freed> singles = new ArrayList<>();
    for (Relief relief : ideas(floor)) {
      tryOut(List.of(relief)).ifPresent(singles::add);
    }
    return singles;
  }

  /** Adds one change to the best so far, as long as that is not enough. */
  private Optional<Freed> together(List<Freed> singles) {
    Optional<Freed> best = singles.stream().min(Comparator.comparingInt(Freed::ready));
    for (int more = 1; more < MOST_TOGETHER && best.isPresent() && !inTime(best.get()); more++) {
      best = withOneMore(best.get());
    }
    return best;
  }

  private Optional<Freed> withOneMore(Freed sofar) {
    return ideas(sofar.floor()).stream()
        .flatMap(relief -> tryOut(and(sofar.reliefs(), relief)).stream())
        .min(Comparator.comparingInt(Freed::ready));
  }

  /** Leaves out every change without which the others do it as well. */
  private Freed pruned(Freed freed, Freed whole) {
    for (Relief relief : freed.reliefs()) {
      List<Relief> fewer = freed.reliefs().stream().filter(one -> !one.equals(relief)).toList();
      Optional<Freed> without = fewer.isEmpty() ? Optional.empty() : tryOut(fewer);
      if (without.isPresent() && isAsGood(without.get(), whole)) {
        return pruned(without.get(), whole);
      }
    }
    return freed;
  }

  /** Whether it has the order in time as well, or brings it forward nearly as far. */
  boolean isAsGood(Freed fewer, Freed whole) {
    int little = Math.max(worthwhile, (again.ready() - whole.ready()) / SHARE);
    return inTime(whole) ? inTime(fewer) : fewer.ready() - whole.ready() < little;
  }

  /** Ideas for what holds the order's last run on a floor, most telling hold first. */
  private Set<Relief> ideas(Floor on) {
    Set<Relief> ideas = new LinkedHashSet<>();
    Serving serving = Serving.of(on);
    Course last = serving.of(order.id()).last().orElseThrow();
    Telling telling = Telling.of(on, last, worthwhile);
    Ideas of = new Ideas(on, last, telling.holds(), serving.runs(order.id()));
    telling.byWeight().forEach(hold -> ideas.addAll(of.of(hold)));
    if (on.book().studio().climate().stream().anyMatch(Relief.Warmth::isCool)) {
      ideas.add(new Relief.Warmth());
    }
    return ideas;
  }

  /** One change more; more of what there is more of already is put together. */
  private static List<Relief> and(List<Relief> some, Relief more) {
    List<Relief> all = new ArrayList<>(some);
    Relief last = more;
    for (Relief one : some) {
      Optional<Relief> both = last.join(one);
      if (both.isPresent()) {
        all.remove(one);
        last = both.get();
      }
    }
    all.add(last);
    return List.copyOf(all);
  }
}
