package strickle.price;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strickle.book.Book;
import strickle.book.Material;
import strickle.book.Mould;
import strickle.book.Pack;
import strickle.book.Piece;
import strickle.book.Step;
import strickle.book.Use;
import strickle.mix.CastingMass;
import strickle.mix.Recipe;
import strickle.mix.Share;

/**
 * What goes into one good piece, material by material, and what it costs. A material that is used
 * in several places (in the mix and on the route, say) gets one line.
 */
final class Materials {

  private final Book book;
  private final Piece piece;
  private final Mould mould;

  /** Quantities for one casting, in the material's unit. */
  private final Map<String, BigDecimal> casting = new LinkedHashMap<>();

  /** Quantities for one piece on its route, good or not. */
  private final Map<String, BigDecimal> route = new LinkedHashMap<>();

  /** Quantities for one good piece at its packing. */
  private final Map<String, BigDecimal> packing = new LinkedHashMap<>();

  /** Every material used, in the order it is first met. */
  private final Map<String, Material> used = new LinkedHashMap<>();

  private Materials(Book book, Piece piece) {
    this.book = book;
    this.piece = piece;
    this.mould = book.mould(piece.mould());
  }

  /**
   * One line for each material: (mix and mould consumables of a casting / cavities + route
   * consumables) / g + packing, each quantity at pack price / pack quantity; g = {@code
   * goodPercent}/100. Source of the division by g: cost per good piece = cost per piece started /
   * good share (the scrap rule of cost accounting); pieces are packed only when they are good.
   */
  static List<ExactLine> of(Book book, Piece piece) {
    Materials materials = new Materials(book, piece);
    materials.pour();
    for (Step step : piece.route()) {
      materials.take(step.consumes(), materials.route);
    }
    materials.take(piece.packing(), materials.packing);
    return materials.used.values().stream().map(materials::line).toList();
  }

  private void pour() {
    Recipe recipe = Recipe.of(book.mix(piece.mix()), book::material);
    double wetGrams = CastingMass.wetGrams(mould, recipe);
    for (Share share : recipe.shares()) {
      // Water is no material of the book: it costs nothing and gets no line.
      if (!share.material().equals(Recipe.WATER)) {
        // The one place where a physical mass becomes a decimal.
        BigDecimal grams = BigDecimal.valueOf(wetGrams * share.fraction());
        take(share.material(), grams, casting);
      }
    }
    take(mould.consumes(), casting);
  }

  private void take(List<Use> uses, Map<String, BigDecimal> where) {
    uses.forEach(use -> take(use.material(), use.quantity(), where));
  }

  private void take(String material, BigDecimal quantity, Map<String, BigDecimal> where) {
    used.computeIfAbsent(material, book::material);
    where.merge(material, quantity, BigDecimal::add);
  }

  /** All over one denominator, so that each line is rounded once at most. */
  private ExactLine line(Material material) {
    Pack pack = material.pack();
    BigDecimal cavities = BigDecimal.valueOf(mould.cavities());
    BigDecimal good = cavities.multiply(Exact.fraction(piece.goodPercent()));
    BigDecimal quantity =
        quantity(casting, material)
            .add(cavities.multiply(quantity(route, material)))
            .add(good.multiply(quantity(packing, material)));
    BigDecimal amount =
        Exact.divide(quantity.multiply(pack.price()), pack.quantity().multiply(good));
    return new ExactLine(material.name(), CostKind.MATERIAL, amount);
  }

  private static BigDecimal quantity(Map<String, BigDecimal> where, Material material) {
    return where.getOrDefault(material.id(), BigDecimal.ZERO);
  }
}
