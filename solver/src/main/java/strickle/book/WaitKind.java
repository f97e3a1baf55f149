package strickle.book;

/** Kinds of unattended waits between the tasks of a route. */
public enum WaitKind {
  /** A wait for chemistry: hours at 20 °C, longer in a cool room and shorter in a warm one. */
  CURE,
  /** A wait for a coat, glue or wash to dry; hours as they are. */
  DRY,
  /** Any other wait; hours as they are. */
  REST
}
