package strickle.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Dose;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.FormUse;
import strickle.book.Mix;
import strickle.book.Mould;
import strickle.book.Part;
import strickle.mix.Batch;
import strickle.mix.CastingMass;
import strickle.mix.Enough;
import strickle.mix.Leftover;
import strickle.mix.Portion;
import strickle.mix.Recipe;
import strickle.mix.Weighing;

/** Works a batch out from what was asked for. */
final class BatchWork {

  private static final long MOST_GRAMS = 1_000_000_000;

  private final Optional<Book> book;
  private final Chosen chosen;
  private final Recipe recipe;
  private final StockOptions.Stock stock;

  /**
   * Begins the work.
   *
   * @throws strickle.book.Faulty when the mix cannot be worked out, paths relative to it
   */
  BatchWork(Optional<Book> book, Chosen chosen, StockOptions.Stock stock) {
    this.book = book;
    this.chosen = chosen;
    Mix mix = chosen.mix();
    RecipeFaults faults =
        new RecipeFaults(
            mix.dry().stream().map(Part::material).toList(),
            mix.pigment().stream().map(Dose::material).toList());
    this.recipe = faults.told(() -> Recipe.of(mix, chosen.finder()));
    this.stock = stock;
  }

  /** The answer. */
  BatchAnswer answer(List<Filling> asked, Weighing weighing) {
    List<Filling> fillings =
        asked.stream()
            .map(filling -> filling.at(recipe.wetDensityKgPerM3()))
            .map(this::stocked)
            .toList();
    double needed = fillings.stream().mapToDouble(Filling::grams).sum();
    if (!(needed <= MOST_GRAMS)) {
      String right = "at most " + Words.grouped(MOST_GRAMS) + " g; work it out in parts";
      boolean volume = asked.stream().anyMatch(one -> one.mould().equals(FillingOptions.VOLUME));
      String path = volume ? ".volumeMl" : ".mould";
      throw new Faulty(List.of(new Fault(path, Math.round(needed) + " g at once", right)));
    }
    Batch batch = Batch.of(chosen.mix(), chosen.finder(), needed, weighing);
    boolean left = batch.leftoverGrams() >= Math.max(1, weighing.stepGrams());
    return new BatchAnswer(
        chosen.mix().id(),
        batch,
        fillings,
        left ? Leftover.takers(batch.leftoverGrams(), free(fillings)) : List.of(),
        new BatchNotes(book, chosen, batch, fillings, stock.spare().keySet()).all());
  }

  private Filling stocked(Filling filling) {
    List<Portion> each = recipe.forWet(filling.gramsEach());
    Map<String, Double> there = new LinkedHashMap<>(stock.have());
    List<Enough> perBag = new ArrayList<>();
    for (Portion portion : each) {
      String id = portion.material();
      if (isOfBook(id)) {
        there.putIfAbsent(id, chosen.materials().get(id).onHand().doubleValue());
      }
      bag(id).flatMap(grams -> Enough.of(Map.of(id, grams), each)).ifPresent(perBag::add);
    }
    return filling.from(Enough.of(there, each), perBag);
  }

  private Optional<Double> bag(String id) {
    return Optional.ofNullable(stock.bag().get(id))
        .or(
            () ->
                isOfBook(id)
                    ? Optional.of(chosen.materials().get(id).pack().quantity().doubleValue())
                    : Optional.empty());
  }

  private boolean isOfBook(String id) {
    return chosen.materials().containsKey(id)
        && book.stream().flatMap(b -> b.materials().stream()).anyMatch(m -> m.id().equals(id));
  }

  private List<Leftover.Free> free(List<Filling> fillings) {
    List<Leftover.Free> free = new ArrayList<>();
    stock
        .spare()
        .forEach(
            (name, ml) -> {
              double grams = ml / 1000 * recipe.wetDensityKgPerM3();
              free.add(new Leftover.Free(name, grams, Integer.MAX_VALUE));
            });
    book.ifPresent(
        b -> {
          Map<String, Integer> used = used(b, fillings);
          for (Mould mould : b.moulds()) {
            double grams = CastingMass.wetGrams(mould, recipe);
            free.add(new Leftover.Free(mould.id(), grams, most(b, mould, used)));
          }
        });
    return free;
  }

  private static Map<String, Integer> used(Book book, List<Filling> fillings) {
    Map<String, Integer> used = new LinkedHashMap<>();
    for (Filling filling : fillings) {
      if (!filling.mould().equals(FillingOptions.VOLUME)) {
        for (FormUse use : book.mould(filling.mould()).forms()) {
          used.merge(use.form(), use.count() * filling.castings(), Integer::sum);
        }
      }
    }
    return used;
  }

  private static int most(Book book, Mould mould, Map<String, Integer> used) {
    Map<String, Integer> needs = new LinkedHashMap<>();
    mould.forms().forEach(use -> needs.merge(use.form(), use.count(), Integer::sum));
    return needs.entrySet().stream()
        .mapToInt(
            need -> {
              int there = book.form(need.getKey()).count() - used.getOrDefault(need.getKey(), 0);
              return Math.max(0, there) / need.getValue();
            })
        .min()
        .orElse(0);
  }
}
