package strickle.plan.why;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Follows a hold to what it comes from in the end: what held the run that stood in the way, what
 * held the one that stood in that one's way, and so on. Each link binds: without it what stood in
 * the way would have been over sooner. It ends where nothing did, or where no run did.
 */
final class Links {

  /** Each is placed anew to see that it binds, so that there must be an end to it. */
  private static final int MOST = 40;

  /**
   * One link.
   *
   * @param course the run that stood in the way
   * @param stage the stage of it that had to be over
   * @param hold what held it; empty: it was as early as could be
   */
  record Link(Course course, int stage, Optional<Hold> hold) {}

  private record Blocker(Course course, int stage) {}

  private final Floor floor;
  private final int worthwhile;

  private Links(Floor floor, int worthwhile) {
    this.floor = floor;
    this.worthwhile = worthwhile;
  }

  /**
   * The links behind what held a run, nearest first.
   *
   * @param worthwhile fewer minutes than that do not bind
   */
  static List<Link> behind(Floor floor, Course held, Hold first, int worthwhile) {
    Links links = new Links(floor, worthwhile);
    Set<String> seen = new HashSet<>(Set.of(held.run()));
    List<Link> found = new ArrayList<>();
    Optional<Blocker> next = blocker(first);
    int until = first.until();
    while (next.isPresent() && found.size() < MOST && seen.add(next.get().course().run())) {
      Blocker one = next.get();
      Optional<Hold> hold = links.binding(one, until);
      found.add(new Link(one.course(), one.stage(), hold));
      next = hold.flatMap(Links::blocker);
      until = hold.map(Hold::until).orElse(until);
    }
    return found;
  }

  /** The run in the way, and what of it has to be over. */
  private static Optional<Blocker> blocker(Hold hold) {
    return switch (hold) {
      case Hold.Taken taken when !taken.holders().isEmpty() ->
          Optional.of(blocker(taken.holders().get(0), taken.things()));
      case Hold.Busy busy ->
          busy.errands().stream()
              .min(Comparator.comparingInt(errand -> errand.task().end()))
              .map(errand -> new Blocker(errand.course(), errand.stage()));
      default -> Optional.empty();
    };
  }

  private static Blocker blocker(Course holder, List<Thing> things) {
    int stage =
        holder.chain().needs().stream()
            .filter(need -> things.contains(need.thing()))
            .mapToInt(Need::closes)
            .max()
            .orElse(Chain.DEMOULD);
    return new Blocker(holder, Math.min(stage, holder.tasks().size() - 1));
  }

  /** The longest of what held a run up to a stage, if it would have been over sooner without. */
  private Optional<Hold> binding(Blocker one, int before) {
    Holds holds = Holds.of(floor, one.course());
    return IntStream.rangeClosed(0, one.stage())
        .filter(stage -> stage >= one.course().done())
        .boxed()
        .flatMap(stage -> binding(one, holds, stage).stream())
        .filter(hold -> hold.until() < before && hold.minutes() >= worthwhile)
        .filter(hold -> !(hold instanceof Hold.Nothing || hold instanceof Hold.Together))
        .max(Comparator.comparingInt(Hold::minutes));
  }

  private List<Hold> binding(Blocker one, Holds holds, int stage) {
    List<Hold> here = holds.at(stage);
    return here.isEmpty() || gain(one, holds, stage) < worthwhile ? List.of() : here;
  }

  /** By how much sooner a run would be through with a stage if nothing had held an earlier one. */
  private int gain(Blocker one, Holds holds, int stage) {
    Course course = one.course();
    Placed held = course.task(stage);
    int start = holds.allowed(stage);
    List<Placed> kept = new ArrayList<>(course.tasks().subList(0, stage));
    kept.add(new Placed(held.person(), start, start + held.minutes(), held.minutes()));
    Chain chain =
        course.chain().withoutMost(any -> true).withoutNeedsTo(stage).endingWith(one.stage() + 1);
    return Placing.place(floor.without(course), chain, kept, 0)
        .map(tasks -> course.task(one.stage()).end() - tasks.get(one.stage()).end())
        .orElse(0);
  }
}
