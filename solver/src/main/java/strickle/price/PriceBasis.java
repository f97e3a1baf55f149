package strickle.price;

/** Where the attended minutes of a piece come from. */
public enum PriceBasis {
  /** The piece's typical run, poured as a lot of its own. */
  STANDARD,
  /** The lots of a plan, shared minutes split by wet mass. */
  PLANNED
}
