package strickle.mix;

import java.util.ArrayList;
import java.util.List;
import strickle.book.Fault;
import strickle.book.Faulty;

/**
 * What lifts a core out of the wet mix (Archimedes), and what holds it down.
 *
 * @param wetDensityKgPerM3 density of the wet mix in kg/m³, above 0
 * @param submergedMl volume of the core below the surface in millilitres, above 0
 * @param sealedColumnMl what would stand over a base that is sealed on the mould's floor, from the
 *     floor to the surface, in millilitres; 0 for a core with mix under it. No mix gets under such
 *     a base, so that column does not lift; a core narrower at the top is even pressed down
 * @param massGrams mass of the core in grams, 0 or more
 */
public record Uplift(
    double wetDensityKgPerM3, double submergedMl, double sealedColumnMl, double massGrams) {

  private static final double MOST = 1e7;
  private static final double MM3_PER_ML = 1000;
  private static final double ML_PER_LITRE = 1000;
  private static final double GRAMS_PER_KG = 1000;

  /**
   * Checks the measures.
   *
   * @throws Faulty with every fault, paths relative to the core
   */
  public Uplift {
    List<Fault> faults = new ArrayList<>();
    above(faults, ".wetDensityKgPerM3", wetDensityKgPerM3);
    above(faults, ".submergedMl", submergedMl);
    notBelow(faults, ".sealedColumnMl", sealedColumnMl);
    notBelow(faults, ".massGrams", massGrams);
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
  }

  /** A core hung in the mix, with mix under all of it: F = (ρ V − m) g. */
  public static Uplift hung(double wetDensityKgPerM3, double submergedMl, double massGrams) {
    return new Uplift(wetDensityKgPerM3, submergedMl, 0, massGrams);
  }

  /**
   * A core of which a base is sealed on the mould's floor: F = ρ g (V − A h) − m g.
   *
   * @param baseMm2 area of the sealed base in mm², 0 or more
   * @param depthMm depth of the mix over that base in millimetres, 0 or more
   */
  public static Uplift sealed(
      double wetDensityKgPerM3,
      double submergedMl,
      double massGrams,
      double baseMm2,
      double depthMm) {
    double columnMl = baseMm2 * depthMm / MM3_PER_ML;
    return new Uplift(wetDensityKgPerM3, submergedMl, columnMl, massGrams);
  }

  /** Grams of wet mix that the core pushes aside. */
  public double displacedGrams() {
    return wetDensityKgPerM3 / ML_PER_LITRE * submergedMl;
  }

  /** The push of the mix upward in newtons, without the core's weight; below 0 it presses down. */
  public double grossNewtons() {
    return newtons(wetDensityKgPerM3 / ML_PER_LITRE * (submergedMl - sealedColumnMl));
  }

  /** What lifts the core when its weight is taken off, in newtons; at 0 or below it stays down. */
  public double netNewtons() {
    return newtons(netGrams());
  }

  /**
   * Grams to lay on the core: what lifts it, times the safety factor; 0 when it stays down.
   *
   * @param safetyFactor 1 or more
   */
  public double ballastGrams(double safetyFactor) {
    return Math.max(0, netGrams() * safetyFactor);
  }

  private double netGrams() {
    return wetDensityKgPerM3 / ML_PER_LITRE * (submergedMl - sealedColumnMl) - massGrams;
  }

  private static double newtons(double grams) {
    return grams / GRAMS_PER_KG * FormPressure.GRAVITY;
  }

  private static void above(List<Fault> faults, String path, double value) {
    if (!(value > 0 && value <= MOST)) {
      faults.add(new Fault(path, Double.toString(value), "a number above 0, at most 10000000"));
    }
  }

  private static void notBelow(List<Fault> faults, String path, double value) {
    if (!(value >= 0 && value <= MOST)) {
      faults.add(new Fault(path, Double.toString(value), "a number from 0 to 10000000"));
    }
  }
}
