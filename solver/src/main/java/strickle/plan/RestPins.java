package strickle.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import strickle.book.Book;
import strickle.book.Fault;

/** The pins of a book that are still to come: those of lots of the present plan, and new ones. */
final class RestPins {

  private final Standing standing;
  private final Book book;
  private final List<PinnedLot> toCome = new ArrayList<>();
  private final Map<String, PinnedLot> present = new HashMap<>();
  private final List<KeptLot> fresh = new ArrayList<>();

  private RestPins(Standing standing) {
    this.standing = standing;
    this.book = standing.book();
    for (PinnedLot pin : PinnedLot.of(book)) {
      if (standing.time().minute(pin.start()) >= standing.now()) {
        toCome.add(pin);
      }
    }
    int number = RestNames.firstFree(standing.present().lots());
    for (PinnedLot pin : toCome) {
      Optional<Lot> same = same(pin);
      same.ifPresent(lot -> present.put(lot.id(), pin));
      if (same.isEmpty()) {
        fresh.add(fresh(pin, "L" + number++));
      }
    }
  }

  static RestPins of(Standing standing) {
    return new RestPins(standing);
  }

  /** Lots of the present plan whose pour a pin says. */
  Set<String> present() {
    return present.keySet();
  }

  /** Castings of a piece in pinned lots that the present plan does not have. */
  int fresh(String piece) {
    return fresh.stream()
        .flatMap(lot -> lot.lot().runs().stream())
        .filter(run -> run.piece().equals(piece))
        .mapToInt(Run::castings)
        .sum();
  }

  /** Pinned lots that the present plan does not have. */
  List<KeptLot> fresh() {
    return fresh;
  }

  /** The pins of a lot, for a fault that names the first of them. */
  Optional<PinnedLot> of(KeptLot kept) {
    int place = fresh.indexOf(kept);
    return Optional.ofNullable(present.get(kept.lot().id()))
        .or(() -> place < 0 ? Optional.empty() : Optional.of(ofFresh(place)));
  }

  /** The fault of the pin of a lot of the present plan that cannot be poured as it says. */
  Fault fault(String lot, String reason) {
    PinnedLot pin = present.get(lot);
    return new Fault(
        "$.pins[" + pin.places().get(0) + "].start",
        pin.start() + ", when " + reason,
        "another start, or no pin any more");
  }

  private PinnedLot ofFresh(int place) {
    return toCome.stream().filter(pin -> same(pin).isEmpty()).toList().get(place);
  }

  /** The pins still to come that cannot be kept, each with the reason. */
  List<Fault> faults(Owed owed) {
    Set<String> ours = new HashSet<>();
    Map<String, Integer> pinned = new HashMap<>();
    List<Fault> faults = new ArrayList<>();
    for (PinnedLot lot : toCome) {
      lot.places().forEach(place -> ours.add("$.pins[" + place + "]"));
      lot.castings().forEach((piece, castings) -> pinned.merge(piece, castings, Integer::sum));
      for (String piece : lot.castings().keySet()) {
        int needed = owed.toPour().getOrDefault(piece, 0);
        if (pinned.get(piece) > needed) {
          String found = pinned.get(piece) + " castings of \"" + piece + "\" pinned to come";
          String right = "at most " + needed + ", all that is still to be poured";
          faults.add(new Fault("$.pins[" + lot.places().get(0) + "].castings", found, right));
        }
      }
    }
    for (Fault fault : PinRules.faults(book, standing.time(), Needs.of(book))) {
      boolean isOurs = ours.stream().anyMatch(path -> fault.path().startsWith(path + "."));
      boolean ofCount = fault.found().contains(" pinned so far");
      if (isOurs && !ofCount) {
        faults.add(fault);
      }
    }
    return faults;
  }

  /** The lot of the present plan that keeps a pin. */
  private Optional<Lot> same(PinnedLot pin) {
    Tasks tasks = new Tasks(standing.present());
    return standing.present().lots().stream()
        .filter(lot -> !standing.isBegun(lot) && castings(lot).equals(pin.castings()))
        .filter(
            lot ->
                tasks
                    .get(Tasks.pour(lot.id()))
                    .filter(pour -> pour.person().equals(pin.person()))
                    .filter(pour -> standing.start(pour) == standing.time().minute(pin.start()))
                    .isPresent())
        .findFirst();
  }

  private static Map<String, Integer> castings(Lot lot) {
    Map<String, Integer> castings = new HashMap<>();
    lot.runs().forEach(run -> castings.merge(run.piece(), run.castings(), Integer::sum));
    return castings;
  }

  private KeptLot fresh(PinnedLot pin, String id) {
    List<Run> runs = new ArrayList<>();
    Map<String, List<Task>> rest = new LinkedHashMap<>();
    pin.castings()
        .forEach(
            (piece, castings) -> {
              String run = id + "-" + (runs.size() + 1);
              runs.add(new Run(run, piece, castings, List.of(), OptionalLong.empty()));
              rest.put(run, List.of());
            });
    String mix = book.piece(runs.get(0).piece()).mix();
    Lot lot = new Lot(id, mix, runs, List.of(), 0);
    int start = (int) standing.time().minute(pin.start());
    int end = start + TaskMinutes.pour(book, lot);
    Spell spell = new Spell(standing.time().at(start), standing.time().at(end));
    Task pour =
        new Task(
            Tasks.pour(id),
            TaskKind.POUR,
            id,
            Optional.empty(),
            OptionalInt.empty(),
            pin.person(),
            List.of(spell));
    return new KeptLot(lot, pour, rest, false);
  }
}
