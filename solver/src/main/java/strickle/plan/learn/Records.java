package strickle.plan.learn;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strickle.book.Book;
import strickle.book.Mould;
import strickle.mix.CastingMass;
import strickle.mix.Recipe;
import strickle.mix.Share;
import strickle.plan.Lot;
import strickle.plan.Run;
import strickle.plan.TaskMinutes;
import strickle.plan.replan.Happening;
import strickle.plan.replan.HappeningKind;

/** Logs sorted by the numbers of the book that they say something of. */
final class Records {

  /** Minutes really taken by minutes of the book, by the path of what takes them. */
  final Map<String, List<Double>> minutes = new LinkedHashMap<>();

  /** Minutes of the book for the same, in all. */
  final Map<String, List<Double>> planned = new LinkedHashMap<>();

  /** Pieces that turned out and that did not, by the path of the piece. */
  final Map<String, long[]> pieces = new LinkedHashMap<>();

  /** Grams weighed out by grams of the book, by the path of the mould; of lots of one run. */
  final Map<String, List<Double>> grams = new LinkedHashMap<>();

  private final Book book;

  Records(Book book) {
    this.book = book;
  }

  /**
   * Takes in what was recorded of one plan of the book, of which {@link RecordFaults} finds none.
   */
  void add(Log log) {
    Map<String, Lot> lotOfRun = new HashMap<>();
    Map<String, Lot> lots = new LinkedHashMap<>();
    for (Lot lot : log.plan().lots()) {
      lots.put(lot.id(), lot);
      lot.runs().forEach(run -> lotOfRun.put(run.id(), lot));
    }
    times(log, lots, lotOfRun);
    shares(log);
    log.used().stream().map(Used::lot).distinct().forEach(id -> grams(log, lots.get(id)));
  }

  /**
   * Minutes by the book as it is, not as it was planned with: what has been taken over already is
   * not learned a second time, and of a plan laid out anew what is done has its real minutes.
   */
  private void times(Log log, Map<String, Lot> lots, Map<String, Lot> lotOfRun) {
    for (Happening one : log.happened()) {
      if (one.isTask() && one.end().isPresent()) {
        double should = byTheBook(one, lots, lotOfRun);
        String path = path(one, lots, lotOfRun);
        minutes
            .computeIfAbsent(path, p -> new ArrayList<>())
            .add(Worked.minutes(book, one) / should);
        planned.computeIfAbsent(path, p -> new ArrayList<>()).add(should);
      }
    }
  }

  private int byTheBook(Happening one, Map<String, Lot> lots, Map<String, Lot> lotOfRun) {
    return one.kind() == HappeningKind.POURED
        ? TaskMinutes.pour(book, lots.get(one.lot().orElseThrow()))
        : TaskMinutes.after(book, run(lotOfRun, one.run().orElseThrow()), 1 + one.step().orElse(0));
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
          count(run, Math.max(run.scrapped(), lost.getOrDefault(run.id(), 0)));
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
    Run run = lot.runs().get(0);
    Mould mould = book.mould(book.piece(run.piece()).mould());
    Recipe recipe = Recipe.of(book.mix(lot.mix()), book::material);
    double wet = run.castings() * CastingMass.wetGrams(mould, recipe);
    double used = 0;
    double should = 0;
    for (Share share : recipe.shares()) {
      for (Used one : log.used()) {
        if (one.lot().equals(lot.id()) && one.material().equals(share.material())) {
          used += one.quantity();
          should += wet * share.fraction();
        }
      }
    }
    if (lot.runs().size() == 1 && should > 0) {
      grams
          .computeIfAbsent(Paths.mould(book, mould.id()), p -> new ArrayList<>())
          .add(used / should);
    }
  }
}
