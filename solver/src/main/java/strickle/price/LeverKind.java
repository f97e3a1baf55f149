package strickle.price;

/** What a studio can turn to reach a target. */
public enum LeverKind {
  /** Attended minutes of a good piece. */
  MINUTES,
  /** Castings poured together as a lot of their own. */
  RUN_SIZE,
  /** How many of a hundred pieces turn out good, in percent. */
  GOOD_SHARE,
  /** What a kilogram of wet mix costs. */
  MIX_COST,
  /** Castings the shortest-lived form lasts for; all forms of the piece by the same factor. */
  MOULD_LIFE,
  /** The channel's percent fee. */
  CHANNEL_FEE,
  /** The channel's discount off the list price: a shop's share, in percent. */
  SHOP_SHARE,
  /** The list price. */
  PRICE
}
