package strickle.mix;

import strickle.book.Basis;
import strickle.book.Dose;
import strickle.book.Mix;

/**
 * The pigment and the water of a mix in which a percentage is of the water or of the whole, so that
 * each depends on the other: two linear equations.
 *
 * @param pigment the mass of all pigment, on the scale of the dry parts
 * @param water the mass of the water, on the same scale
 */
record Masses(double pigment, double water) {

  /** Before anything is known. */
  static final Masses NONE = new Masses(0, 0);

  /**
   * Solves the equations. A mix leaves something for the dry materials, so they have an answer.
   *
   * @param dry the mass of the dry materials
   * @param cement the cement in them
   */
  static Masses of(Mix mix, double dry, double cement) {
    // pigment = fixed + ofWater x water + ofTotal x (dry + pigment + water)
    double ofTotal = part(mix, Basis.TOTAL);
    double ofWater = part(mix, Basis.WATER) + ofTotal;
    double fixed = part(mix, Basis.DRY) * dry + part(mix, Basis.CEMENT) * cement + ofTotal * dry;
    // water x rest = base + ofPigment x pigment
    double percent = mix.water().percent() / 100;
    Basis of = mix.water().of();
    double base = percent * (of == Basis.CEMENT ? cement : dry);
    double ofPigment = of == Basis.DRY_AND_PIGMENT || of == Basis.TOTAL ? percent : 0;
    double rest = of == Basis.TOTAL ? 1 - percent : 1;
    double left = (1 - ofTotal) * rest - ofWater * ofPigment;
    double pigment = (fixed * rest + ofWater * base) / left;
    double water = ((1 - ofTotal) * base + ofPigment * fixed) / left;
    return new Masses(pigment, water);
  }

  private static double part(Mix mix, Basis of) {
    return mix.pigment().stream().filter(dose -> dose.of() == of).mapToDouble(Dose::percent).sum()
        / 100;
  }
}
