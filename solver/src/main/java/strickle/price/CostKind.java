package strickle.price;

/** The four kinds of cost a good piece carries. */
public enum CostKind {
  /** Dry materials, pigment, consumables and packing. */
  MATERIAL,
  /** Attended minutes at the studio's wage. */
  LABOUR,
  /** What a casting uses up of its forms. */
  WEAR,
  /** The studio's monthly overhead, carried by productive hours. */
  OVERHEAD
}
