package strickle.mix;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import strickle.book.Basis;
import strickle.book.Dose;
import strickle.book.Material;
import strickle.book.Mix;
import strickle.book.Mould;
import strickle.book.Part;
import strickle.book.SampleBook;
import strickle.book.Water;

/** Small mixes, materials and moulds for the tests of this package; all of them invented. */
final class Mixes {

  static final OptionalDouble NONE = OptionalDouble.empty();

  private Mixes() {}

  /** Cement of relative density 3.15, all of it cement. */
  static Material cement() {
    return material("cement", "binder", OptionalDouble.of(3.15), OptionalDouble.of(100));
  }

  /** A material that is not cement. */
  static Material filler(String id, double relativeDensity) {
    return material(id, "aggregate", OptionalDouble.of(relativeDensity), OptionalDouble.of(0));
  }

  static Material material(
      String id, String kind, OptionalDouble relativeDensity, OptionalDouble cementPercent) {
    Material like = SampleBook.whiteBlend();
    return new Material(
        id, id, kind, "g", relativeDensity, cementPercent, like.pack(), like.onHand(), 0);
  }

  /** A pigment of which its sheet allows so much, in percent of the cement. */
  static Material pigment(String id, double mostPercentOfCement) {
    Material like = filler(id, 4.5);
    return new Material(
        id,
        id,
        "pigment",
        "g",
        like.relativeDensity(),
        like.cementPercent(),
        OptionalDouble.of(mostPercentOfCement),
        like.pack(),
        like.onHand(),
        0);
  }

  /** Finds any of these, and null for an id that none of them has. */
  static Function<String, Material> among(Material... materials) {
    Map<String, Material> byId = new TreeMap<>();
    for (Material material : materials) {
      byId.put(material.id(), material);
    }
    return byId::get;
  }

  /** A mix of dry parts and water alone. */
  static Mix plain(List<Part> dry, Water water, double airPercent) {
    return mix(dry, List.of(), water, airPercent, NONE);
  }

  static Mix mix(
      List<Part> dry,
      List<Dose> pigment,
      Water water,
      double airPercent,
      OptionalDouble wetDensityKgPerM3) {
    return new Mix(
        "mix",
        "mix",
        Optional.empty(),
        dry,
        pigment,
        water,
        airPercent,
        wetDensityKgPerM3,
        10,
        30,
        5);
  }

  /** The mix of the example book, worked out. */
  static Recipe slate() {
    return Recipe.of(SampleBook.slate(), among(SampleBook.whiteBlend(), SampleBook.ironBlack()));
  }

  /** The materials of the example book's mix. */
  static Function<String, Material> bookMaterials() {
    return among(SampleBook.whiteBlend(), SampleBook.ironBlack());
  }

  /** One binder, pigment in percent of it, water in percent of a basis, no air. */
  static Recipe binderAndPigment(double pigmentPercent, Water water) {
    return Recipe.of(
        mix(
            List.of(new Part("white-blend", 100)),
            List.of(new Dose("iron-black", pigmentPercent, Basis.DRY)),
            water,
            0,
            NONE),
        among(SampleBook.whiteBlend(), SampleBook.ironBlack()));
  }

  /** The example's mould with another volume and waste. */
  static Mould mould(OptionalDouble volumeMl, double wastePercent) {
    Mould like = SampleBook.planterDeep();
    return new Mould(
        like.id(),
        like.name(),
        like.forms(),
        like.cavities(),
        volumeMl,
        like.shape(),
        like.mesh(),
        wastePercent,
        like.prepMinutes(),
        like.pourMinutes(),
        like.demouldMinutes(),
        like.setHours(),
        like.setAtMostHours(),
        like.core(),
        like.consumes());
  }

  /** Grams of one material among portions that hold it once. */
  static double grams(List<Portion> portions, String material) {
    return portions.stream()
        .filter(portion -> portion.material().equals(material))
        .mapToDouble(Portion::grams)
        .reduce((one, other) -> Double.NaN)
        .orElse(Double.NaN);
  }

  static double sum(List<Portion> portions) {
    return portions.stream().mapToDouble(Portion::grams).sum();
  }
}
