package strickle.shop;

/**
 * A renewable resource: it is held for a while and then free again.
 *
 * @param name what a person calls it
 * @param capacity how many units there are, 0 or more
 */
public record Resource(String name, int capacity) {

  /** Refuses a capacity below zero. */
  public Resource {
    if (capacity < 0) {
      throw new IllegalArgumentException(name + ": capacity 0 or more, not " + capacity);
    }
  }
}
