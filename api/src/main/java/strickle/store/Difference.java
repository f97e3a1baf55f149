package strickle.store;

import java.util.Optional;

/**
 * How one thing differs between two states of a studio.
 *
 * @param before what it was; nothing when it was not there
 * @param after what it is; nothing when it is no longer there
 */
public record Difference(Optional<Entry> before, Optional<Entry> after) {

  /** Refuses what is neither before nor after. */
  public Difference {
    if (before.isEmpty() && after.isEmpty()) {
      throw new IllegalArgumentException("a difference needs something before or after");
    }
  }

  /** The collection of the thing. */
  public String collection() {
    return either().collection();
  }

  /** The id of the thing. */
  public String id() {
    return either().id();
  }

  /** The same difference the other way round. */
  public Difference reversed() {
    return new Difference(after, before);
  }

  private Entry either() {
    return after.or(() -> before).orElseThrow();
  }
}
