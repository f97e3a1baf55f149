package strickle.plan.learn;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.plan.Lot;
import strickle.plan.Run;
import strickle.plan.Task;
import strickle.plan.Weighed;
import strickle.plan.replan.Happening;
import strickle.plan.replan.HappeningKind;

/** Logs sorted by the numbers of the book that they say something of. */
final class Records {

  /** Minutes really taken by minutes planned, by the path of what takes them. */
  final Map<String, List<Double>> minutes = new LinkedHashMap<>();

  /** Minutes planned for the same, in all. */
  final Map<String, List<Double>> planned = new LinkedHashMap<>();

  /** Pieces that turned out and that did not, by the path of the piece. */
  final Map<String, long[]> pieces = new LinkedHashMap<>();

  /** Grams weighed out by grams planned, by the path of the mould; of lots of one run. */
  final Map<String, List<Double>> grams = new LinkedHashMap<>();

  final List<Fault> faults = new ArrayList<>();

  private final Book book;

  Records(Book book) {
    this.book = book;
  }

  /** Takes in what was recorded of one plan of the book. */
  void add(Log log) {
    Map<String, Lot> lotOfRun = new HashMap<>();
    Map<String, Lot> lots = new LinkedHashMap<>();
    for (Lot lot : log.plan().lots()) {
      lots.put(lot.id(), lot);
      lot.runs().forEach(run -> lotOfRun.put(run.id(), lot));
    }
    check(log, lots, lotOfRun);
    if (faults.isEmpty()) {
      times(log, lots, lotOfRun);
      shares(log);
      log.used().stream().map(Used::lot).distinct().forEach(id -> grams(log, lots.get(id)));
    }
  }

  private void check(Log log, Map<String, Lot> lots, Map<String, Lot> lotOfRun) {
    for (int i = 0; i < log.happened().size(); i++) {
      String at = "$.happened[" + i + "]";
      Happening one = log.happened().get(i);
      one.lot().filter(id -> !lots.containsKey(id)).ifPresent(id -> unknown(at + ".lot", id));
      one.run().filter(id -> !lotOfRun.containsKey(id)).ifPresent(id -> unknown(at + ".run", id));
      one.person()
          .filter(id -> book.people().stream().noneMatch(person -> person.id().equals(id)))
          .ifPresent(id -> faults.add(new Fault(at + ".person", '"' + id + '"', "a person")));
    }
    for (int i = 0; i < log.used().size(); i++) {
      String at = "$.used[" + i + "]";
      Used one = log.used().get(i);
      if (!lots.containsKey(one.lot())) {
        unknown(at + ".lot", one.lot());
      } else if (lots.get(one.lot()).weighOut().stream()
          .noneMatch(weighed -> weighed.material().equals(one.material()))) {
        String right = "a material that lot " + one.lot() + " is weighed out from";
        faults.add(new Fault(at + ".material", '"' + one.material() + '"', right));
      }
    }
  }

  private void unknown(String path, String id) {
    faults.add(new Fault(path, '"' + id + '"', "one that the plan has"));
  }

  private void times(Log log, Map<String, Lot> lots, Map<String, Lot> lotOfRun) {
    Map<String, Double> plannedMinutes = new HashMap<>();
    for (Task task : log.plan().tasks()) {
      plannedMinutes.put(id(task), (double) task.minutes());
    }
    for (Happening one : log.happened()) {
      if (one.isTask() && one.end().isPresent() && plannedMinutes.containsKey(one.task())) {
        double should = plannedMinutes.get(one.task());
        String path = path(one, lots, lotOfRun);
        minutes
            .computeIfAbsent(path, p -> new ArrayList<>())
            .add(Worked.minutes(book, one) / should);
        planned.computeIfAbsent(path, p -> new ArrayList<>()).add(should);
      }
    }
  }

  private static String id(Task task) {
    return switch (task.kind()) {
      case POUR -> task.lot() + "/pour";
      case DEMOULD -> task.run().orElseThrow() + "/demould";
      case STEP -> task.run().orElseThrow() + "/step-" + task.step().orElseThrow();
    };
  }

  private String path(Happening one, Map<String, Lot> lots, Map<String, Lot> lotOfRun) {
    if (one.kind() == HappeningKind.POURED) {
      return Paths.mix(book, lots.get(one.lot().orElseThrow()).mix());
    }
    String piece = run(lotOfRun, one.run().orElseThrow()).piece();
    return one.kind() == HappeningKind.STEP
        ? Paths.step(book, piece, one.step().orElseThrow())
        : Paths.mould(book, book.piece(piece).mould());
  }

  private static Run run(Map<String, Lot> lotOfRun, String id) {
    return lotOfRun.get(id).runs().stream()
        .filter(run -> run.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** Of runs that are through, or of which something is told to be lost. */
  private void shares(Log log) {
    Map<String, Integer> lost = new HashMap<>();
    Map<String, Boolean> through = new HashMap<>();
    for (Happening one : log.happened()) {
      if (one.kind() == HappeningKind.SCRAPPED) {
        lost.put(one.run().orElseThrow(), one.pieces().orElseThrow());
      } else if (one.isTask() && one.run().isPresent() && one.end().isPresent()) {
        through.putIfAbsent(one.run().get(), false);
        through.merge(one.run().get(), isLast(log, one), Boolean::logicalOr);
      }
    }
    for (Lot lot : log.plan().lots()) {
      for (Run run : lot.runs()) {
        if (through.getOrDefault(run.id(), false)) {
          count(run, lost.getOrDefault(run.id(), 0));
        }
      }
    }
  }

  private boolean isLast(Log log, Happening one) {
    return log.plan().lots().stream()
        .flatMap(lot -> lot.runs().stream())
        .filter(run -> run.id().equals(one.run().orElseThrow()))
        .anyMatch(run -> book.piece(run.piece()).route().size() == one.step().orElse(0));
  }

  private void count(Run run, int lost) {
    int all = run.castings() * book.mould(book.piece(run.piece()).mould()).cavities();
    long[] counts = pieces.computeIfAbsent(Paths.piece(book, run.piece()), p -> new long[2]);
    counts[0] += Math.max(0, all - lost);
    counts[1] += Math.min(all, lost);
  }

  private void grams(Log log, Lot lot) {
    double used = 0;
    double should = 0;
    for (Weighed weighed : lot.weighOut()) {
      for (Used one : log.used()) {
        if (one.lot().equals(lot.id()) && one.material().equals(weighed.material())) {
          used += one.quantity();
          should += weighed.grams();
        }
      }
    }
    if (lot.runs().size() == 1 && should > 0) {
      String mould = book.piece(lot.runs().get(0).piece()).mould();
      grams.computeIfAbsent(Paths.mould(book, mould), p -> new ArrayList<>()).add(used / should);
    }
  }
}
