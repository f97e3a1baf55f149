package strickle.shop;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * When one worker may work: opening windows on the minute line, and the same windows pushed
 * together into working minutes, on which a task that may pause is one unbroken stretch.
 */
public final class Calendar {

  private final int[] opens;
  private final int[] closes;
  private final int[] workedBefore;
  private final int workingMinutes;
  private final Lookup byMinute;
  private final Lookup byWorked;

  private Calendar(int[] opens, int[] closes) {
    this.opens = opens;
    this.closes = closes;
    this.workedBefore = new int[opens.length + 1];
    for (int i = 0; i < opens.length; i++) {
      workedBefore[i + 1] = workedBefore[i] + closes[i] - opens[i];
    }
    this.workingMinutes = workedBefore[opens.length];
    this.byMinute = new Lookup(opens);
    this.byWorked = new Lookup(workedBefore);
  }

  /**
   * A calendar of the windows given.
   *
   * @param opens start of each window, minutes from the start of planning, 0 or more, ascending
   * @param closes end of each window, exclusive, after its start, at most the next window's start
   * @throws IllegalArgumentException when the windows are empty, overlap or are out of order
   */
  public static Calendar of(int[] opens, int[] closes) {
    if (opens.length != closes.length) {
      throw new IllegalArgumentException(
          "as many closes as opens, not " + closes.length + " and " + opens.length);
    }
    int last = 0;
    for (int i = 0; i < opens.length; i++) {
      if (opens[i] < last || closes[i] <= opens[i]) {
        throw new IllegalArgumentException(
            "window " + i + " is " + opens[i] + " to " + closes[i] + " after one ending " + last);
      }
      last = closes[i];
    }
    return new Calendar(opens.clone(), closes.clone());
  }

  /** A calendar that never closes before the minute given. */
  public static Calendar always(int until) {
    return of(new int[] {0}, new int[] {until});
  }

  /** All working minutes there are. */
  public int workingMinutes() {
    return workingMinutes;
  }

  /** Working minutes that lie before the minute {@code at}. */
  public int worked(int at) {
    int window = byMinute.lastAtMost(at);
    if (window < 0) {
      return 0;
    }
    return workedBefore[window] + Math.min(at, closes[window]) - opens[window];
  }

  /** The minute at which the working minute {@code worked} begins; it must exist. */
  public int startOf(int worked) {
    return startOf(worked, windowOf(worked));
  }

  /** Likewise, where the window is known that holds it. */
  int startOf(int worked, int window) {
    return opens[window] + worked - workedBefore[window];
  }

  /**
   * The minute at which a stretch ends that has used up {@code worked} working minutes, 1 or more.
   */
  public int endOf(int worked) {
    return startOf(worked - 1) + 1;
  }

  /** Likewise, for a stretch that began in the window given: it mostly ends there as well. */
  int endOf(int worked, int begunIn) {
    int window = begunIn;
    while (workedBefore[window + 1] < worked) {
      window++;
    }
    return startOf(worked, window);
  }

  /** The index of the window that holds the working minute {@code worked}. */
  int windowOf(int worked) {
    return byWorked.lastAtMost(worked);
  }

  /** Working minutes before the window of that index opens. */
  int workedBefore(int window) {
    return workedBefore[window];
  }

  /**
   * One stretch of a task.
   *
   * @param start the minute it starts
   * @param end the minute it ends, exclusive
   */
  public record Spell(int start, int end) {}

  /** The stretches of a task of so many minutes that starts at the working minute given. */
  public List<Spell> spells(int worked, int minutes) {
    List<Spell> spells = new ArrayList<>();
    int done = worked;
    int last = worked + minutes;
    while (done < last) {
      int end = Math.min(last, workedBefore[windowOf(done) + 1]);
      spells.add(new Spell(startOf(done), endOf(end)));
      done = end;
    }
    return spells;
  }

  /** How many windows there are. */
  public int windows() {
    return opens.length;
  }

  /** The minute window {@code index} opens. */
  public int opens(int index) {
    return opens[index];
  }

  /** The minute window {@code index} closes. */
  public int closes(int index) {
    return closes[index];
  }

  /**
   * Finds the last of ascending values that is at most some minute: a table leads near, and a step
   * or none does the rest. A search by halves took a sixth of all decoding.
   */
  private static final class Lookup {

    /** A place in the table for every 64 minutes: seldom more than one window begins in that. */
    private static final int BITS = 6;

    /** Behind the last value stands one that nothing reaches. */
    private final int[] ascending;

    private final int[] lastBefore;

    Lookup(int[] ascending) {
      this.ascending = Arrays.copyOf(ascending, ascending.length + 1);
      this.ascending[ascending.length] = Integer.MAX_VALUE;
      int length = ascending.length == 0 ? 1 : (ascending[ascending.length - 1] >> BITS) + 2;
      this.lastBefore = new int[length];
      int last = -1;
      for (int place = 0; place < length; place++) {
        while (last + 1 < ascending.length && ascending[last + 1] <= place << BITS) {
          last++;
        }
        lastBefore[place] = last;
      }
    }

    /** The index, or -1 when the first value is more than {@code minute}, which is 0 or more. */
    int lastAtMost(int minute) {
      int last = lastBefore[Math.min(minute >> BITS, lastBefore.length - 1)];
      // Whether it is one more is as good as chance: adding needs no guess of the processor's.
      last += ascending[last + 1] <= minute ? 1 : 0;
      while (ascending[last + 1] <= minute) {
        last++;
      }
      return last;
    }
  }

  @Override
  public String toString() {
    return "Calendar" + Arrays.toString(opens) + Arrays.toString(closes);
  }
}
