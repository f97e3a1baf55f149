package strickle.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import strickle.shop.Calendar;

/** What is taken of one person's hours, counted in working minutes. */
final class HoursTaken {

  private record Taken(int from, int to, String task) {}

  private final Calendar hours;
  private final List<Taken> taken = new ArrayList<>();

  HoursTaken(Calendar hours) {
    this.hours = hours;
  }

  /** Takes the hours between two minutes for a task, as far as there are any. */
  void take(String task, int start, int end) {
    int from = hours.worked(Math.max(0, start));
    int to = hours.worked(Math.max(0, end));
    if (from < to) {
      taken.add(new Taken(from, to, task));
      taken.sort(Comparator.comparingInt(Taken::from));
    }
  }

  /** The task that takes some of the so many minutes from a minute on, if there is one. */
  Optional<String> takenBy(int minute, int minutes) {
    int from = hours.worked(minute);
    return taken.stream()
        .filter(one -> one.from() < from + minutes && from < one.to())
        .map(Taken::task)
        .findFirst();
  }

  /**
   * The spells of the first place for so many minutes.
   *
   * @param earliest the minute before which it does not start
   * @param inOne whether it has to be one spell
   * @return nothing when there are no hours left for it
   */
  List<Calendar.Spell> first(int earliest, int minutes, boolean inOne) {
    int from = hours.worked(earliest);
    while (from + minutes <= hours.workingMinutes()) {
      int next = behindOthers(from, minutes);
      if (next == from) {
        List<Calendar.Spell> spells = hours.spells(from, minutes);
        if (spells.size() == 1 || !inOne) {
          return spells;
        }
        next = from + spells.get(0).end() - spells.get(0).start();
      }
      from = next;
    }
    return List.of();
  }

  private int behindOthers(int from, int minutes) {
    for (Taken one : taken) {
      if (one.from() < from + minutes && from < one.to()) {
        return one.to();
      }
    }
    return from;
  }
}
