package strickle.store;

import java.time.Instant;
import java.util.Locale;
import java.util.OptionalLong;

/**
 * One line of a studio's journal.
 *
 * @param number counted from 1 without gaps
 * @param at when
 * @param who who did it
 * @param what what was done, in a few words
 * @param kind whether it is a change, or takes one back, or puts one in again
 * @param of the line it undoes or redoes
 * @param state of a change, whether it holds; of an undo or redo always {@link State#DONE}
 */
public record JournalLine(
    long number, Instant at, String who, String what, Kind kind, OptionalLong of, State state) {

  /** What a line does. */
  public enum Kind {
    CHANGE,
    UNDO,
    REDO
  }

  /** Whether a change holds. */
  public enum State {
    /** It holds, and can be undone. */
    DONE,
    /** It was undone, and can be redone. */
    UNDONE,
    /** It was undone, and something else was done after that. */
    GONE
  }

  /** How a constant is written in the database. */
  static String written(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }

  /** A constant as it was written. */
  static <E extends Enum<E>> E constant(Class<E> type, String written) {
    return Enum.valueOf(type, written.toUpperCase(Locale.ROOT));
  }
}
