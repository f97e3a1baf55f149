package strickle.plan;

/** Kinds of unattended waits. */
public enum PlanWait {
  /** In the mould. */
  SET,
  /** After the mould, by chemistry; hours at 20 °C. */
  CURE,
  /** Of a coat, glue or wash; elapsed hours. Also the wait after the last task. */
  DRY,
  /** Of any other kind; elapsed hours. */
  REST
}
