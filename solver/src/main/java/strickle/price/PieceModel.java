package strickle.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strickle.book.Book;
import strickle.book.Form;
import strickle.book.Mould;
import strickle.book.Piece;
import strickle.mix.CastingMass;
import strickle.mix.Recipe;

/**
 * What the cost of a piece rests on beside its minutes: a formula with its numbers, any of which
 * may be another one.
 *
 * @param cavities pieces of a casting
 * @param goodShare g, the good of the pieces started, above 0 and at most 1
 * @param materials what goes into it
 * @param forms what it wears out
 * @param rates what an hour costs
 */
record PieceModel(
    BigDecimal cavities,
    BigDecimal goodShare,
    List<MaterialNeed> materials,
    List<FormNeed> forms,
    HourRates rates) {

  /** Freezes the lists. */
  PieceModel {
    materials = List.copyOf(materials);
    forms = List.copyOf(forms);
  }

  /** The numbers of a piece of the book. */
  static PieceModel of(Book book, Piece piece) {
    Mould mould = book.mould(piece.mould());
    return new PieceModel(
        BigDecimal.valueOf(mould.cavities()),
        Exact.fraction(piece.goodPercent()),
        Materials.of(book, piece),
        forms(book, mould),
        HourRates.of(book.studio()));
  }

  private static List<FormNeed> forms(Book book, Mould mould) {
    // A form that the mould lists twice is one form with both counts.
    Map<String, Long> counts = new LinkedHashMap<>();
    mould.forms().forEach(use -> counts.merge(use.form(), (long) use.count(), Long::sum));
    return counts.entrySet().stream()
        .map(count -> need(book.form(count.getKey()), count.getValue()))
        .toList();
  }

  private static FormNeed need(Form form, long count) {
    BigDecimal bought = form.costEach().multiply(BigDecimal.valueOf(count));
    return new FormNeed(form.name(), bought, BigDecimal.valueOf(form.lifeCastings()));
  }

  /** The same with another good share. */
  PieceModel withGoodShare(BigDecimal other) {
    return new PieceModel(cavities, other, materials, forms, rates);
  }

  /** The same with other materials. */
  PieceModel withMaterials(List<MaterialNeed> others) {
    return new PieceModel(cavities, goodShare, others, forms, rates);
  }

  /** The same with other forms. */
  PieceModel withForms(List<FormNeed> others) {
    return new PieceModel(cavities, goodShare, materials, others, rates);
  }

  /** The same at other rates. */
  PieceModel withRates(HourRates others) {
    return new PieceModel(cavities, goodShare, materials, forms, others);
  }

  /** Kilograms of wet mix that a good piece takes, with what is wasted and scrapped. */
  BigDecimal mixKilograms(Book book, Piece piece) {
    Recipe recipe = Recipe.of(book.mix(piece.mix()), book::material);
    double grams = CastingMass.wetGrams(book.mould(piece.mould()), recipe);
    BigDecimal good = cavities.multiply(goodShare);
    return Exact.divide(BigDecimal.valueOf(grams).movePointLeft(3), good);
  }

  /** What a good piece costs that takes so many attended minutes. */
  UnitCost cost(BigDecimal minutes) {
    List<ExactLine> lines = new ArrayList<>();
    for (MaterialNeed need : materials) {
      BigDecimal amount = need.costOfGoodPiece(cavities, goodShare);
      lines.add(new ExactLine(need.what(), CostKind.MATERIAL, amount));
    }
    lines.add(new ExactLine("labour", CostKind.LABOUR, rates.labour(minutes)));
    for (FormNeed need : forms) {
      BigDecimal amount = need.costOfGoodPiece(cavities, goodShare);
      lines.add(new ExactLine(need.what(), CostKind.WEAR, amount));
    }
    lines.add(new ExactLine("overhead", CostKind.OVERHEAD, rates.overhead(minutes)));
    return new UnitCost(minutes, lines);
  }
}
