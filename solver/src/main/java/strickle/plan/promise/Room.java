package strickle.plan.promise;

/** Which lots of a plan may be moved to make room for the new order. */
enum Room {
  /** Those poured before it is ready that no order without time to spare waits for. */
  BEFORE,
  /** Those that no order without time to spare waits for. */
  LOOSE,
  /** All of them. */
  EVERYWHERE
}
