package strickle.api;

import java.util.List;
import strickle.book.Fault;
import strickle.safety.Advice;

/**
 * What would come of a thing if it were saved; nothing of it is saved.
 *
 * @param good whether it could be saved
 * @param faults what keeps it from being saved; paths that begin in the thing itself where it lies
 *     there ({@code $.minutesEach}), else in the book ({@code $.pieces[0].mould})
 * @param hindrances what could be saved but never made or planned, by the book with the thing in it
 * @param advice what makes no sense in its route, or in others because of it; it refuses nothing
 * @param notJudged steps of its route whose words are not known
 * @param readAsOtherWork steps of its route that name a coat, a leaf or a glue but were not read as
 *     putting it on
 */
public record ItemCheck(
    boolean good,
    List<Fault> faults,
    List<Fault> hindrances,
    List<Advice> advice,
    List<String> notJudged,
    List<String> readAsOtherWork) {

  /** Of one that could not be saved. */
  static ItemCheck faulty(List<Fault> faults) {
    return new ItemCheck(false, faults, List.of(), List.of(), List.of(), List.of());
  }
}
