package strickle.mix;

/**
 * Leaf of metal laid in sheets that overlap.
 *
 * @param lengthMm of a sheet, above 0
 * @param widthMm of a sheet, above 0
 * @param overlapMm by which each sheet lies on the next, 0 to below both
 */
public record Leaf(double lengthMm, double widthMm, double overlapMm) {

  private static final double MM2_PER_M2 = 1e6;
  private static final double PERCENT = 100;

  /** So that ten sheets' worth is ten sheets, whatever the last digit of a product says. */
  private static final double TOLERANCE = 1e-9;

  /** Refuses what no sheet is. */
  public Leaf {
    boolean sheet =
        overlapMm >= 0
            && lengthMm > overlapMm
            && widthMm > overlapMm
            && Double.isFinite(lengthMm * widthMm);
    if (!sheet) {
      throw new IllegalArgumentException(
          "A sheet of "
              + lengthMm
              + " by "
              + widthMm
              + " mm cannot overlap by "
              + overlapMm
              + " mm; the overlap is from 0 to below both.");
    }
  }

  /** What one sheet measures, in m². */
  public double sheetM2() {
    return lengthMm * widthMm / MM2_PER_M2;
  }

  /** What one sheet covers beside its overlap, in m². */
  public double coversM2() {
    return (lengthMm - overlapMm) * (widthMm - overlapMm) / MM2_PER_M2;
  }

  /** What the overlap eats of a sheet, in percent. */
  public double overlapPercent() {
    return PERCENT * (1 - coversM2() / sheetM2());
  }

  /**
   * Whole sheets for an area: ceil(A(1 + w)/((L − o)(B − o))), common practice, no source.
   *
   * @param m2 0 or more
   * @param wastePercent what tears, on top, 0 or more
   */
  public long sheets(double m2, double wastePercent) {
    if (!(m2 >= 0 && wastePercent >= 0) || Double.isInfinite(m2 + wastePercent)) {
      throw new IllegalArgumentException("Neither an area nor a waste is below 0.");
    }
    return (long) Math.ceil(m2 * (1 + wastePercent / PERCENT) / coversM2() - TOLERANCE);
  }
}
