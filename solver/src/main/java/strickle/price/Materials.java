package strickle.price;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import strickle.book.Book;
import strickle.book.Mould;
import strickle.book.Piece;
import strickle.book.Step;
import strickle.book.Use;
import strickle.mix.CastingMass;
import strickle.mix.Recipe;
import strickle.mix.Share;

/** Finds what goes into a piece, material by material, in the order it is first met. */
final class Materials {

  private static final BigDecimal NONE = BigDecimal.ZERO;

  private final Book book;
  private final Map<String, MaterialNeed> needs = new LinkedHashMap<>();

  private Materials(Book book) {
    this.book = book;
  }

  /**
   * One need for each material. Source of counting the mix and the route for pieces started, and
   * the packing for good ones: cost per good piece = cost per piece started / good share (the scrap
   * rule of cost accounting); pieces are packed only when they are good.
   */
  static List<MaterialNeed> of(Book book, Piece piece) {
    Materials materials = new Materials(book);
    Mould mould = book.mould(piece.mould());
    materials.mix(Recipe.of(book.mix(piece.mix()), book::material), mould);
    for (Use use : mould.consumes()) {
      materials.add(use.material(), need -> need.plus(NONE, use.quantity(), NONE, NONE));
    }
    for (Step step : piece.route()) {
      for (Use use : step.consumes()) {
        materials.add(use.material(), need -> need.plus(NONE, NONE, use.quantity(), NONE));
      }
    }
    for (Use use : piece.packing()) {
      materials.add(use.material(), need -> need.plus(NONE, NONE, NONE, use.quantity()));
    }
    return List.copyOf(materials.needs.values());
  }

  private void mix(Recipe recipe, Mould mould) {
    double wetGrams = CastingMass.wetGrams(mould, recipe);
    for (Share share : recipe.shares()) {
      // Water is no material of the book: it costs nothing and gets no line.
      if (!share.material().equals(Recipe.WATER)) {
        // The one place where a physical mass becomes a decimal.
        BigDecimal grams = BigDecimal.valueOf(wetGrams * share.fraction());
        add(share.material(), need -> need.plus(grams, NONE, NONE, NONE));
      }
    }
  }

  private void add(String material, UnaryOperator<MaterialNeed> more) {
    MaterialNeed before =
        needs.computeIfAbsent(
            material, id -> MaterialNeed.of(book.material(id).name(), book.material(id).pack()));
    needs.put(material, more.apply(before));
  }
}
