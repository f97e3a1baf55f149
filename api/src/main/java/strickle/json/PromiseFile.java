package strickle.json;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strickle.json.contract.Shape;
import strickle.plan.Lot;
import strickle.plan.Ready;
import strickle.plan.Run;
import strickle.plan.Task;
import strickle.plan.promise.Latest;
import strickle.plan.promise.Offer;
import strickle.plan.promise.Promise;
import strickle.plan.promise.Slip;
import strickle.plan.promise.Stock;

/** Writes promises ({@code strickle-promise/1}), without the plans that keep them. */
public final class PromiseFile {

  private static final FileFormat FORMAT = new FileFormat("strickle-promise/1", "a promise");

  /** What it looks like. */
  public static final Shape SHAPE = new Shape.Of(Written.class, FORMAT.name());

  /** A promise as it is written. */
  private record Written(
      String order,
      String piece,
      int quantity,
      OffsetDateTime from,
      Optional<WrittenOffer> kept,
      Optional<WrittenOffer> still,
      Optional<WrittenOffer> pressed,
      Optional<WrittenLatest> latest) {}

  private record WrittenOffer(
      OffsetDateTime ready, List<Place> runs, Optional<Stock> stock, List<Slip> slips) {}

  private record WrittenLatest(
      OffsetDateTime at,
      Latest.Way way,
      Optional<WrittenOffer> offer,
      Optional<OffsetDateTime> alone) {}

  /** Where the new order's pieces come from: a run, what is poured with it, and its tasks. */
  private record Place(
      String lot, List<String> pouredWith, Run run, List<Task> tasks, OffsetDateTime ready) {}

  private PromiseFile() {}

  /** Writes a promise, with a newline at the end. */
  public static String write(Promise promise) {
    Written written =
        new Written(
            promise.order(),
            promise.piece(),
            promise.quantity(),
            promise.from(),
            promise.kept().map(PromiseFile::offer),
            promise.still().map(PromiseFile::offer),
            promise.pressed().map(PromiseFile::offer),
            promise.latest().map(PromiseFile::latest));
    return FORMAT.text(RecordWriter.object(written));
  }

  private static WrittenLatest latest(Latest latest) {
    return new WrittenLatest(
        latest.at(), latest.way(), latest.offer().map(PromiseFile::offer), latest.alone());
  }

  private static WrittenOffer offer(Offer offer) {
    List<Place> places = offer.runs().stream().map(run -> place(offer, run)).toList();
    return new WrittenOffer(offer.ready(), places, offer.stock(), offer.slips());
  }

  private static Place place(Offer offer, String id) {
    Lot lot =
        offer.plan().lots().stream()
            .filter(one -> one.runs().stream().anyMatch(run -> run.id().equals(id)))
            .findFirst()
            .orElseThrow();
    List<String> others = new ArrayList<>(lot.runs().stream().map(Run::id).toList());
    others.remove(id);
    Run own = lot.runs().stream().filter(run -> run.id().equals(id)).findFirst().orElseThrow();
    List<Task> tasks =
        offer.plan().tasks().stream()
            .filter(task -> task.lot().equals(lot.id()) && task.run().orElse(id).equals(id))
            .toList();
    Ready ready =
        offer.plan().ready().stream().filter(one -> one.run().equals(id)).findFirst().orElseThrow();
    return new Place(lot.id(), others, own, tasks, ready.at());
  }
}
