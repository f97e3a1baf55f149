package strickle.plan.bound;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import strickle.plan.bound.Spans.Span;
import strickle.shop.Activity;
import strickle.shop.Calendar;
import strickle.shop.Clock;
import strickle.shop.Shop;
import strickle.shop.Wait;

/** From the minutes at which one task can end to those at which the next can begin and end. */
final class Passage {

  private final Shop shop;

  Passage(Shop shop) {
    this.shop = shop;
  }

  /**
   * The minutes at which a wait lets a task begin. Where the room changes its pace within a stretch
   * of ends, a few more may be among them than there are; none is left out.
   *
   * @param ends when the wait can begin
   * @param limit the last minute looked at
   */
  Spans starts(Wait wait, Spans ends, int limit) {
    Clock clock = shop.clocks().get(wait.clock());
    List<Span> starts = new ArrayList<>();
    for (Span end : ends.list()) {
      int from = clock.end(end.from(), wait.hours());
      OptionalInt atMost = wait.atMostMinutes();
      int to = atMost.isPresent() ? Math.min(limit, end.to() + atMost.getAsInt()) : limit;
      if (from <= to) {
        starts.add(new Span(from, to));
      }
    }
    return new Spans(starts);
  }

  /** The minutes at which a task of so many minutes can end, whoever of its workers does it. */
  Spans ends(Activity activity, int minutes, Spans starts) {
    List<Span> ends = new ArrayList<>();
    for (int worker : activity.workers()) {
      Calendar hours = shop.workers().get(worker);
      starts.list().forEach(span -> ends(hours, activity.pauses(), minutes, span, ends));
    }
    return new Spans(ends);
  }

  /**
   * The first minute at which a task can end.
   *
   * @param ends when the wait before it can begin; the first of them counts
   */
  Spans firstEnd(Activity activity, int minutes, Spans ends, int limit) {
    if (ends.list().isEmpty()) {
      return ends;
    }
    Wait wait = activity.before();
    int from = shop.clocks().get(wait.clock()).end(ends.list().get(0).from(), wait.hours());
    int first = Integer.MAX_VALUE;
    for (int worker : activity.workers()) {
      Calendar hours = shop.workers().get(worker);
      first = Math.min(first, firstEnd(hours, activity.pauses(), minutes, from));
    }
    return first <= limit ? Spans.of(first, first) : Spans.of(1, 0);
  }

  private static int firstEnd(Calendar hours, boolean pauses, int minutes, int from) {
    if (pauses) {
      int worked = hours.worked(from) + minutes;
      return worked <= hours.workingMinutes() ? hours.endOf(worked) : Integer.MAX_VALUE;
    }
    for (int window = firstOpen(hours, from); window < hours.windows(); window++) {
      int end = Math.max(from, hours.opens(window)) + minutes;
      if (end <= hours.closes(window)) {
        return end;
      }
    }
    return Integer.MAX_VALUE;
  }

  private static void ends(
      Calendar hours, boolean pauses, int minutes, Span starts, List<Span> ends) {
    int window = firstOpen(hours, starts.from());
    for (; window < hours.windows() && hours.opens(window) <= starts.to(); window++) {
      int first = Math.max(starts.from(), hours.opens(window));
      int last = Math.min(starts.to(), hours.closes(window) - 1);
      if (pauses) {
        paused(hours, window, hours.worked(first) + minutes, last - first, ends);
      } else if (first + minutes <= hours.closes(window)) {
        int end = Math.min(last + minutes, hours.closes(window));
        ends.add(new Span(first + minutes, end));
      }
    }
  }

  /** Ends after so many working minutes and up to {@code more} further ones. */
  private static void paused(
      Calendar hours, int startWindow, int worked, int more, List<Span> ends) {
    int last = Math.min(worked + more, hours.workingMinutes());
    int window = startWindow;
    for (int done = worked; done <= last; ) {
      int end = hours.endOf(done);
      while (hours.closes(window) < end) {
        window++;
      }
      int to = Math.min(hours.closes(window), end + last - done);
      ends.add(new Span(end, to));
      done += to - end + 1;
    }
  }

  /** The first window that closes after a minute. */
  private static int firstOpen(Calendar hours, int minute) {
    int low = 0;
    int high = hours.windows();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (hours.closes(middle) > minute) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }
}
