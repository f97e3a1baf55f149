package strickle.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strickle.book.Book;
import strickle.book.Material;
import strickle.book.Mould;
import strickle.book.Piece;
import strickle.book.Use;
import strickle.mix.CastingMass;
import strickle.mix.Recipe;
import strickle.mix.Share;

/**
 * What the castings of a piece use up, task by task: quantities by the id of the material, in its
 * unit. Water is not bought and not counted.
 */
public final class MaterialUse {

  private MaterialUse() {}

  /** What the pour of so many castings uses: their wet mix, and what their moulds take. */
  public static Map<String, Double> ofPour(Book book, Piece piece, int castings) {
    Mould mould = book.mould(piece.mould());
    Recipe recipe = Recipe.of(book.mix(piece.mix()), book::material);
    double wetGrams = castings * CastingMass.wetGrams(mould, recipe);
    Map<String, Double> used = new LinkedHashMap<>();
    for (Share share : recipe.shares()) {
      if (!share.material().equals(Material.WATER)) {
        used.merge(share.material(), wetGrams * share.fraction(), Double::sum);
      }
    }
    add(used, mould.consumes(), castings);
    return used;
  }

  /**
   * What a step uses for so many pieces.
   *
   * @param step which step of the route, counted from 1
   */
  public static Map<String, Double> ofStep(Piece piece, int step, int pieces) {
    Map<String, Double> used = new LinkedHashMap<>();
    add(used, piece.route().get(step - 1).consumes(), pieces);
    return used;
  }

  /** What the packing of so many good pieces uses. */
  public static Map<String, Double> ofPacking(Piece piece, double pieces) {
    Map<String, Double> used = new LinkedHashMap<>();
    add(used, piece.packing(), pieces);
    return used;
  }

  /** What so many castings use from pour to last step; packing is not in it. */
  public static Map<String, Double> ofCastings(Book book, Piece piece, int castings) {
    Map<String, Double> used = ofPour(book, piece, castings);
    int pieces = castings * book.mould(piece.mould()).cavities();
    for (int step = 1; step <= piece.route().size(); step++) {
      ofStep(piece, step, pieces).forEach((id, quantity) -> used.merge(id, quantity, Double::sum));
    }
    return used;
  }

  private static void add(Map<String, Double> used, List<Use> uses, double times) {
    uses.forEach(
        use -> used.merge(use.material(), times * use.quantity().doubleValue(), Double::sum));
  }
}
