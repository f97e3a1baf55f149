package strickle.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import strickle.book.Book;
import strickle.book.Form;
import strickle.book.FormUse;
import strickle.book.Mix;
import strickle.book.Mould;
import strickle.book.Piece;
import strickle.mix.CastingMass;
import strickle.mix.Recipe;
import strickle.price.LeverTable.Cell;
import strickle.price.LeverTable.Row;

/** A deal with other run sizes, each poured as a lot of its own. */
final class RunSizes {

  /** What the book allows of castings in a run at all. */
  private static final int MOST = 1000;

  private static final List<Integer> LESS = List.of(0, 10, 20, 30, 40, 50);
  private static final List<Integer> USUAL = List.of(1, 2, 3, 4, 6, 8, 12, 16);
  private static final int ROWS = 6;

  private final Book book;
  private final Piece piece;
  private final Mould mould;
  private final Deal deal;
  private final Predicate<Deal> holds;

  RunSizes(Book book, Piece piece, Deal deal, Predicate<Deal> holds) {
    this.book = book;
    this.piece = piece;
    this.mould = book.mould(piece.mould());
    this.deal = deal;
    this.holds = holds;
  }

  /** The smallest run with which the margin holds, up to the largest that one lot takes. */
  Lever lever() {
    int most = most();
    Optional<Integer> smallest =
        IntStream.rangeClosed(1, most).filter(n -> holds.test(of(n))).boxed().findFirst();
    BigDecimal present =
        Exact.divide(
            BigDecimal.valueOf(deal.minutes().castings()),
            BigDecimal.valueOf(deal.minutes().runs()));
    return new Lever(
        LeverKind.RUN_SIZE,
        "castings",
        Exact.atTheDoor(present),
        smallest.map(BigDecimal::valueOf),
        Optional.of(BigDecimal.valueOf(most)),
        Optional.of(Exact.atTheDoor(of(most).marginPercent())),
        smallest.flatMap(this::shortOfForms));
  }

  /** The margin for some run sizes and ever fewer minutes. */
  LeverTable table() {
    int most = most();
    TreeSet<Integer> sizes = new TreeSet<>(USUAL.stream().filter(n -> n <= most).toList());
    while (sizes.size() >= ROWS) {
      sizes.remove(sizes.last());
    }
    sizes.add(Math.min(most, piece.typicalRun()));
    return new LeverTable(LESS, sizes.stream().map(this::row).toList());
  }

  private Row row(int castings) {
    Deal one = of(castings);
    List<Cell> cells = new ArrayList<>();
    for (int less : LESS) {
      BigDecimal left = Exact.remainder(BigDecimal.valueOf(less));
      Deal shorter =
          one.with(
              one.minutes()
                  .withItems(
                      one.minutes().items().stream().map(item -> item.times(left)).toList()));
      cells.add(
          new Cell(
              Exact.atTheDoor(shorter.cost().minutes()),
              Exact.atTheDoor(shorter.marginPercent()),
              holds.test(shorter)));
    }
    return new Row(castings, cells);
  }

  private Deal of(int castings) {
    return deal.with(new StandardMinutes(book).split(piece, castings));
  }

  /**
   * Castings that a lot takes by the batch limit and the working time of the mix, and no fewer than
   * the typical run.
   */
  private int most() {
    Mix mix = book.mix(piece.mix());
    double each = CastingMass.wetGrams(mould, Recipe.of(mix, book::material));
    double byMass = Math.floor(book.studio().batchLimitGrams() / each);
    int byTime = mix.workingMinutes() / Math.max(1, mould.pourMinutes());
    int most = (int) Math.min(MOST, Math.min(byMass, byTime));
    return Math.max(most, piece.typicalRun());
  }

  private Optional<String> shortOfForms(int castings) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (FormUse use : mould.forms()) {
      counts.merge(use.form(), use.count(), Integer::sum);
    }
    List<String> missing = new ArrayList<>();
    counts.forEach(
        (id, count) -> {
          Form form = book.form(id);
          long needed = (long) count * castings;
          if (needed > form.count()) {
            missing.add(needed + " of " + form.name() + ", there " + are(form.count()));
          }
        });
    return missing.isEmpty()
        ? Optional.empty()
        : Optional.of("takes " + String.join("; ", missing));
  }

  private static String are(int count) {
    return (count == 1 ? "is " : "are ") + count;
  }
}
