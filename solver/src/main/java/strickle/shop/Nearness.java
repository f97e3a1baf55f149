package strickle.shop;

import java.util.List;

/**
 * How far a schedule is from another: how many activities have another time or worker, and by how
 * many minutes in all they have moved. Jobs of a kind are told apart by the order they come in.
 */
final class Nearness {

  private final Tables tables;

  /** The places that each job had; none for a job that the other schedule does not have. */
  private final Schedule.Placed[][] had;

  /**
   * Distances from another schedule.
   *
   * @param lots its lots, settled ones of this shop first and in the same order
   */
  Nearness(Tables tables, List<Schedule.Lot> lots) {
    this.tables = tables;
    this.had = new Schedule.Placed[tables.jobs][0];
    int[] next = tables.jobFirst.clone();
    for (Schedule.Lot lot : lots) {
      for (Schedule.Run run : lot.runs()) {
        Schedule.Placed[] places = new Schedule.Placed[run.rest().size() + 1];
        places[0] = lot.first();
        for (int local = 1; local < places.length; local++) {
          places[local] = run.rest().get(local - 1);
        }
        for (int i = 0; i < run.jobs() && next[run.kind()] < end(run.kind()); i++) {
          had[next[run.kind()]++] = places;
        }
      }
    }
  }

  private int end(int kind) {
    return tables.jobFirst[kind + 1];
  }

  /** How many activities of jobs are elsewhere in the schedule generated last. */
  long moved(Decoder decoder) {
    Timetable timetable = decoder.timetable();
    long moved = 0;
    for (int job = 0; job < had.length; job++) {
      int slot = timetable.runSlot[decoder.runOf(job)];
      for (int local = 0; local < had[job].length; local++) {
        Schedule.Placed place = had[job][local];
        boolean same =
            timetable.start[slot + local] == place.start()
                && timetable.worker[slot + local] == place.worker();
        moved += same ? 0 : 1;
      }
    }
    return moved;
  }

  /** By how many minutes the activities of jobs have moved in the schedule generated last. */
  long minutes(Decoder decoder) {
    Timetable timetable = decoder.timetable();
    long minutes = 0;
    for (int job = 0; job < had.length; job++) {
      int slot = timetable.runSlot[decoder.runOf(job)];
      for (int local = 0; local < had[job].length; local++) {
        minutes += Math.abs(timetable.start[slot + local] - had[job][local].start());
      }
    }
    return minutes;
  }
}
