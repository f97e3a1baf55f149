package strickle.plan.whatif;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import strickle.book.Book;
import strickle.book.Person;
import strickle.book.Window;

/**
 * Hours in which what waits for somebody could be done: for each day the closed stretches beside
 * the present windows, or a morning when there are none, and a helper on days that have hours.
 * Those come first in which tasks of late orders would begin sooner, and by most.
 */
final class HourIdeas {

  private static final int FIRST_MINUTE = 6 * 60;
  private static final int LAST_MINUTE = 22 * 60;
  private static final int LONGEST = 3 * 60;
  private static final int SHORTEST = 30;
  private static final Window FREE_DAY = new Window(9 * 60, 13 * 60);

  /** A task sooner by more than this counts as sooner by this. */
  private static final long MOST_SAVED = 3 * 24 * 60;

  /** A minute sooner for a late order counts as so many. */
  private static final long PRESSING = 10;

  private static final Comparator<Queued> FIRST_SERVED =
      Comparator.comparing(Queued::pressing)
          .reversed()
          .thenComparingLong(Queued::allowed)
          .thenComparingLong(Queued::start)
          .thenComparing(queued -> queued.task().id());

  /** An idea, and what others must not be like it in, as those would say the same again. */
  private record Idea(Change change, String like, long worth) {}

  private final Book book;
  private final PlanReading reading;
  private final List<Queued> queue;

  HourIdeas(Book book, PlanReading reading) {
    this.book = book;
    this.reading = reading;
    this.queue = reading.queue().stream().sorted(FIRST_SERVED).toList();
  }

  /** Windows for people, the most worth first; of one person no two at the same hours. */
  List<Change> windows(int most) {
    List<Idea> ideas = new ArrayList<>();
    for (LocalDate day : days()) {
      for (Person person : book.people()) {
        if (person.hasHours()) {
          closed(person.hoursOn(day)).forEach(one -> ideas.add(window(person, day, one)));
        }
      }
    }
    return best(ideas, most);
  }

  /** A helper on the days that somebody waits for a person most. */
  List<Change> helpers(int most) {
    List<Idea> ideas = new ArrayList<>();
    for (LocalDate day : days()) {
      List<Window> open = DayHours.ofAll(book, day);
      if (!open.isEmpty()) {
        long worth = worth(day, open, Queued::forAnybody);
        ideas.add(new Idea(new Helper(day, Optional.empty()), day.toString(), worth));
      }
    }
    return best(ideas, most);
  }

  private List<LocalDate> days() {
    return reading.firstDay().datesUntil(reading.lastDay().plusDays(1)).toList();
  }

  private Idea window(Person person, LocalDate day, Window window) {
    long worth = worth(day, List.of(window), task -> task.mayBeDoneBy(person.id()));
    String like = person.id() + " " + window;
    return new Idea(new MoreHours(person.id(), day, window), like, worth);
  }

  /** The most worth first, each unlike the others, and none that is worth nothing. */
  private static List<Change> best(List<Idea> ideas, int most) {
    Set<String> kinds = new HashSet<>();
    return ideas.stream()
        .filter(idea -> idea.worth() > 0)
        .sorted(Comparator.comparingLong(Idea::worth).reversed())
        .filter(idea -> kinds.add(idea.like()))
        .limit(most)
        .map(Idea::change)
        .toList();
  }

  /** The closed stretches of a day beside its windows, in waking hours and not too long. */
  static List<Window> closed(List<Window> open) {
    if (open.isEmpty()) {
      return List.of(FREE_DAY);
    }
    List<Window> closed = new ArrayList<>();
    int first = open.get(0).startMinute();
    add(Math.max(FIRST_MINUTE, first - LONGEST), first, closed);
    for (int i = 1; i < open.size(); i++) {
      int from = open.get(i - 1).endMinute();
      add(from, Math.min(open.get(i).startMinute(), from + LONGEST), closed);
    }
    int last = open.get(open.size() - 1).endMinute();
    add(last, Math.min(LAST_MINUTE, last + LONGEST), closed);
    return closed;
  }

  private static void add(int from, int to, List<Window> closed) {
    if (to - from >= SHORTEST) {
      closed.add(new Window(from, to));
    }
  }

  /** By how much sooner the tasks begin that fit into windows, one after the other. */
  private long worth(LocalDate day, List<Window> windows, Predicate<Queued> may) {
    Set<Queued> done = new HashSet<>();
    long worth = 0;
    for (Window window : windows) {
      long at = Math.max(reading.from(), reading.minute(day, window.startMinute()));
      long end = reading.minute(day, window.endMinute());
      for (Queued queued : queue) {
        long begin = Math.max(at, queued.allowed());
        long saved = queued.savedFrom(begin);
        boolean fits = begin + queued.task().minutes() <= end;
        if (saved > 0 && fits && may.test(queued) && done.add(queued)) {
          worth += Math.min(saved, MOST_SAVED) * (queued.pressing() ? PRESSING : 1);
          at = begin + queued.task().minutes();
        }
      }
    }
    return worth;
  }
}
