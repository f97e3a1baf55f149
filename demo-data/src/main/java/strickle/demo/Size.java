package strickle.demo;

/** How much work the demo studio has on its books. */
public enum Size {
  /** About 8 castings: a glance. */
  SMALL(8),
  /** About 30 castings: a busy month. */
  MEDIUM(30),
  /** About 120 castings: a whole spring. */
  LARGE(120);

  private final int castings;

  Size(int castings) {
    this.castings = castings;
  }

  /** The number of castings a book of this size needs, true to within ten percent. */
  public int castings() {
    return castings;
  }
}
