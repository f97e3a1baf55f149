package strickle.mix;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How many castings there is material for.
 *
 * @param castings whole castings
 * @param limitedBy the material of which one more would need too much
 */
public record Enough(int castings, String limitedBy) {

  /** Short of a whole casting by less than this is one. */
  private static final double ROUND_OFF = 1e-9;

  /**
   * Whole castings from what there is; empty when nothing there limits them. Water is not looked
   * at, nor is what {@code grams} does not name.
   *
   * @param grams how much there is of each material
   * @param each what one casting takes
   */
  public static Optional<Enough> of(Map<String, Double> grams, List<Portion> each) {
    Enough least = null;
    for (Portion portion : each) {
      Double there = grams.get(portion.material());
      if (there != null && portion.grams() > 0 && !portion.material().equals(Recipe.WATER)) {
        double castings = Math.floor(there / portion.grams() + ROUND_OFF);
        int whole = (int) Math.min(castings, Integer.MAX_VALUE);
        if (least == null || whole < least.castings()) {
          least = new Enough(whole, portion.material());
        }
      }
    }
    return Optional.ofNullable(least);
  }
}
