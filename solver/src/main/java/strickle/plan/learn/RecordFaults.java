package strickle.plan.learn;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Piece;
import strickle.plan.Lot;
import strickle.plan.Run;
import strickle.plan.replan.Happening;
import strickle.plan.replan.HappeningKind;

/**
 * Finds records that cannot be of their plan, or are there twice; what is wrong teaches nothing.
 */
final class RecordFaults {

  private final Book book;
  private final boolean several;
  private final Set<Object> told = new HashSet<>();
  private final List<Fault> faults = new ArrayList<>();
  private String at = "";

  /**
   * Makes ready to look.
   *
   * @param several whether there are several logs, so that a fault says of which it is
   */
  RecordFaults(Book book, boolean several) {
    this.book = book;
    this.several = several;
  }

  /** All that was found so far, paths as in a file of records. */
  List<Fault> found() {
    return List.copyOf(faults);
  }

  /**
   * Looks at a log.
   *
   * @param number which it is, counted from 1
   */
  void look(Log log, int number) {
    at = several ? "log " + number + ", $" : "$";
    if (isOfThisBook(log)) {
      Map<String, Lot> lots = new HashMap<>();
      Map<String, Run> runs = new HashMap<>();
      log.plan().lots().forEach(lot -> lots.put(lot.id(), lot));
      log.plan().lots().forEach(lot -> lot.runs().forEach(run -> runs.put(run.id(), run)));
      happened(log, lots, runs, number);
      used(log, lots);
    }
  }

  private boolean isOfThisBook(Log log) {
    Set<String> mixes = new HashSet<>();
    Set<String> pieces = new HashSet<>();
    book.mixes().forEach(mix -> mixes.add(mix.id()));
    book.pieces().forEach(piece -> pieces.add(piece.id()));
    boolean known =
        log.plan().lots().stream()
            .allMatch(
                lot ->
                    mixes.contains(lot.mix())
                        && lot.runs().stream().allMatch(run -> pieces.contains(run.piece())));
    must(
        known && log.plan().book().equals(book.studio().name()),
        "",
        "records of a plan of another book, that of \"" + log.plan().book() + "\"",
        "a plan of this book, that of \"" + book.studio().name() + "\"");
    return known && log.plan().book().equals(book.studio().name());
  }

  private void happened(Log log, Map<String, Lot> lots, Map<String, Run> runs, int number) {
    for (int i = 0; i < log.happened().size(); i++) {
      String path = ".happened[" + i + "]";
      Happening one = log.happened().get(i);
      int before = faults.size();
      one.lot().ifPresent(id -> known(lots.containsKey(id), path + ".lot", id));
      one.run().ifPresent(id -> known(runs.containsKey(id), path + ".run", id));
      one.person().ifPresent(id -> person(path + ".person", id));
      one.run().map(runs::get).ifPresent(run -> ofRun(path, one, run));
      if (faults.size() == before) {
        must(told.add(key(one, number)), path, "told a second time", "everything once");
      }
    }
  }

  /** What tells a record from every other, of this log or another. */
  private static Object key(Happening one, int number) {
    return one.isTask() ? List.of(one.task(), one.start()) : List.of(unlike(one), number);
  }

  /** How much of a run is lost is one number; absences and breakages differ in everything. */
  private static Object unlike(Happening one) {
    return one.kind() == HappeningKind.SCRAPPED ? one.run() : one;
  }

  private void ofRun(String path, Happening one, Run run) {
    Piece piece = book.piece(run.piece());
    int steps = piece.route().size();
    one.step()
        .ifPresent(
            step ->
                must(
                    step <= steps,
                    path + ".step",
                    "" + step,
                    steps == 0 ? "no step, as its route has none" : "a step from 1 to " + steps));
    int most = run.castings() * book.mould(piece.mould()).cavities();
    one.pieces()
        .ifPresent(
            lost ->
                must(
                    lost <= most,
                    path + ".pieces",
                    "" + lost,
                    "at most " + most + ", all there are"));
  }

  private void used(Log log, Map<String, Lot> lots) {
    for (int i = 0; i < log.used().size(); i++) {
      String path = ".used[" + i + "]";
      Used one = log.used().get(i);
      Lot lot = lots.get(one.lot());
      known(lot != null, path + ".lot", one.lot());
      if (lot != null) {
        must(
            lot.weighOut().stream().anyMatch(part -> part.material().equals(one.material())),
            path + ".material",
            '"' + one.material() + '"',
            "a material that lot " + one.lot() + " is weighed out from");
      }
    }
  }

  private void person(String path, String id) {
    boolean there = book.people().stream().anyMatch(person -> person.id().equals(id));
    must(there, path, '"' + id + '"', "a person of the book");
  }

  private void known(boolean there, String path, String id) {
    must(there, path, '"' + id + '"', "one that the plan has");
  }

  private void must(boolean right, String path, String found, String wanted) {
    if (!right) {
      faults.add(new Fault(at + path, found, wanted));
    }
  }
}
