package strickle.price;

/** What attended minutes are spent on, and so what they grow with. */
public enum MinuteKind {
  /** Preparing, pouring and taking out of the mould: with each casting. */
  CASTING,
  /** Mixing and washing up: with each lot, whatever is poured from it. */
  LOT,
  /** Setting up for a step: with each run. */
  SETUP,
  /** Working on a step: with each piece. */
  PIECE,
  /** What tasks that are done really took beyond the minutes of the book; below 0 if less. */
  BEYOND
}
