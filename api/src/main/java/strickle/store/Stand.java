package strickle.store;

import java.util.Objects;

/**
 * How far a studio has come.
 *
 * @param revision goes up by one with every change, undo and redo; 1 or more
 * @param mark one that no other change has: an older copy of a studio that is put back counts the
 *     same revisions again, for other contents
 */
public record Stand(long revision, String mark) {

  /** Refuses a missing mark. */
  public Stand {
    Objects.requireNonNull(mark, "mark");
  }
}
