package strickle.plan.why;

import java.util.List;

/**
 * What a run takes of a thing, and from when to when.
 *
 * @param thing the form or station
 * @param units units or places, 1 or more
 * @param opens from the start of this stage on, counted from the pour as 0
 * @param closes until this stage; the number of stages when until the run is ready
 * @param atEnd whether until that stage's end rather than its start
 */
record Need(Thing thing, int units, int opens, int closes, boolean atEnd) {

  int from(List<Placed> tasks) {
    return tasks.get(opens).start();
  }

  int to(List<Placed> tasks, int ready) {
    if (closes >= tasks.size()) {
      return ready;
    }
    return atEnd ? tasks.get(closes).end() : tasks.get(closes).start();
  }
}
