package strickle.api;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Material;
import strickle.book.Mix;
import strickle.book.Mould;
import strickle.json.AnswerFile;
import strickle.json.contract.Answer;
import strickle.json.contract.Operation;
import strickle.json.contract.Shape;
import strickle.mix.Batch;
import strickle.mix.Enough;
import strickle.mix.PastBatch;
import strickle.mix.Portion;
import strickle.mix.Recipe;
import strickle.mix.Volume;

/** What to weigh out, for moulds or volumes, of any mix. */
final class BatchRoutes {

  private static final String BATCH = "strickle-batch/1";
  private static final double ML_PER_LITRE = 1000;
  private static final double PERCENT = 100;
  private static final double MOST_GRAMS = 1e9;

  /**
   * A batch worked out.
   *
   * @param mix the mix's id
   * @param batch what to weigh out
   * @param fillings what it is for
   */
  public record BatchWorked(String mix, Batch batch, List<Filled> fillings) {}

  /**
   * What a filling takes of a batch.
   *
   * @param mould the mould's id; nothing for a volume
   * @param castings how many castings
   * @param volumeMl what one takes, without waste
   * @param gramsEach wet mix of one casting, waste included
   * @param onHand how many castings there is material for in the book's stock
   * @param bags how many castings a pack of each material makes
   */
  public record Filled(
      Optional<String> mould,
      int castings,
      double volumeMl,
      double gramsEach,
      Optional<Enough> onHand,
      List<Enough> bags) {}

  private BatchRoutes() {}

  /** The route. */
  static Route batch() {
    Operation operation =
        Operation.of(
                "POST",
                "/api/batch",
                "workOutBatch",
                "The bench",
                "What to weigh out.",
                "For moulds of the book or volumes, in grams, of a mix of the book, of one that is"
                    + " not saved, or of a batch that was mixed once; with every percentage, the"
                    + " scale's error, the pigment against the cement, and castings from stock and"
                    + " from a pack.")
            .taking(
                Shape.of(BatchWanted.class),
                "{\"mix\": \"slate\", \"fillings\": [{\"mould\": \"tray\", \"castings\": 2}]}")
            .answering(Answer.of(Status.OK, "The batch.", new Shape.Of(BatchWorked.class, BATCH)));
    return new Route(operation, BatchRoutes::answer);
  }

  private static Reply answer(Call call) {
    BatchWanted wanted = call.body(BatchWanted.class);
    Book book = call.studio().now().book();
    PlanRoutes.must(faults(book, wanted));
    Map<String, Material> materials = new HashMap<>();
    book.materials().forEach(material -> materials.put(material.id(), material));
    wanted.materials().forEach(material -> materials.put(material.id(), material));
    Mix mix = mix(book, wanted);
    BatchWorked worked = Thinking.told(() -> worked(book, wanted, mix, materials));
    return Reply.json(Status.OK, AnswerFile.write(BATCH, worked));
  }

  private static Mix mix(Book book, BatchWanted wanted) {
    return wanted
        .recipe()
        .or(() -> wanted.past().map(PastBatch::mix))
        .orElseGet(() -> book.mix(wanted.mix().orElseThrow()));
  }

  private static BatchWorked worked(
      Book book, BatchWanted wanted, Mix mix, Map<String, Material> materials) {
    Recipe recipe = Recipe.of(mix, materials::get);
    List<Filled> fillings =
        wanted.fillings().stream().map(one -> filled(book, one, recipe, materials)).toList();
    double grams = fillings.stream().mapToDouble(one -> one.gramsEach() * one.castings()).sum();
    if (!(grams <= MOST_GRAMS)) {
      String right = "at most 1000000000 g; work it out in parts";
      throw new Faulty(List.of(new Fault(".fillings", Math.round(grams) + " g", right)));
    }
    return new BatchWorked(
        mix.id(), Batch.of(mix, materials::get, grams, wanted.weighing()), fillings);
  }

  private static Filled filled(
      Book book, BatchWanted.Filling one, Recipe recipe, Map<String, Material> materials) {
    Optional<Mould> mould = one.mould().map(book::mould);
    double ml = mould.map(Volume::ml).orElseGet(() -> one.volumeMl().orElseThrow());
    double waste = one.wastePercent().orElse(mould.map(Mould::wastePercent).orElse(0.0));
    double grams = ml / ML_PER_LITRE * recipe.wetDensityKgPerM3() * (1 + waste / PERCENT);
    List<Portion> each = recipe.forWet(grams);
    Map<String, Double> there = new HashMap<>();
    List<Enough> bags = new ArrayList<>();
    for (Portion portion : each) {
      Material material = materials.get(portion.material());
      if (material != null) {
        there.put(material.id(), material.onHand().doubleValue());
        double pack = material.pack().quantity().doubleValue();
        Enough.of(Map.of(material.id(), pack), each).ifPresent(bags::add);
      }
    }
    return new Filled(one.mould(), one.castings(), ml, grams, Enough.of(there, each), bags);
  }

  private static List<Fault> faults(Book book, BatchWanted wanted) {
    List<Fault> faults = new ArrayList<>();
    List<String> mixes = book.mixes().stream().map(Mix::id).toList();
    wanted
        .mix()
        .filter(id -> !mixes.contains(id))
        .ifPresent(
            id -> faults.add(new Fault("$.mix", Call.shown(id), "the id of a mix in the book")));
    List<String> moulds = book.moulds().stream().map(Mould::id).toList();
    for (int i = 0; i < wanted.fillings().size(); i++) {
      String path = "$.fillings[" + i + "].mould";
      wanted
          .fillings()
          .get(i)
          .mould()
          .filter(id -> !moulds.contains(id))
          .ifPresent(
              id -> faults.add(new Fault(path, Call.shown(id), "the id of a mould in the book")));
    }
    return faults;
  }
}
