package strickle.mix;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import strickle.book.Material;
import strickle.book.Mix;
import strickle.book.Part;

/** What the percentages of a batch are of, in grams. */
record Bases(
    double dry,
    OptionalDouble cement,
    double water,
    double total,
    Function<String, Material> materials) {

  /** The bases of a batch of these portions. */
  static Bases of(Mix mix, Function<String, Material> materials, List<Portion> portions) {
    List<String> dry = mix.dry().stream().map(Part::material).toList();
    boolean known = PigmentCheck.cement(mix, materials).isPresent();
    return new Bases(
        grams(portions, dry),
        known ? OptionalDouble.of(cement(portions, dry, materials)) : OptionalDouble.empty(),
        grams(portions, List.of(Recipe.WATER)),
        portions.stream().mapToDouble(Portion::grams).sum(),
        materials);
  }

  private static double cement(
      List<Portion> portions, List<String> dry, Function<String, Material> materials) {
    return portions.stream()
        .filter(portion -> dry.contains(portion.material()))
        .mapToDouble(p -> p.grams() * materials.apply(p.material()).cementPercent().orElse(0) / 100)
        .sum();
  }

  private static double grams(List<Portion> portions, List<String> of) {
    return portions.stream()
        .filter(portion -> of.contains(portion.material()))
        .mapToDouble(Portion::grams)
        .sum();
  }

  /** A material as it should be and as it is weighed. */
  BatchLine line(Portion exact, Portion weighed) {
    double grams = weighed.grams();
    double error = grams - exact.grams();
    OptionalDouble density = relativeDensity(exact.material());
    return new BatchLine(
        exact.material(),
        exact.grams(),
        grams,
        error,
        exact.grams() == 0 ? 0 : 100 * error / exact.grams(),
        density.isPresent()
            ? OptionalDouble.of(exact.grams() / density.getAsDouble())
            : OptionalDouble.empty(),
        dry == 0 ? 0 : 100 * grams / dry,
        cement.isPresent() && cement.getAsDouble() > 0
            ? OptionalDouble.of(100 * grams / cement.getAsDouble())
            : OptionalDouble.empty(),
        water > 0 ? OptionalDouble.of(100 * grams / water) : OptionalDouble.empty(),
        total == 0 ? 0 : 100 * grams / total);
  }

  private OptionalDouble relativeDensity(String material) {
    return Recipe.WATER.equals(material)
        ? OptionalDouble.of(1)
        : materials.apply(material).relativeDensity();
  }
}
