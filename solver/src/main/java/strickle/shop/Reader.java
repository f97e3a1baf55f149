package strickle.shop;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Reads the schedule generated last off a decoder, as a value that stays. */
final class Reader {

  private final Tables tables;
  private final Timetable timetable;

  private Reader(Tables tables, Timetable timetable) {
    this.tables = tables;
    this.timetable = timetable;
  }

  static Schedule read(Tables tables, Decoder decoder, Value value, long schedules) {
    Reader reader = new Reader(tables, decoder.timetable());
    List<Integer> met = Arrays.stream(decoder.met()).boxed().toList();
    return new Schedule(value, reader.lots(), met, schedules);
  }

  private List<Schedule.Lot> lots() {
    List<Schedule.Lot> lots = new ArrayList<>();
    int run = 0;
    while (run < timetable.runs) {
      int first = run;
      List<Schedule.Run> runs = new ArrayList<>();
      while (run < timetable.runs && timetable.runLot[run] == timetable.runLot[first]) {
        runs.add(run(run));
        run++;
      }
      lots.add(new Schedule.Lot(placed(timetable.runSlot[first]), runs));
    }
    return lots;
  }

  private Schedule.Run run(int run) {
    int kind = timetable.runKind[run];
    List<Schedule.Placed> rest = new ArrayList<>();
    for (int local = 1; local < tables.size[kind]; local++) {
      rest.add(placed(timetable.runSlot[run] + local));
    }
    return new Schedule.Run(kind, timetable.runJobs[run], rest, timetable.runDone[run]);
  }

  private Schedule.Placed placed(int slot) {
    return new Schedule.Placed(
        timetable.worker[slot],
        timetable.worked[slot],
        timetable.minutes[slot],
        timetable.start[slot],
        timetable.end[slot]);
  }
}
