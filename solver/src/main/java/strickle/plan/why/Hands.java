package strickle.plan.why;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import strickle.shop.Calendar;

/**
 * One person's hours and what fills them. Everything is counted in the person's working minutes, in
 * which a task that may be broken off at closing is one stretch.
 */
final class Hands {

  private static final Comparator<Errand> BY_START =
      Comparator.comparingInt(errand -> errand.task().start());

  private final String person;
  private final Calendar hours;
  private final List<Errand> errands;

  /** The working minutes at which each errand begins and is over. */
  private final int[] begins;

  private final int[] ends;

  /** Errands must be the person's own. */
  Hands(String person, Calendar hours, List<Errand> errands) {
    this.person = person;
    this.hours = hours;
    this.errands = errands.stream().sorted(BY_START).toList();
    this.begins = this.errands.stream().mapToInt(one -> hours.worked(one.task().start())).toArray();
    this.ends = new int[begins.length];
    for (int i = 0; i < ends.length; i++) {
      ends[i] = begins[i] + this.errands.get(i).task().minutes();
    }
  }

  String person() {
    return person;
  }

  /**
   * The earliest place for a task.
   *
   * @param from it starts then or later
   * @param endFrom it ends then or later
   * @param whole whether it has to lie in one opening window
   * @return nothing when the hours are used up
   */
  Optional<Placed> earliest(int from, int endFrom, int minutes, boolean whole) {
    int place = Math.max(hours.worked(from), forEnd(endFrom, minutes));
    while (place + minutes <= hours.workingMinutes()) {
      int next = afterErrands(place, minutes);
      if (next == place && whole) {
        next = inOneWindow(place, minutes);
      }
      if (next == place) {
        int end = hours.endOf(place + minutes);
        return Optional.of(new Placed(person, hours.startOf(place), end, minutes));
      }
      place = next;
    }
    return Optional.empty();
  }

  private int forEnd(int endFrom, int minutes) {
    int done = hours.worked(endFrom);
    boolean before = done > 0 && done <= hours.workingMinutes() && hours.endOf(done) < endFrom;
    return Math.max(0, done + (before ? 1 : 0) - minutes);
  }

  private int afterErrands(int from, int minutes) {
    int place = from;
    for (int i = 0; i < begins.length && begins[i] < place + minutes; i++) {
      place = Math.max(place, ends[i]);
    }
    return place;
  }

  private int inOneWindow(int place, int minutes) {
    List<Calendar.Spell> spells = hours.spells(place, minutes);
    return spells.size() == 1 ? place : hours.worked(spells.get(1).start());
  }

  /** Working minutes from one minute to another. */
  int open(int from, int to) {
    return hours.worked(to) - hours.worked(from);
  }

  /** The first open minute at or after {@code from}; {@link Usage#NEVER} when there is none. */
  int opens(int from) {
    int worked = hours.worked(from);
    return worked < hours.workingMinutes() ? hours.startOf(worked) : Usage.NEVER;
  }

  /** The end of the window that {@code at}, an open minute, lies in. */
  int closes(int at) {
    int worked = hours.worked(at);
    return hours.spells(worked, hours.workingMinutes() - worked).get(0).end();
  }

  /** The end of the last open minute before {@code to}; -1 when there is none. */
  int closed(int to) {
    int worked = hours.worked(to);
    return worked == 0 ? -1 : hours.endOf(worked);
  }

  /** What the person does between two minutes, in order. */
  List<Errand> errands(int from, int to) {
    return errands.stream().filter(one -> one.task().meets(from, to)).toList();
  }

  /** Whether a task is broken off at the closing before {@code minute} and goes on later. */
  boolean breaksOff(int minute) {
    return errands.stream()
        .anyMatch(one -> one.task().start() < minute && minute < one.task().end());
  }

  /** The spells of a task in the person's hours; none when it does not fit in them. */
  List<Calendar.Spell> spells(Placed task) {
    int worked = hours.worked(task.start());
    boolean fits = worked + task.minutes() <= hours.workingMinutes();
    return fits ? hours.spells(worked, task.minutes()) : List.of();
  }
}
