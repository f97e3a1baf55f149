package strickle.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import strickle.book.Basis;
import strickle.book.Dose;
import strickle.book.LengthUnit;
import strickle.book.Material;
import strickle.book.Mix;
import strickle.book.Part;
import strickle.book.Water;

/** What holds of every mix and every volume, tried on many from a fixed start. */
class MixPropertiesTest {

  private static final int TRIES = 500;
  private static final List<Basis> BASES = List.of(Basis.values());

  private static void always(Consumer<Random> rule) {
    Random random = new Random(41);
    for (int i = 0; i < TRIES; i++) {
      rule.accept(random);
    }
  }

  private static double between(Random random, double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  private static Recipe anyRecipe(Random random, OptionalDouble measured) {
    List<Material> materials = new ArrayList<>();
    List<Part> dry = new ArrayList<>();
    List<Dose> pigment = new ArrayList<>();
    for (int i = 0; i <= random.nextInt(5); i++) {
      materials.add(anyMaterial(random, "dry-" + i));
      dry.add(new Part("dry-" + i, between(random, 0.1, 1000)));
    }
    for (int i = 0; i < random.nextInt(4); i++) {
      materials.add(anyMaterial(random, "pigment-" + i));
      Basis of = random.nextBoolean() ? Basis.DRY : Basis.CEMENT;
      pigment.add(new Dose("pigment-" + i, between(random, 0, 10), of));
    }
    Water water = new Water(between(random, 5, 60), BASES.get(random.nextInt(3)));
    Mix mix = Mixes.mix(dry, pigment, water, between(random, 0, 20), measured);
    return Recipe.of(mix, Mixes.among(materials.toArray(new Material[0])));
  }

  private static Material anyMaterial(Random random, String id) {
    OptionalDouble relativeDensity = OptionalDouble.of(between(random, 0.3, 6));
    return Mixes.material(
        id, "binder", relativeDensity, OptionalDouble.of(between(random, 1, 100)));
  }

  @Test
  void whatGoesInComesOut() {
    always(
        random -> {
          Recipe recipe = anyRecipe(random, Mixes.NONE);
          double grams = between(random, 1, 20_000);
          double shares = recipe.shares().stream().mapToDouble(Share::fraction).sum();
          assertEquals(1, shares, 1e-12);
          assertEquals(grams, Mixes.sum(recipe.forWet(grams)), 1e-9 * grams);
          double dry =
              recipe.forDry(grams).stream()
                  .filter(portion -> portion.material().startsWith("dry"))
                  .mapToDouble(Portion::grams)
                  .sum();
          assertEquals(grams, dry, 1e-9 * grams);
        });
  }

  @Test
  void aWeighOutAddsUpInTenthsAndStaysWithinATenthOfTheRecipe() {
    always(
        random -> {
          Recipe recipe = anyRecipe(random, Mixes.NONE);
          double wetGrams = between(random, 0.1, 20_000);
          List<Portion> exact = recipe.forWet(wetGrams);
          List<Portion> weighed = recipe.weighOut(wetGrams);
          long tenths = 0;
          for (int i = 0; i < weighed.size(); i++) {
            assertEquals(exact.get(i).material(), weighed.get(i).material());
            // A tenth for the rounding of the part, half of one for that of the whole.
            assertEquals(exact.get(i).grams(), weighed.get(i).grams(), 0.15);
            assertEquals(Math.round(weighed.get(i).grams() * 10) / 10.0, weighed.get(i).grams());
            tenths += Math.round(weighed.get(i).grams() * 10);
          }
          assertEquals(Math.round(wetGrams * 10), tenths);
        });
  }

  @Test
  void measuredDensityOverridesAnyComputed() {
    always(
        random -> {
          double measured = between(random, 1000, 2600);
          Recipe recipe = anyRecipe(random, OptionalDouble.of(measured));
          assertEquals(measured, recipe.wetDensityKgPerM3());
        });
  }

  @Test
  void aMixIsNoLighterThanItsLightestAndNoDenserThanItsDensest() {
    always(
        random -> {
          // Relative densities from 0.3 to 6 and water 1, at most 20 % air.
          double density = anyRecipe(random, Mixes.NONE).wetDensityKgPerM3();
          assertTrue(density > 300 * 0.8 && density < 6000, "density " + density);
        });
  }

  @Test
  void volumesOfMeshesAdd() {
    always(
        random -> {
          List<double[]> low = Stl.cylinder(between(random, 1, 50), between(random, 1, 80), 7);
          List<double[]> high = Stl.tetrahedron(0, 0, between(random, 200, 300));
          List<double[]> both = new ArrayList<>(low);
          both.addAll(high);
          assertEquals(ml(low) + ml(high), ml(both), 1e-9 * ml(both));
        });
  }

  private static double ml(List<double[]> mesh) {
    return StlMesh.read(Stl.text(mesh)).volumeMl(LengthUnit.MM);
  }

  @Test
  void castingsOfTwoVolumesWeighAsMuchAsOneOfBoth() {
    always(
        random -> {
          Recipe recipe = anyRecipe(random, Mixes.NONE);
          double one = between(random, 1, 5000);
          double other = between(random, 1, 5000);
          double waste = between(random, 0, 10);
          double both = wetGrams(one + other, waste, recipe);
          assertEquals(
              both, wetGrams(one, waste, recipe) + wetGrams(other, waste, recipe), 1e-9 * both);
        });
  }

  private static double wetGrams(double volumeMl, double waste, Recipe recipe) {
    return CastingMass.wetGrams(Mixes.mould(OptionalDouble.of(volumeMl), waste), recipe);
  }
}
