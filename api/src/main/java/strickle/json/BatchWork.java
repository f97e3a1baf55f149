package strickle.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.FormUse;
import strickle.book.Material;
import strickle.book.Mix;
import strickle.book.Mould;
import strickle.mix.Batch;
import strickle.mix.CastingMass;
import strickle.mix.Enough;
import strickle.mix.Leftover;
import strickle.mix.Portion;
import strickle.mix.Recipe;
import strickle.mix.Weighing;

/** Works a batch out: what to weigh for moulds of a book or for any volume, of any mix. */
public final class BatchWork {

  private static final double MOST_GRAMS = 1e9;

  private final Optional<Book> book;
  private final Mix mix;
  private final Map<String, Material> materials;
  private final Recipe recipe;
  private final BatchStock stock;

  /**
   * Begins the work.
   *
   * @param book whose moulds and stock there are, if any
   * @param materials what the mix is made of, by id
   * @param recipe of the mix
   * @param stock what there is beside the book's
   */
  public BatchWork(
      Optional<Book> book,
      Mix mix,
      Map<String, Material> materials,
      Recipe recipe,
      BatchStock stock) {
    this.book = book;
    this.mix = mix;
    this.materials = Map.copyOf(materials);
    this.recipe = recipe;
    this.stock = stock;
  }

  /**
   * The answer.
   *
   * @throws Faulty when it cannot be weighed out so: {@code .fillings} or {@code .stepGrams}
   */
  public BatchAnswer answer(List<BatchFilling> asked, Weighing weighing) {
    List<BatchFilling> fillings =
        asked.stream()
            .map(filling -> filling.at(recipe.wetDensityKgPerM3()))
            .map(this::stocked)
            .toList();
    double needed = fillings.stream().mapToDouble(BatchFilling::grams).sum();
    if (!(needed <= MOST_GRAMS)) {
      String right = "at most 1000000 kg; work it out in parts";
      throw new Faulty(List.of(new Fault(".fillings", Math.round(needed) + " g at once", right)));
    }
    Batch batch = Batch.of(mix, materials::get, needed, weighing);
    boolean left = batch.leftoverGrams() >= Math.max(1, weighing.stepGrams());
    return new BatchAnswer(
        mix.id(),
        batch,
        fillings,
        left ? Leftover.takers(batch.leftoverGrams(), free(fillings)) : List.of(),
        new BatchNotes(book, mix, materials, batch, fillings, stock.spare().keySet()).all());
  }

  private BatchFilling stocked(BatchFilling filling) {
    List<Portion> each = recipe.forWet(filling.gramsEach());
    Map<String, Double> there = new LinkedHashMap<>(stock.have());
    List<Enough> perBag = new ArrayList<>();
    for (Portion portion : each) {
      String id = portion.material();
      if (isOfBook(id)) {
        there.putIfAbsent(id, materials.get(id).onHand().doubleValue());
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
                    ? Optional.of(materials.get(id).pack().quantity().doubleValue())
                    : Optional.empty());
  }

  private boolean isOfBook(String id) {
    return materials.containsKey(id)
        && book.stream().flatMap(b -> b.materials().stream()).anyMatch(m -> m.id().equals(id));
  }

  private List<Leftover.Free> free(List<BatchFilling> fillings) {
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

  private static Map<String, Integer> used(Book book, List<BatchFilling> fillings) {
    Map<String, Integer> used = new LinkedHashMap<>();
    for (BatchFilling filling : fillings) {
      for (FormUse use : filling.mould().map(book::mould).map(Mould::forms).orElse(List.of())) {
        used.merge(use.form(), use.count() * filling.castings(), Integer::sum);
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
