package strickle.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import strickle.shop.Published;
import strickle.shop.Shop;

/**
 * Reads a project with least and most lags between the starts of its activities, {@code .sch}, into
 * a shop whose lateness is the makespan. The first and the last activity stand for the start and
 * the end and are left out; the end comes when those have ended that have a lag to it.
 *
 * <p>Source: C. Schwindt, Generation of resource-constrained project scheduling problems subject to
 * temporal constraints, Report WIOR-543, University of Karlsruhe (1998) (value from memory).
 */
final class LagFile {

  /** Cells of a row before those that are about successors or resources. */
  private static final int HEAD = 3;

  private final Lines lines;
  private final int last;
  private final int resources;
  private final List<int[]> lags = new ArrayList<>();
  private final int[] minutes;
  private final int[][] uses;
  private final int[] capacities;

  private LagFile(Lines lines) {
    this.lines = lines;
    int[] head = lines.numbers("how many activities and resources there are, 0 and 0");
    boolean right = head.length == HEAD + 1 && head[0] > 0 && head[2] == 0 && head[HEAD] == 0;
    lines.must(right, Arrays.toString(head), "[activities, renewable resources, 0, 0]");
    last = head[0] + 1;
    resources = head[1];
    minutes = new int[last + 1];
    uses = new int[last + 1][];
    IntStream.rangeClosed(0, last).forEach(this::lags);
    IntStream.rangeClosed(0, last).forEach(this::needs);
    capacities = lines.numbers("what there is of each resource");
    lines.must(capacities.length == resources, capacities.length, resources + " of them");
  }

  /**
   * Reads a project.
   *
   * @throws strickle.book.Faulty naming the line
   */
  static LagFile read(Lines lines) {
    return new LagFile(lines);
  }

  private void lags(int activity) {
    String[] row = Lines.cells(lines.next("a line of lags of activity " + activity), "\\s+");
    lines.must(row.length >= HEAD, row.length, "a number, modes, successors and lags");
    head(activity, lines.number(row[0]), lines.number(row[1]));
    int successors = lines.number(row[2]);
    int cells = HEAD + 2 * successors;
    lines.must(row.length == cells, row.length, cells + " cells, with a lag for each successor");
    for (int i = HEAD; i < HEAD + successors; i++) {
      int successor = lines.number(row[i]);
      boolean another = successor != activity && successor > 0 && successor <= last;
      lines.must(another, successor, "another activity, from 1 to " + last);
      lags.add(new int[] {activity, successor, lag(row[i + successors], activity)});
    }
    lines.must(activity < last || successors == 0, successors, "no successors of the last");
  }

  private int lag(String cell, int activity) {
    boolean right = cell.matches("\\[-?[0-9]{1,6}\\]");
    lines.must(right, cell, "a whole number in brackets, such as [-12]");
    int lag = Integer.parseInt(cell.substring(1, cell.length() - 1));
    lines.must(activity > 0 || lag == 0, cell, "[0], as everything begins with the first");
    return lag;
  }

  private void needs(int activity) {
    int[] row = lines.numbers("a line of minutes and uses of activity " + activity);
    lines.must(row.length == HEAD + resources, row.length - HEAD, resources + " uses");
    head(activity, row[0], row[1]);
    minutes[activity] = row[2];
    uses[activity] = Arrays.copyOfRange(row, HEAD, row.length);
    boolean nothing = Arrays.stream(row).skip(2).allMatch(number -> number == 0);
    boolean inner = activity > 0 && activity < last;
    lines.must(inner || nothing, row[2], "no minutes and no uses of the first and the last");
    for (int[] lag : lags) {
      boolean ends = lag[0] != activity || lag[1] != last || lag[2] == row[2];
      lines.must(ends, row[2], lag[2] + " minutes, as is its lag to the last activity");
    }
  }

  private void head(int activity, int number, int modes) {
    lines.must(number == activity, number, "a line for activity " + activity);
    lines.must(modes == 1, modes, "one mode for each activity");
  }

  /** The project as a shop. */
  Shop shop() {
    int[][] inner =
        lags.stream()
            .filter(lag -> lag[0] > 0 && lag[1] < last)
            .map(lag -> new int[] {lag[0] - 1, lag[1] - 1, lag[2]})
            .toArray(int[][]::new);
    int[] lasts =
        lags.stream()
            .filter(lag -> lag[0] > 0 && lag[1] == last)
            .mapToInt(lag -> lag[0] - 1)
            .toArray();
    return Published.lagged(
        Arrays.copyOfRange(minutes, 1, last),
        Arrays.copyOfRange(uses, 1, last),
        inner,
        capacities,
        lasts);
  }

  /** The longest way from the start to the end, when lags alone count; 0 if they contradict. */
  int criticalPath() {
    int[] starts = new int[last + 1];
    for (int round = 0; round <= last; round++) {
      boolean later = false;
      for (int[] lag : lags) {
        int least = starts[lag[0]] + lag[2];
        later |= starts[lag[1]] < least;
        starts[lag[1]] = Math.max(starts[lag[1]], least);
      }
      if (!later) {
        return starts[last];
      }
    }
    return 0;
  }
}
