package strickle.plan.replan;

/** Kinds of things that happen in a studio and matter to its plan. */
public enum HappeningKind {
  /** A lot was poured, or somebody is at it. */
  POURED,
  /** A run was taken out of its moulds, or somebody is at it. */
  DEMOULDED,
  /** A step of a run's route was done, or somebody is at it. */
  STEP,
  /** Pieces of a run are lost. */
  SCRAPPED,
  /** Somebody is away. */
  AWAY,
  /** Units of a form are broken. */
  BROKEN,
  /** Somebody is back, or will be, before an absence was to be over. */
  BACK,
  /** Broken units of a form are mended or replaced, or will be. */
  MENDED
}
