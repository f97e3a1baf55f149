package strickle.shop;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Tries every minute for every activity of the last job of a shop, among what has been placed
 * before. It reads the rules for itself: one job, one worker or none for each activity, the wall
 * clock, resources of one unit, holds of resources that its other activities do not hold.
 */
final class EveryMinute {

  private final Shop shop;
  private final List<Activity> chain;
  private final boolean[][] hours;
  private final boolean[][] busy;
  private final boolean[][] held;
  private final int[] starts;
  private final int[] ends;

  EveryMinute(Shop shop, Schedule before) {
    this.shop = shop;
    this.chain = shop.kinds().get(shop.kinds().size() - 1).chain();
    this.hours = new boolean[shop.workers().size()][shop.horizonMinutes()];
    this.busy = new boolean[shop.workers().size()][shop.horizonMinutes()];
    this.held = new boolean[shop.resources().size()][shop.horizonMinutes()];
    this.starts = new int[chain.size()];
    this.ends = new int[chain.size()];
    before.lots().forEach(this::block);
    for (int who = 0; who < hours.length; who++) {
      Calendar calendar = shop.workers().get(who);
      for (int i = 0; i < calendar.windows(); i++) {
        Arrays.fill(hours[who], calendar.opens(i), calendar.closes(i), true);
      }
    }
  }

  /**
   * The first starts, in the order of the chain, that keep all rules; nothing if there are none.
   */
  Optional<List<Integer>> starts() {
    return place(0) ? Optional.of(IntStream.of(starts).boxed().toList()) : Optional.empty();
  }

  private void block(Schedule.Lot lot) {
    Schedule.Placed place = lot.first();
    Activity activity = shop.kinds().get(lot.runs().get(0).kind()).chain().get(0);
    if (place.worker() >= 0) {
      Arrays.fill(busy[place.worker()], place.start(), place.end(), true);
    }
    for (Hold hold : activity.holds()) {
      Arrays.fill(held[hold.resource()], place.start(), place.end(), true);
    }
  }

  private boolean place(int index) {
    if (index == chain.size()) {
      return true;
    }
    Wait wait = chain.get(index).before();
    int from = index == 0 ? 0 : ends[index - 1] + (int) Math.round(wait.hours() * 60);
    int by = index == 0 ? shop.horizonMinutes() : shop.horizonMinutes() - 1;
    if (index > 0 && wait.atMostMinutes().isPresent()) {
      by = Math.min(by, ends[index - 1] + wait.atMostMinutes().getAsInt());
    }
    for (int start = from; start <= by; start++) {
      starts[index] = start;
      ends[index] = end(chain.get(index), start, index);
      if (ends[index] >= 0 && free(index) && place(index + 1)) {
        return true;
      }
    }
    return false;
  }

  /** When an activity ends that starts at that minute, or -1 when it cannot. */
  private int end(Activity activity, int start, int index) {
    if (activity.workers().isEmpty()) {
      int end = start + activity.fixedMinutes();
      return end <= shop.horizonMinutes() ? end : -1;
    }
    int who = activity.workers().get(0);
    int left = activity.fixedMinutes();
    int at = start;
    while (left > 0) {
      boolean open = at < shop.horizonMinutes() && hours[who][at];
      boolean mayPause = activity.pauses() && at > start && at < shop.horizonMinutes();
      if ((open && isBusy(who, at, index)) || (!open && !mayPause)) {
        return -1;
      }
      left -= open ? 1 : 0;
      at++;
    }
    return at;
  }

  private boolean isBusy(int who, int at, int index) {
    boolean taken = busy[who][at];
    for (int i = 0; i < index; i++) {
      taken |= chain.get(i).workers().contains(who) && starts[i] <= at && at < ends[i];
    }
    return taken;
  }

  /** Whether everything that this activity closes has been free since it was opened. */
  private boolean free(int index) {
    for (int opener = 0; opener <= index; opener++) {
      for (Hold hold : chain.get(opener).holds()) {
        int end = hold.until() == Hold.Until.START ? starts[index] : ends[index];
        for (int at = starts[opener]; hold.last() == index && at < end; at++) {
          if (held[hold.resource()][at]) {
            return false;
          }
        }
      }
    }
    return true;
  }
}
