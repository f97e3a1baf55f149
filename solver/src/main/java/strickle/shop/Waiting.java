package strickle.shop;

import java.util.Arrays;

/** Which jobs wait for others by their links, until when, and which are free to be placed. */
final class Waiting {

  private final Tables tables;
  private final LinkTables links;
  private final int[] waitsFor;
  private final int[] earliest;
  private final int[] freedJobs;
  private int freed;

  Waiting(Tables tables) {
    this.tables = tables;
    this.links = tables.links;
    this.waitsFor = new int[tables.kinds];
    this.earliest = new int[tables.kinds];
    this.freedJobs = new int[tables.jobs];
  }

  /** Begins a schedule in which nothing has ended. */
  void clear() {
    System.arraycopy(links.waitsFor, 0, waitsFor, 0, waitsFor.length);
    Arrays.fill(earliest, 0);
    freed = 0;
  }

  void save(Memo memo) {
    memo.put(waitsFor, waitsFor.length);
    memo.put(earliest, earliest.length);
    memo.put(freed);
    memo.put(freedJobs, freed);
  }

  void load(Memo memo) {
    memo.take(waitsFor, waitsFor.length);
    memo.take(earliest, earliest.length);
    freed = memo.take();
    memo.take(freedJobs, freed);
  }

  /** Whether a kind waits for any other that has not ended. */
  boolean waits(int kind) {
    return waitsFor[kind] > 0;
  }

  /** The minute until which those that have ended let a kind wait. */
  int earliest(int kind) {
    return earliest[kind];
  }

  /** Whether any job waits no longer that the list has asked for. */
  boolean freed() {
    return freed > 0;
  }

  /** The job freed last. */
  int next() {
    return freedJobs[--freed];
  }

  /** The only job of a kind has ended; {@code asked} says which claims the list has asked for. */
  void ended(int kind, int end, int[] asked) {
    for (int link = links.first[kind]; link < links.first[kind + 1]; link++) {
      free(links.after[link], end + links.minutes[link], asked);
    }
  }

  private void free(int kind, int from, int[] asked) {
    earliest[kind] = Math.max(earliest[kind], from);
    waitsFor[kind]--;
    int job = tables.jobFirst[kind];
    if (waitsFor[kind] == 0 && (asked[job] & 1) != 0) {
      freedJobs[freed++] = job;
    }
  }
}
