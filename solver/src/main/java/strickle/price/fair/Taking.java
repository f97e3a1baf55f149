package strickle.price.fair;

import java.util.LinkedHashMap;
import java.util.Map;
import strickle.book.Book;
import strickle.book.FormUse;
import strickle.book.Mould;
import strickle.book.Piece;
import strickle.book.Step;
import strickle.mix.CastingMass;
import strickle.mix.Recipe;
import strickle.plan.MaterialUse;

/**
 * What castings of a piece take of a studio.
 *
 * @param book its book
 */
record Taking(Book book) {

  /** Good pieces one casting gives on average. */
  double goodEach(Piece piece) {
    return book.mould(piece.mould()).cavities() * piece.goodPercent() / 100;
  }

  /**
   * Minutes of castings by themselves, set-ups in as few runs as can be; those of their lots come
   * beside them.
   *
   * @param run the most castings in a run
   */
  double minutes(Piece piece, int castings, int run) {
    Mould mould = book.mould(piece.mould());
    double each = (double) mould.prepMinutes() + mould.pourMinutes() + mould.demouldMinutes();
    double minutes = castings * each;
    for (Step step : piece.route()) {
      double pieces = (double) castings * mould.cavities();
      minutes += Math.ceilDiv(castings, run) * (double) step.setupMinutes();
      minutes += pieces * step.minutesEach();
    }
    return minutes;
  }

  /** Units of a form that one casting holds. */
  int units(Piece piece, String form) {
    return book.mould(piece.mould()).forms().stream()
        .filter(use -> use.form().equals(form))
        .mapToInt(FormUse::count)
        .sum();
  }

  /** Grams of wet mix of one casting. */
  double grams(Piece piece) {
    Recipe recipe = Recipe.of(book.mix(piece.mix()), book::material);
    return CastingMass.wetGrams(book.mould(piece.mould()), recipe);
  }

  /** What castings and the packing of so many good pieces use of each material. */
  Map<String, Double> materials(Piece piece, int castings, long packed) {
    Map<String, Double> used = new LinkedHashMap<>();
    if (castings > 0) {
      used.putAll(MaterialUse.ofCastings(book, piece, castings));
    }
    MaterialUse.ofPacking(piece, (double) packed)
        .forEach((id, more) -> used.merge(id, more, Double::sum));
    return used;
  }
}
