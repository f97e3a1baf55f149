package strickle.plan.why;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The holds of a run that matter: without those of one stage, and all else as it is, the run would
 * be ready sooner. What is made up for later on is left out, and so is what lasted only moments.
 */
final class Telling {

  /** A hold shorter than this part of the longest is not worth telling. */
  private static final int SHARE = 10;

  private final Floor floor;
  private final Course course;
  private final Holds holds;
  private final List<Hold> byWeight;

  private Telling(Floor floor, Course course, int worthwhile) {
    this.floor = floor;
    this.course = course;
    this.holds = Holds.of(floor, course);
    this.byWeight = weigh(worthwhile);
  }

  /**
   * Weighs what held a run that is on the floor; less than {@code worthwhile} minutes is nothing.
   */
  static Telling of(Floor floor, Course course, int worthwhile) {
    return new Telling(floor, course, worthwhile);
  }

  Holds holds() {
    return holds;
  }

  /** The telling holds, longest first. */
  List<Hold> byWeight() {
    return byWeight;
  }

  private List<Hold> weigh(int worthwhile) {
    List<Hold> all = new ArrayList<>();
    List<Hold> telling = new ArrayList<>();
    for (int stage = 0; stage <= course.chain().last(); stage++) {
      List<Hold> here = holds.at(stage);
      all.addAll(here);
      if (!here.isEmpty() && gain(stage) >= worthwhile) {
        telling.addAll(here);
      }
    }
    // Two that hold each other's place are telling only together.
    List<Hold> kept = telling.isEmpty() ? all : telling;
    int longest = kept.stream().mapToInt(Hold::minutes).max().orElse(0);
    int least = Math.max(Math.min(worthwhile, longest), longest / SHARE);
    return kept.stream()
        .filter(hold -> hold.minutes() >= least)
        .sorted(Comparator.comparingInt(Hold::minutes).reversed())
        .toList();
  }

  /** By how much sooner the run would be ready if nothing had held this stage. */
  private int gain(int stage) {
    int minutes = course.task(stage).minutes();
    int start = holds.allowed(stage);
    List<Placed> kept =
        IntStream.rangeClosed(0, stage)
            .mapToObj(
                i ->
                    i < stage
                        ? course.task(i)
                        : new Placed(course.task(i).person(), start, start + minutes, minutes))
            .toList();
    Chain chain = course.chain().withoutMost(i -> true).withoutNeedsTo(stage);
    Optional<List<Placed>> rest = Placing.place(floor.without(course), chain, kept, 0);
    return rest.map(tasks -> course.ready() - course.with(tasks).ready()).orElse(0);
  }
}
