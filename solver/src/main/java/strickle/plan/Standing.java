package strickle.plan;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strickle.book.Book;

/**
 * How things stand in the middle of a plan.
 *
 * @param book the book, with the hours of those who are away taken out
 * @param present the present plan
 * @param time the minute line; it begins where the first thing happened, or with the plan
 * @param now the minute before which nothing new starts
 * @param history what has begun or is done, by task
 * @param scrapped how many pieces of a run are lost, by run; a run of which none are is not there
 * @param away everybody's absences
 * @param broken all units that are broken
 */
record Standing(
    Book book,
    Plan present,
    StudioTime time,
    int now,
    Map<String, Task> history,
    Map<String, Integer> scrapped,
    List<History.Away> away,
    List<History.Broken> broken) {

  /** What runs are good for, by the cover the plan was made with. */
  Goods goods() {
    return new Goods(book, Cover.of(present.coverPercent()));
  }

  Optional<Task> history(String task) {
    return Optional.ofNullable(history.get(task));
  }

  boolean isBegun(Lot lot) {
    return history.containsKey(Tasks.pour(lot.id()));
  }

  /** The run with what is lost of it. */
  Run withLosses(Run run) {
    int lost = scrapped.getOrDefault(run.id(), 0);
    return new Run(
        run.id(), run.piece(), run.castings(), run.forms(), run.ballastGramsEach(), lost);
  }

  int minute(OffsetDateTime at) {
    return (int) time.minute(at.toInstant());
  }

  int start(Task task) {
    return minute(task.start());
  }

  int end(Task task) {
    return minute(task.end());
  }
}
