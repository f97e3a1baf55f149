package strickle.cli;

import java.io.PrintStream;
import java.time.Duration;
import strickle.plan.Progress;

/** One line on a terminal that says how far the planning is and is written over and over. */
final class ProgressLine {

  private static final Duration BREATH = Duration.ofMillis(100);

  private final PrintStream terminal;
  private Duration told = BREATH.negated();
  private int width;

  /** Writes to a terminal. */
  ProgressLine(PrintStream terminal) {
    this.terminal = terminal;
  }

  /** Tells of progress, unless the last time is no time ago. */
  synchronized void tell(Progress progress) {
    if (progress.elapsed().minus(told).abs().compareTo(BREATH) >= 0) {
      told = progress.elapsed();
      write(text(progress));
    }
  }

  /** Tells something else. */
  synchronized void tell(String text) {
    write(text);
  }

  /** Leaves the line empty, for what comes next. */
  synchronized void clear() {
    if (width > 0) {
      write("");
      write("");
    }
  }

  /** The line: "laying out… 12,400 schedules, late hours 3, handwork 9 h 40 min". */
  static String text(Progress progress) {
    return "laying out… "
        + Words.grouped(progress.schedules())
        + " schedules, late hours "
        + progress.weightedLateHours().stripTrailingZeros().toPlainString()
        + ", handwork "
        + Words.work(progress.attendedMinutes());
  }

  private void write(String text) {
    int rest = Math.max(0, width - text.length());
    terminal.print("\r" + text + " ".repeat(rest));
    terminal.flush();
    width = text.length();
  }
}
