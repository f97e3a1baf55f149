package strickle.shop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What settled activities take of their workers' calendars, in working minutes. */
final class SettledHours {

  /** A stretch of a worker's working minutes. */
  private record Stretch(int worker, int from, int to) {}

  private final int[][] worked;
  private final int[][] minutes;
  private final List<Stretch> stretches;

  SettledHours(Tables tables, Settled settled) {
    worked = new int[settled.runs()][];
    minutes = new int[settled.runs()][];
    List<Stretch> all = new ArrayList<>();
    for (int lot = 0; lot < settled.count(); lot++) {
      int first = settled.firstRun(lot);
      for (int run = first; run < settled.firstRun(lot + 1); run++) {
        worked[run] = new int[settled.places(run)];
        minutes[run] = new int[settled.places(run)];
        for (int local = 0; local < worked[run].length; local++) {
          read(tables, settled, run, local);
          // The first activity of a lot is one activity, however many runs there are.
          if (minutes[run][local] > 0 && (local > 0 || run == first)) {
            int from = worked[run][local];
            all.add(new Stretch(settled.worker(run, local), from, from + minutes[run][local]));
          }
        }
      }
    }
    stretches = apart(all);
  }

  private void read(Tables tables, Settled settled, int run, int local) {
    int who = settled.worker(run, local);
    if (who == Slots.NOBODY) {
      minutes[run][local] = settled.end(run, local) - settled.start(run, local);
    } else {
      Calendar calendar = tables.shop.workers().get(who);
      worked[run][local] = calendar.worked(Math.max(0, settled.start(run, local)));
      int until = calendar.worked(Math.max(0, settled.end(run, local)));
      minutes[run][local] = until - worked[run][local];
    }
  }

  /** The same stretches with those that overlap or touch made one: what is busy is busy once. */
  private static List<Stretch> apart(List<Stretch> all) {
    List<Stretch> apart = new ArrayList<>();
    all.sort(Comparator.comparingInt(Stretch::worker).thenComparingInt(Stretch::from));
    for (Stretch next : all) {
      Stretch last = apart.isEmpty() ? null : apart.get(apart.size() - 1);
      if (last != null && last.worker() == next.worker() && next.from() <= last.to()) {
        int to = Math.max(last.to(), next.to());
        apart.set(apart.size() - 1, new Stretch(last.worker(), last.from(), to));
      } else {
        apart.add(next);
      }
    }
    return apart;
  }

  /** The worker's working minute at which a settled activity starts. */
  int worked(int run, int local) {
    return worked[run][local];
  }

  /** How many working minutes of its worker it takes. */
  int minutes(int run, int local) {
    return minutes[run][local];
  }

  void take(Slots slots) {
    for (int i = 0; i < stretches.size(); i++) {
      Stretch one = stretches.get(i);
      slots.take(one.worker(), one.from(), one.to() - one.from());
    }
  }
}
