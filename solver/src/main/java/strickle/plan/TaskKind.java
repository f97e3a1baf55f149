package strickle.plan;

/** Kinds of attended tasks. */
public enum TaskKind {
  /** A lot is prepared, weighed, mixed, poured and washed up. */
  POUR,
  /** A run leaves its moulds, which are cleaned and oiled away. */
  DEMOULD,
  /** A step of the route. */
  STEP
}
