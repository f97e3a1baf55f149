package strickle.cli;

import java.util.Map;
import java.util.function.Function;
import strickle.book.Material;
import strickle.book.Mix;

/**
 * A mix to make a batch of, with the materials in it.
 *
 * @param mix the mix
 * @param materials what it is made of, by id
 */
record Chosen(Mix mix, Map<String, Material> materials) {

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
