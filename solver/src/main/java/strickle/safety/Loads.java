package strickle.safety;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import strickle.book.Book;
import strickle.book.Core;
import strickle.book.Material;
import strickle.book.Mix;
import strickle.book.Mould;
import strickle.book.Piece;
import strickle.mix.CastingMass;
import strickle.mix.Recipe;
import strickle.plan.Lot;
import strickle.plan.Plan;
import strickle.plan.Run;

/** What has to be carried, heaviest first. What forms themselves weigh, no book knows. */
final class Loads {

  private static final String IN_GRAMS = "g";

  private Loads() {}

  /**
   * In a studio: moulds full of mix and what comes out of them, a lot as heavy as may be mixed,
   * full packs.
   */
  static List<Load> of(Book book) {
    List<Load> loads = new ArrayList<>(filled(book, book.pieces()));
    loads.add(new Load("a lot at the batch limit", book.studio().batchLimitGrams()));
    book.materials().forEach(material -> pack(material).ifPresent(loads::add));
    return heaviestFirst(loads);
  }

  /**
   * In a plan: moulds full of mix and what comes out of them, its lots, the packs they are weighed
   * from, the ballast of a core.
   */
  static List<Load> of(Book book, Plan plan, Collection<Piece> pieces) {
    List<Load> loads = new ArrayList<>(filled(book, pieces));
    weighed(book, pieces).forEach(id -> pack(book.material(id)).ifPresent(loads::add));
    for (Lot lot : plan.lots()) {
      loads.add(new Load("lot " + lot.id(), lot.wetGrams()));
      for (Run run : lot.runs()) {
        String what = "the ballast of a " + mould(book, book.piece(run.piece())).name();
        run.ballastGramsEach().ifPresent(grams -> loads.add(new Load(what, grams)));
      }
    }
    return heaviestFirst(loads);
  }

  private static Set<String> weighed(Book book, Collection<Piece> pieces) {
    Set<String> ids = new LinkedHashSet<>();
    for (Piece piece : pieces) {
      Mix mix = book.mix(piece.mix());
      mix.dry().forEach(part -> ids.add(part.material()));
      mix.pigment().forEach(dose -> ids.add(dose.material()));
    }
    return ids;
  }

  private static Optional<Load> pack(Material material) {
    double grams = material.pack().quantity().doubleValue();
    return material.unit().equals(IN_GRAMS)
        ? Optional.of(new Load("a full pack of " + material.name(), grams))
        : Optional.empty();
  }

  private static List<Load> filled(Book book, Collection<Piece> pieces) {
    return pieces.stream().flatMap(piece -> filled(book, piece)).toList();
  }

  // A piece weighs what went into the mould, at most: what it loses while it dries is little.
  private static Stream<Load> filled(Book book, Piece piece) {
    Mould mould = mould(book, piece);
    double wet = CastingMass.wetGrams(mould, Recipe.of(book.mix(piece.mix()), book::material));
    double core = mould.core().map(Core::massGrams).orElse(0.0);
    double each = wet / (1 + mould.wastePercent() / 100) / mould.cavities();
    return Stream.of(
        new Load("a " + mould.name() + ", filled", wet + core),
        new Load("a piece of " + piece.name() + ", about", each));
  }

  private static Mould mould(Book book, Piece piece) {
    return book.mould(piece.mould());
  }

  // Two mixes fill one mould with nearly the same; the heavier stands for both.
  private static List<Load> heaviestFirst(List<Load> loads) {
    loads.sort(Comparator.comparingDouble(Load::grams).reversed().thenComparing(Load::what));
    List<Load> once = new ArrayList<>();
    for (Load load : loads) {
      if (once.stream().noneMatch(other -> other.what().equals(load.what()))) {
        once.add(load);
      }
    }
    return once;
  }
}
