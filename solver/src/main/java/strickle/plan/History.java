package strickle.plan;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/**
 * What had happened when a plan was laid out anew, apart from the tasks begun and done.
 *
 * @param now the moment before which nothing new starts, to the minute
 * @param away who is away when, in place of the hours the book gives
 * @param broken units of forms that are broken
 * @param exceeded tasks that come too late for their most-wait, which nothing could help any more
 */
public record History(
    OffsetDateTime now, List<Away> away, List<Broken> broken, List<Exceeded> exceeded) {

  /**
   * Takes its own copy of every list.
   *
   * @throws strickle.book.Faulty when a part is missing or {@code now} is not of a year from 1970
   *     to 2999
   */
  public History {
    Flaws flaws = new Flaws().time(".now", now);
    away = flaws.list(".away", away);
    broken = flaws.list(".broken", broken);
    exceeded = flaws.list(".exceeded", exceeded);
    flaws.raise();
  }

  /**
   * Somebody's absence.
   *
   * @param person id of who is away
   * @param from the first minute away
   * @param to the first minute back, not before {@code from}
   */
  public record Away(String person, OffsetDateTime from, OffsetDateTime to) {

    /**
     * Refuses an absence that ends before it begins.
     *
     * @throws strickle.book.Faulty when it does, or a part is missing
     */
    public Away {
      Flaws flaws = new Flaws().id(".person", person).time(".from", from).time(".to", to);
      flaws.order(".to", from, to).raise();
    }
  }

  /**
   * Units of a form that nothing can be poured into while they are broken. A run that lies in one
   * when it breaks is taken out of it all the same.
   *
   * @param form id of the form
   * @param units which of its units, counted from 1
   * @param from since when
   * @param to from when on they are mended or replaced; empty when that is not known
   */
  public record Broken(
      String form, List<Integer> units, OffsetDateTime from, Optional<OffsetDateTime> to) {

    /**
     * Takes its own copy of the list.
     *
     * @throws strickle.book.Faulty when there is no unit, one is below 1, or a part is missing
     */
    public Broken {
      Flaws flaws = new Flaws().id(".form", form).time(".from", from);
      boolean none = units != null && units.isEmpty();
      flaws.when(none, ".units", "an empty list", "at least one unit");
      units = flaws.list(".units", units);
      for (int i = 0; i < units.size(); i++) {
        flaws.atLeast(1, ".units[" + i + "]", units.get(i));
      }
      to = flaws.optional(".to", to);
      to.ifPresent(end -> flaws.time(".to", end).order(".to", from, end));
      flaws.raise();
    }

    /** Units of which nobody knows when they will be whole again. */
    public Broken(String form, List<Integer> units, OffsetDateTime from) {
      this(form, units, from, Optional.empty());
    }

    /** Whether they are broken at a moment. */
    public boolean isAt(OffsetDateTime at) {
      return !at.isBefore(from) && to.map(at::isBefore).orElse(true);
    }
  }

  /**
   * A most-wait that was not kept.
   *
   * @param task id of the task that starts too late
   * @param minutes by how much, 1 or more
   */
  public record Exceeded(String task, long minutes) {

    /**
     * Refuses a wait exceeded by nothing.
     *
     * @throws strickle.book.Faulty when the minutes are below 1 or the task is blank
     */
    public Exceeded {
      new Flaws().id(".task", task).atLeast(1, ".minutes", minutes).raise();
    }
  }
}
