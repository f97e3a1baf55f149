package strickle.book;

/** Unit of length of a mesh: an STL file holds bare numbers, so the maker has to say. */
public enum LengthUnit {
  /** Millimetre. */
  MM(1.0),
  /** Inch, 25.4 mm exactly (16 CFR 500.19). */
  INCH(25.4);

  private final double mm;

  LengthUnit(double mm) {
    this.mm = mm;
  }

  /** How many millimetres one of this unit is, exact. */
  public double mm() {
    return mm;
  }
}
