package strickle.store;

/**
 * Thrown when more plans wait in a studio than are good for anybody; nothing has been asked for.
 */
public final class QueueFull extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /**
   * A full queue.
   *
   * @param most how many may wait
   */
  public QueueFull(int most) {
    super(
        most
            + " plans are waiting already, which is as many as may wait. Stop or remove some, or"
            + " wait until one is done.");
  }
}
