package strickle.demo;

import java.util.OptionalDouble;
import strickle.book.Material;
import strickle.book.Pack;

/**
 * Writes one material: {@code material(…).weighs(2.65).pack("25000", "12.00").onHand("900", 2)}.
 */
final class MaterialEntry {

  private final String id;
  private final String name;
  private final String kind;
  private final String unit;
  private OptionalDouble relativeDensity = OptionalDouble.empty();
  private OptionalDouble cementPercent = OptionalDouble.empty();
  private Pack pack;

  private MaterialEntry(String id, String name, String kind, String unit) {
    this.id = id;
    this.name = name;
    this.kind = kind;
    this.unit = unit;
  }

  /** A material of a kind, counted in a unit: g, ml or each. */
  static MaterialEntry material(String id, String name, String kind, String unit) {
    return new MaterialEntry(id, name, kind, unit);
  }

  /** Its density relative to water, which every part of a mix needs. */
  MaterialEntry weighs(double relative) {
    relativeDensity = OptionalDouble.of(relative);
    return this;
  }

  /** How much of its mass is cement. */
  MaterialEntry cement(double percent) {
    cementPercent = OptionalDouble.of(percent);
    return this;
  }

  /** The pack it is bought in: quantity in its unit, and price. */
  MaterialEntry pack(String quantity, String price) {
    pack = new Pack(Entries.amount(quantity), Entries.amount(price));
    return this;
  }

  /** What is on the shelf, and the days a new pack takes to come. */
  Material onHand(String quantity, int leadDays) {
    return new Material(
        id,
        name,
        kind,
        unit,
        relativeDensity,
        cementPercent,
        pack,
        Entries.amount(quantity),
        leadDays);
  }
}
