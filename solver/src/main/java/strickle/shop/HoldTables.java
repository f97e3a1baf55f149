package strickle.shop;

import java.util.ArrayList;
import java.util.List;

/**
 * The holds of a shop as arrays: in the order of the activities that open them, and, as indices, in
 * the order of the activities that close them.
 */
final class HoldTables {

  final int[] openFirst;
  final int[] resource;
  final int[] units;
  final int[] opener;
  final int[] closer;
  final Hold.Until[] until;

  /** The least minutes a hold can last, for a run of one job. */
  final int[] least;

  /** Whether a hold lasts just as long as the activity that opens it. */
  final boolean[] during;

  final int[] closeFirst;
  final int[] closing;

  HoldTables(Tables tables) {
    List<Hold> holds = new ArrayList<>();
    List<Integer> openers = new ArrayList<>();
    List<Integer> closers = new ArrayList<>();
    int activities = tables.segment.length;
    openFirst = new int[activities + 1];
    int index = 0;
    for (Kind kind : tables.shop.kinds()) {
      int first = index;
      for (Activity activity : kind.chain()) {
        for (Hold hold : activity.holds()) {
          holds.add(hold);
          openers.add(index);
          closers.add(first + hold.last());
        }
        index++;
        openFirst[index] = holds.size();
      }
    }
    resource = holds.stream().mapToInt(Hold::resource).toArray();
    units = holds.stream().mapToInt(Hold::unitsEach).toArray();
    until = holds.stream().map(Hold::until).toArray(Hold.Until[]::new);
    opener = openers.stream().mapToInt(Integer::intValue).toArray();
    closer = closers.stream().mapToInt(Integer::intValue).toArray();
    least = new int[closer.length];
    during = new boolean[closer.length];
    for (int hold = 0; hold < closer.length; hold++) {
      least[hold] = least(tables, opener[hold], closer[hold], until[hold]);
      during[hold] = opener[hold] == closer[hold] && until[hold] == Hold.Until.END;
    }
    closeFirst = new int[activities + 1];
    closing = new int[closer.length];
    sortByCloser();
  }

  private void sortByCloser() {
    int next = 0;
    for (int activity = 0; activity + 1 < closeFirst.length; activity++) {
      for (int hold = 0; hold < closer.length; hold++) {
        if (closer[hold] == activity) {
          closing[next++] = hold;
        }
      }
      closeFirst[activity + 1] = next;
    }
  }

  private static int least(Tables tables, int open, int close, Hold.Until until) {
    long minutes = 0;
    for (int i = open; i <= close; i++) {
      if (i > open) {
        Clock clock = tables.shop.clocks().get(tables.waitClock[i]);
        minutes += clock.atLeast(tables.waitHours[i]);
        // The wait after a lot's first activity runs from before its tail, so the tail is no wait.
        minutes -= i == open + 1 ? tailOf(tables, open) : 0;
      }
      if (i < close || until != Hold.Until.START) {
        minutes += tables.minutes(i, 1);
      }
    }
    return (int) Math.max(1, Math.min(Integer.MAX_VALUE / 4, minutes));
  }

  private static int tailOf(Tables tables, int activity) {
    for (int kind = 0; kind < tables.kinds; kind++) {
      if (tables.first[kind] == activity) {
        return tables.familyTail[tables.family[kind]];
      }
    }
    return 0;
  }

  /** The most holds that can ever be open at once, every job being a run of its own. */
  int most(Tables tables) {
    int most = 0;
    for (int kind = 0; kind < tables.kinds; kind++) {
      int first = tables.first[kind];
      int jobs = tables.jobFirst[kind + 1] - tables.jobFirst[kind];
      most += jobs * (openFirst[first + tables.size[kind]] - openFirst[first]);
    }
    return most;
  }
}
