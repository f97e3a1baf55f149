package strickle.mix;

import strickle.book.Mould;

/** How much wet mix one filling of a mould takes. */
public final class CastingMass {

  private static final double ML_PER_LITRE = 1000;

  private CastingMass() {}

  /**
   * Grams of wet mix for one casting: volume in litres x wet density in kg/m³ (the same figure as
   * g/l) x (1 + waste/100).
   *
   * @throws strickle.book.Faulty when the mould's shape leaves no volume
   * @throws IllegalStateException when the mould's mesh has not been measured
   */
  public static double wetGrams(Mould mould, Recipe recipe) {
    double litres = Volume.ml(mould) / ML_PER_LITRE;
    return litres * recipe.wetDensityKgPerM3() * (1 + mould.wastePercent() / 100);
  }
}
