package strickle.book;

/** What a percentage of pigment or water is of, by mass. */
public enum Basis {
  /** All dry materials of the mix, without pigment. */
  DRY,
  /** The cement in the dry materials. */
  CEMENT,
  /** All dry materials and all pigment; for water only. */
  DRY_AND_PIGMENT,
  /** The water; for pigment only. */
  WATER,
  /** The whole wet mass. */
  TOTAL
}
