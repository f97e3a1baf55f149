package strickle.plan;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.FormUse;
import strickle.book.Piece;
import strickle.book.RestsOn;

/** Forms and places that what has happened has taken, to find where there were not so many. */
final class ThingsInUse {

  private static final int WITHOUT_END = Integer.MAX_VALUE;

  /** A run, or one of its steps, that holds something from one minute to another. */
  private record Held(String task, String thing, int units, int from, int to) {}

  private final Book book;
  private final StudioTime time;
  private final Map<String, Task> history;
  private final Map<String, Integer> scrapped;
  private final Map<String, Integer> counts = new HashMap<>();
  private final List<Held> held = new ArrayList<>();

  ThingsInUse(
      Book book,
      Plan present,
      StudioTime time,
      Map<String, Task> history,
      Map<String, Integer> scrapped) {
    this.book = book;
    this.time = time;
    this.history = history;
    this.scrapped = scrapped;
    book.forms().forEach(form -> counts.put(form(form.id()), form.count()));
    book.stations().forEach(station -> counts.put(station(station.id()), station.places()));
    for (Lot lot : present.lots()) {
      lot.runs().forEach(run -> add(lot, run));
    }
  }

  private static String form(String id) {
    return "form \"" + id + "\"";
  }

  private static String station(String id) {
    return "station \"" + id + "\"";
  }

  private void add(Lot lot, Run run) {
    Task pour = history.get(Tasks.pour(lot.id()));
    if (pour == null) {
      return;
    }
    int out = end(history.get(Tasks.after(run.id(), 1)));
    for (FormUse use : book.mould(book.piece(run.piece()).mould()).forms()) {
      int units = use.count() * run.castings();
      held.add(new Held(Tasks.pour(lot.id()), form(use.form()), units, minute(pour.start()), out));
    }
    Piece piece = book.piece(run.piece());
    for (int step = 1; step <= piece.route().size(); step++) {
      Task task = history.get(Tasks.after(run.id(), step + 1));
      Optional<RestsOn> rests = piece.route().get(step - 1).restsOn();
      if (task != null && rests.isPresent()) {
        int units = Goods.pieces(book, run) * rests.get().placesEach();
        held.add(
            new Held(
                Tasks.idOf(task),
                station(rests.get().station()),
                units,
                minute(task.start()),
                leaves(run, piece, step, task)));
      }
    }
  }

  /** When a run leaves the places of a step: with the next one, when ready, or when it is lost. */
  private int leaves(Run run, Piece piece, int step, Task task) {
    Task next = history.get(Tasks.after(run.id(), step + 2));
    if (next != null) {
      return minute(next.start());
    }
    boolean lost = scrapped.getOrDefault(run.id(), 0) >= Goods.pieces(book, run);
    if (lost) {
      return minute(task.end());
    }
    return step == piece.route().size()
        ? minute(task.end()) + Chains.minutesOfAtLeast(piece.finalDryHours())
        : WITHOUT_END;
  }

  private int end(Task demould) {
    return demould == null ? WITHOUT_END : minute(demould.end());
  }

  private int minute(OffsetDateTime at) {
    return (int) time.minute(at.toInstant());
  }

  /** Whether a task took something of which there was not enough left when it began. */
  Optional<Fault> tooMany(String task) {
    for (Held one : held) {
      if (one.task().equals(task)) {
        int used =
            held.stream()
                .filter(other -> other.thing().equals(one.thing()))
                .filter(other -> other.from() <= one.from() && one.from() < other.to())
                .mapToInt(Held::units)
                .sum();
        if (used > counts.get(one.thing())) {
          return Optional.of(
              new Fault(
                  "",
                  time.local(one.from()) + ", when it makes " + used + " of " + one.thing(),
                  "at most " + counts.get(one.thing()) + " at once, or what gave some back told"));
        }
      }
    }
    return Optional.empty();
  }
}
