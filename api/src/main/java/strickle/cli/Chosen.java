package strickle.cli;

import java.util.Map;
import java.util.function.Function;
import strickle.book.Dose;
import strickle.book.Material;
import strickle.book.Mix;
import strickle.book.Part;
import strickle.mix.Recipe;

/**
 * A mix to make a batch of, with the materials in it.
 *
 * @param mix the mix
 * @param materials what it is made of, by id
 */
record Chosen(Mix mix, Map<String, Material> materials) {

  /**
   * What the mix comes to.
   *
   * @throws strickle.book.Faulty when it cannot be worked out, with its options as paths
   */
  Recipe recipe() {
    RecipeFaults faults =
        new RecipeFaults(
            mix.dry().stream().map(Part::material).toList(),
            mix.pigment().stream().map(Dose::material).toList());
    return faults.told(() -> Recipe.of(mix, finder()));
  }

  /** Finds a material; null for an id that is not among them. */
  Function<String, Material> finder() {
    return materials::get;
  }

  /** The name of a material or of the water. */
  String name(String id) {
    Material material = materials.get(id);
    return material == null ? id : material.name();
  }
}
