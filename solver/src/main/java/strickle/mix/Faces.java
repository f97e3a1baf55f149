package strickle.mix;

/**
 * The faces of a solid, in mm²: the flat one it stands on, the flat one at its top, and all that
 * lies between. A solid without such a face has 0 there.
 *
 * @param bottomMm2 the flat face below, 0 or more; of a cap or half a sphere the flat one
 * @param topMm2 the flat face above, 0 or more
 * @param sideMm2 everything else, above 0
 */
public record Faces(double bottomMm2, double topMm2, double sideMm2) {

  /** All of it, in mm². */
  public double allMm2() {
    return bottomMm2 + topMm2 + sideMm2;
  }

  /** Where a hollow of this shape opens: its top, or its flat face when it has only that. */
  public double openingMm2() {
    return topMm2 > 0 ? topMm2 : bottomMm2;
  }
}
