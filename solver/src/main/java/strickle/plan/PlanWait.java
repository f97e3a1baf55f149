package strickle.plan;

import strickle.book.WaitKind;

/** Kinds of unattended waits. */
public enum PlanWait {
  /** In the mould. */
  SET,
  /** After the mould, by chemistry; hours at 20 °C. */
  CURE,
  /** Of a coat, glue or wash; elapsed hours. Also the wait after the last task. */
  DRY,
  /** Of any other kind; elapsed hours. */
  REST;

  /** The wait of a plan that a wait of a route becomes. */
  static PlanWait of(WaitKind kind) {
    return switch (kind) {
      case CURE -> CURE;
      case DRY -> DRY;
      case REST -> REST;
    };
  }
}
