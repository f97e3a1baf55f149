package strickle.json;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What there is for a batch, beside what the book says.
 *
 * @param have grams on hand by material
 * @param bag grams in a bag by material
 * @param spare ml of moulds that stand by, by name
 */
public record BatchStock(
    Map<String, Double> have, Map<String, Double> bag, Map<String, Double> spare) {

  /** Takes its own copies, in their order. */
  public BatchStock {
    have = new LinkedHashMap<>(have);
    bag = new LinkedHashMap<>(bag);
    spare = new LinkedHashMap<>(spare);
  }
}
