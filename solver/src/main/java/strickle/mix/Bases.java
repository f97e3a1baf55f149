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
  static Bases of(Mix mix, Function<String, Material> materials, List<Portion> exact) {
    double parts = mix.dry().stream().mapToDouble(Part::parts).sum();
    double dry = grams(exact, mix.dry().stream().map(Part::material).toList());
    OptionalDouble cement = PigmentCheck.cement(mix, materials);
    return new Bases(
        dry,
        cement.isPresent()
            ? OptionalDouble.of(cement.getAsDouble() / parts * dry)
            : OptionalDouble.empty(),
        grams(exact, List.of(Recipe.WATER)),
        exact.stream().mapToDouble(Portion::grams).sum(),
        materials);
  }

  private static double grams(List<Portion> portions, List<String> of) {
    return portions.stream()
        .filter(portion -> of.contains(portion.material()))
        .mapToDouble(Portion::grams)
        .sum();
  }

  /** A material as it should be and as it is weighed. */
  BatchLine line(Portion exact, Portion weighed) {
    double grams = exact.grams();
    double error = weighed.grams() - grams;
    OptionalDouble density = relativeDensity(exact.material());
    return new BatchLine(
        exact.material(),
        grams,
        weighed.grams(),
        error,
        grams == 0 ? 0 : 100 * error / grams,
        density.isPresent()
            ? OptionalDouble.of(grams / density.getAsDouble())
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
