package strickle.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** An activity put together word by word, so that a test says only what matters to it. */
final class ActivityDraft {

  private final int fixedMinutes;
  private int eachMinutes;
  private List<Integer> workers = List.of();
  private boolean pauses;
  private Wait before = Wait.NONE;
  private final List<Hold> holds = new ArrayList<>();

  private ActivityDraft(int fixedMinutes) {
    this.fixedMinutes = fixedMinutes;
  }

  /** An activity of so many minutes, whatever the run; it needs nobody and nothing. */
  static ActivityDraft of(int minutes) {
    return new ActivityDraft(minutes);
  }

  ActivityDraft each(int minutes) {
    eachMinutes = minutes;
    return this;
  }

  ActivityDraft by(Integer... who) {
    workers = List.of(who);
    return this;
  }

  ActivityDraft pausing() {
    pauses = true;
    return this;
  }

  /** A least wait before it, on the clock given. */
  ActivityDraft after(int clock, double hours) {
    before = new Wait(clock, hours, before.atMostMinutes());
    return this;
  }

  /** A most-wait before it. */
  ActivityDraft within(int minutes) {
    before = new Wait(before.clock(), before.hours(), OptionalInt.of(minutes));
    return this;
  }

  /** Holds a resource from its start until the activity {@code last} of its chain ends. */
  ActivityDraft holding(int resource, int units, int last) {
    return holding(new Hold(resource, units, last, Hold.Until.END));
  }

  ActivityDraft holding(Hold hold) {
    holds.add(hold);
    return this;
  }

  Activity activity(String name) {
    return new Activity(name, fixedMinutes, eachMinutes, workers, pauses, before, holds);
  }
}
