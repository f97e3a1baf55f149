package strickle.api;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Material;
import strickle.book.Mix;
import strickle.book.Mould;
import strickle.json.AnswerFile;
import strickle.json.BatchAnswer;
import strickle.json.BatchFilling;
import strickle.json.BatchWork;
import strickle.json.contract.Answer;
import strickle.json.contract.Operation;
import strickle.json.contract.Shape;
import strickle.mix.PastBatch;
import strickle.mix.Recipe;
import strickle.mix.Volume;

/** What to weigh out, for moulds or volumes, of any mix. */
final class BatchRoutes {

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
                    + " scale's error, the pigment against the cement, castings from stock and"
                    + " from a bag, moulds that could take what is left over, and what to look at"
                    + " before weighing.")
            .taking(
                Shape.of(BatchWanted.class),
                "{\"mix\": \"slate\", \"fillings\": [{\"mould\": \"tray\", \"castings\": 2}],"
                    + " \"roundUpGrams\": 500, \"spare\": [{\"name\": \"cup\","
                    + " \"volumeMl\": 60}]}")
            .answering(
                Answer.of(
                    Status.OK, "The batch.", new Shape.Of(BatchAnswer.class, BatchAnswer.FORMAT)));
    return new Route(operation, BatchRoutes::answer);
  }

  private static Reply answer(Call call) {
    BatchWanted wanted = call.body(BatchWanted.class);
    Book book = call.studio().now().book();
    PlanRoutes.must(faults(book, wanted));
    BatchAnswer answer = Thinking.told(() -> answer(book, wanted));
    return Reply.json(Status.OK, AnswerFile.write(BatchAnswer.FORMAT, answer));
  }

  private static BatchAnswer answer(Book book, BatchWanted wanted) {
    Map<String, Material> materials = new HashMap<>();
    book.materials().forEach(material -> materials.put(material.id(), material));
    wanted.materials().forEach(material -> materials.put(material.id(), material));
    Mix mix = mix(book, wanted);
    BatchWork work =
        new BatchWork(
            Optional.of(book), mix, materials, recipe(wanted, mix, materials), wanted.stock());
    List<BatchFilling> fillings =
        wanted.fillings().stream().map(one -> filling(book, one)).toList();
    return BatchWanted.named(() -> work.answer(fillings, wanted.weighing()));
  }

  private static Mix mix(Book book, BatchWanted wanted) {
    return wanted
        .recipe()
        .or(() -> wanted.past().map(PastBatch::mix))
        .orElseGet(() -> book.mix(wanted.mix().orElseThrow()));
  }

  private static Recipe recipe(BatchWanted wanted, Mix mix, Map<String, Material> materials) {
    try {
      return Recipe.of(mix, materials::get);
    } catch (Faulty faulty) {
      String where =
          wanted.recipe().isPresent() ? ".recipe" : wanted.past().isPresent() ? ".past" : ".mix";
      throw new Faulty(faulty.faults().stream().map(fault -> fault.under(where)).toList());
    }
  }

  private static BatchFilling filling(Book book, BatchWanted.Filling one) {
    Optional<Mould> mould = one.mould().map(book::mould);
    double ml = mould.map(Volume::ml).orElseGet(() -> one.volumeMl().orElseThrow());
    double waste = one.wastePercent().orElse(mould.map(Mould::wastePercent).orElse(0.0));
    return BatchFilling.of(one.mould(), one.castings(), ml, waste);
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
    if (faults.isEmpty()) {
      Set<String> parts = parts(mix(book, wanted));
      faults.addAll(strangers("$.have", wanted.have(), parts));
      faults.addAll(strangers("$.bags", wanted.bags(), parts));
    }
    return faults;
  }

  private static Set<String> parts(Mix mix) {
    Set<String> parts = new HashSet<>();
    mix.dry().forEach(part -> parts.add(part.material()));
    mix.pigment().forEach(dose -> parts.add(dose.material()));
    return parts;
  }

  /** Of another material nothing would come of it. */
  private static List<Fault> strangers(
      String path, List<BatchWanted.Amount> amounts, Set<String> parts) {
    List<Fault> faults = new ArrayList<>();
    for (int i = 0; i < amounts.size(); i++) {
      String id = amounts.get(i).material();
      if (!parts.contains(id)) {
        String right = "a dry material or pigment of the mix";
        faults.add(new Fault(path + "[" + i + "].material", Call.shown(id), right));
      }
    }
    return faults;
  }
}
