package strickle.shop;

/** All that placing one claim leaves to the next: what a decoding can be taken up again from. */
record State(Timetable timetable, Runs runs, Waiting waiting, Slots slots) {

  /** Writes down how things stand. */
  void save(Memo memo) {
    memo.begin();
    timetable.save(memo);
    runs.save(memo, timetable.runs);
    waiting.save(memo);
    slots.save(memo);
    memo.hints();
    slots.saveHints(memo);
  }

  /** Puts everything back as it was. */
  void load(Memo memo) {
    memo.rewind();
    timetable.load(memo);
    runs.load(memo, timetable.runs);
    waiting.load(memo);
    slots.load(memo);
    slots.loadHints(memo);
  }
}
