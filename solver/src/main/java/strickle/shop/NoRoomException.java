package strickle.shop;

/**
 * Thrown when there is no room for everything within a shop's horizon, or, where links go back,
 * when they contradict each other or no order was found that keeps them.
 */
public final class NoRoomException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final int settled;

  NoRoomException(int settled) {
    super(settled < 0 ? "no room within the horizon" : "settled lot " + settled + " does not fit");
    this.settled = settled;
  }

  /** Index of the settled lot that cannot be kept, or -1 when it is none of them. */
  public int settledLot() {
    return settled;
  }
}
