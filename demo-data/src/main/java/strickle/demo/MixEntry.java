package strickle.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import strickle.book.Basis;
import strickle.book.Dose;
import strickle.book.Mix;
import strickle.book.Part;
import strickle.book.Water;

/** Writes one mix: dry parts, pigment, water, air, then the minutes. */
final class MixEntry {

  private final String id;
  private final String name;
  private final String swatch;
  private final List<Part> dry = new ArrayList<>();
  private final List<Dose> pigment = new ArrayList<>();
  private Water water;
  private double airPercent;
  private OptionalDouble wetDensityKgPerM3 = OptionalDouble.empty();

  private MixEntry(String id, String name, String swatch) {
    this.id = id;
    this.name = name;
    this.swatch = swatch;
  }

  /** A mix with its colour as {@code #rrggbb}. */
  static MixEntry mix(String id, String name, String swatch) {
    return new MixEntry(id, name, swatch);
  }

  /** A dry material, in parts by mass. */
  MixEntry dry(String material, double parts) {
    dry.add(new Part(material, parts));
    return this;
  }

  /** A pigment, as a percentage of something. */
  MixEntry pigment(String material, double percent, Basis of) {
    pigment.add(new Dose(material, percent, of));
    return this;
  }

  /** The water, as a percentage of something. */
  MixEntry water(double percent, Basis of) {
    water = new Water(percent, of);
    return this;
  }

  /** The air left in the pour, in percent of its volume. */
  MixEntry air(double percent) {
    airPercent = percent;
    return this;
  }

  /** The wet density as weighed in the studio, in kg per cubic metre. */
  MixEntry measured(double densityKgPerM3) {
    wetDensityKgPerM3 = OptionalDouble.of(densityKgPerM3);
    return this;
  }

  /** Minutes to mix, minutes it can be worked, minutes to wash up. */
  Mix minutes(int toMix, int working, int toWash) {
    return new Mix(
        id,
        name,
        Optional.of(swatch),
        dry,
        pigment,
        water,
        airPercent,
        wetDensityKgPerM3,
        toMix,
        working,
        toWash);
  }
}
