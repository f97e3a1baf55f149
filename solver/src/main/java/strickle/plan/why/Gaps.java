package strickle.plan.why;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Piece;
import strickle.plan.Cover;
import strickle.plan.Plan;
import strickle.shop.Calendar;

/**
 * A plan whose gaps can be filled: further lots go where they fit, and everything that is there
 * stays where it is. It does not change; every filling is another one.
 */
public final class Gaps {

  /**
   * A task where it is done.
   *
   * @param person id of who does it
   * @param start minutes since the plan began
   * @param end the minute it is over; closing may lie in between
   * @param minutes minutes worked
   */
  public record Stint(String person, int start, int end, int minutes) {}

  /**
   * A run where it is.
   *
   * @param lot the lot it is poured from
   * @param piece id of the piece
   * @param castings how many
   * @param tasks pour, demould and steps, in order; runs of one lot have the same pour
   * @param ready the minute it is ready
   */
  public record Laid(String lot, String piece, int castings, List<Stint> tasks, int ready) {}

  private final Floor floor;

  private Gaps(Floor floor) {
    this.floor = floor;
  }

  /**
   * The gaps of a plan.
   *
   * @param hours everybody's opening hours by id, in minutes since the plan began
   * @throws IllegalArgumentException when the plan is not one of this book or lacks a task
   */
  public static Gaps of(Book book, Plan plan, Map<String, Calendar> hours) {
    Moments moments = new Moments(plan.from(), book.studio().timeZone());
    return new Gaps(
        Floor.of(
            book, Cover.of(plan.coverPercent()), moments, hours, Courses.of(book, plan, moments)));
  }

  /** The same studio with nothing to do. */
  public Gaps empty() {
    return new Gaps(floor.with(List.of()));
  }

  /**
   * With a lot of one run more, each of its tasks as early as it goes behind the one before.
   *
   * @param castings no more than one lot and the studio's forms and places can hold
   * @param notBefore the first minute of the pour, 0 or more
   * @return nothing when there is no gap for it
   */
  public Optional<Gaps> with(Piece piece, int castings, int notBefore) {
    Chain chain = Chain.of(floor.book(), piece, castings);
    String id = "further-" + floor.courses().size();
    return Placing.place(floor, chain, List.of(), notBefore)
        .map(
            tasks -> {
              int ready = tasks.get(chain.last()).end() + chain.finalDryMinutes();
              return new Gaps(floor.plus(new Course(id, id, chain, false, tasks, ready)));
            });
  }

  /** Every run, the plan's own first. */
  public List<Laid> runs() {
    return floor.courses().stream().map(Gaps::laid).toList();
  }

  private static Laid laid(Course course) {
    List<Stint> tasks =
        course.tasks().stream()
            .map(one -> new Stint(one.person(), one.start(), one.end(), one.minutes()))
            .toList();
    int castings = course.chain().castings();
    return new Laid(course.lot(), course.piece().id(), castings, tasks, course.ready());
  }
}
