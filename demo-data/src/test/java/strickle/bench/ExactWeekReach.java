package strickle.bench;

import java.util.List;
import strickle.shop.Calendar;

/**
 * Between which minutes the tasks of a piece can lie at all: each as early as one casting alone
 * would get there, and early enough to be ready by the horizon.
 */
final class ExactWeekReach {

  /** Of the pour first, then of each stage. */
  final int[] earliestStart;

  final int[] latestEnd;

  private final ExactWeekKind kind;
  private final List<Calendar> calendars;
  private final ExactWeekAges ages;

  ExactWeekReach(ExactWeekKind kind, List<Calendar> calendars, ExactWeekAges ages) {
    this.kind = kind;
    this.calendars = calendars;
    this.ages = ages;
    earliestStart = new int[kind.stages().size() + 1];
    latestEnd = new int[kind.stages().size() + 1];
    forward();
    backward();
  }

  private void forward() {
    int from = earliestPourEnd() - kind.mix().washMinutes();
    for (int i = 0; i < kind.stages().size(); i++) {
      ExactWeekKind.Stage stage = kind.stages().get(i);
      int over = ages.end(Math.min(from, ages.horizon()), stage.hours(), stage.cures());
      earliestStart[i + 1] = over;
      from = ages.horizon() + 1;
      for (int person : stage.people()) {
        from = Math.min(from, endFrom(calendars.get(person), over, stage.minutes(1)));
      }
    }
  }

  private int earliestPourEnd() {
    int minutes = kind.lotMinutes() + kind.fillMinutes();
    int earliest = ages.horizon();
    for (Calendar calendar : calendars) {
      for (int window = 0; window < calendar.windows(); window++) {
        if (calendar.opens(window) + minutes <= calendar.closes(window)) {
          earliest = Math.min(earliest, calendar.opens(window) + minutes);
        }
      }
    }
    return earliest;
  }

  private static int endFrom(Calendar calendar, int from, int minutes) {
    int worked = calendar.worked(from) + minutes;
    return worked <= calendar.workingMinutes() ? calendar.endOf(worked) : Integer.MAX_VALUE;
  }

  private void backward() {
    int end = ages.horizon() - kind.tailMinutes();
    for (int i = kind.stages().size() - 1; i >= 0; i--) {
      ExactWeekKind.Stage stage = kind.stages().get(i);
      latestEnd[i + 1] = end;
      int latest = -1;
      for (int person : stage.people()) {
        Calendar calendar = calendars.get(person);
        int worked = calendar.worked(Math.max(0, end)) - stage.minutes(1);
        latest = worked < 0 ? latest : Math.max(latest, calendar.startOf(worked));
      }
      end = ages.latest(latest, stage.hours(), stage.cures());
    }
    latestEnd[0] = end + kind.mix().washMinutes();
  }
}
