package strickle.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import strickle.shop.Published;
import strickle.shop.Shop;

/**
 * Reads a project in the single-mode format of PSPLIB, {@code .sm}, into a shop whose lateness is
 * the makespan. The first and the last job stand for the start and the end and are left out.
 *
 * <p>Source: R. Kolisch, A. Sprecher, PSPLIB - a project scheduling problem library, European
 * Journal of Operational Research 96 (1996) 205-216.
 */
final class ProjectFile {

  private static final int FEWEST_JOBS = 3;

  /** Cells of a row before those that are about successors or resources. */
  private static final int HEAD = 3;

  private final Lines lines;
  private final int jobs;
  private final int resources;

  private ProjectFile(Lines lines) {
    this.lines = lines;
    this.jobs = count("jobs (incl. supersource/sink ):", "");
    lines.must(jobs >= FEWEST_JOBS, jobs, "3 jobs or more, the first and the last of no minutes");
    this.resources = count("- renewable", "R");
    none("- nonrenewable", "N");
    none("- doubly constrained", "D");
  }

  /**
   * Reads a project.
   *
   * @throws strickle.book.Faulty naming the line
   */
  static Shop read(Lines lines) {
    return new ProjectFile(lines).shop();
  }

  private int count(String label, String unit) {
    String rest = lines.after(label).replace(':', ' ').strip();
    return lines.number(rest.endsWith(unit) ? rest.replace(unit, "").strip() : rest);
  }

  private void none(String label, String unit) {
    int count = count(label, unit);
    lines.must(count == 0, count, "0, only renewable resources");
  }

  private Shop shop() {
    int[][] links = links();
    int[] minutes = new int[jobs];
    int[][] uses = new int[jobs][];
    requests(minutes, uses);
    int[] capacities = capacities(uses);
    int inner = jobs - 2;
    return Published.project(
        Arrays.copyOfRange(minutes, 1, 1 + inner),
        Arrays.copyOfRange(uses, 1, 1 + inner),
        links,
        capacities);
  }

  /** Links among the inner jobs, counted from 0. */
  private int[][] links() {
    lines.after("PRECEDENCE RELATIONS");
    lines.next("the names of columns");
    List<int[]> links = new ArrayList<>();
    for (int job = 1; job <= jobs; job++) {
      int[] row = row(job);
      lines.must(row.length == HEAD + row[2], row.length - HEAD, row[2] + " successors");
      for (int i = HEAD; i < row.length; i++) {
        lines.must(row[i] > job && row[i] <= jobs, row[i], "a later job, up to " + jobs);
        if (job > 1 && row[i] < jobs) {
          links.add(new int[] {job - 2, row[i] - 2});
        }
      }
    }
    return links.toArray(int[][]::new);
  }

  private void requests(int[] minutes, int[][] uses) {
    lines.after("REQUESTS/DURATIONS");
    lines.next("the names of columns");
    lines.next("a line of dashes");
    for (int job = 1; job <= jobs; job++) {
      int[] row = row(job);
      lines.must(row.length == HEAD + resources, row.length - HEAD, resources + " uses");
      minutes[job - 1] = row[2];
      uses[job - 1] = Arrays.copyOfRange(row, HEAD, row.length);
      boolean end = job == 1 || job == jobs;
      boolean nothing = Arrays.stream(row).skip(2).allMatch(number -> number == 0);
      lines.must(!end || nothing, row[2], "no minutes and no uses of the first and the last job");
    }
  }

  private int[] capacities(int[][] uses) {
    lines.after("RESOURCEAVAILABILITIES");
    lines.next("the names of resources");
    int[] capacities = lines.numbers("what there is of each resource");
    lines.must(capacities.length == resources, capacities.length, resources + " availabilities");
    for (int[] used : uses) {
      for (int i = 0; i < resources; i++) {
        lines.must(used[i] <= capacities[i], capacities[i], used[i] + " or more, which a job uses");
      }
    }
    return capacities;
  }

  private int[] row(int job) {
    int[] row = lines.numbers("a line for job " + job);
    lines.must(row.length >= HEAD && row[0] == job, row[0], "a line for job " + job);
    lines.must(row[1] == 1, row[1], "one mode for each job");
    return row;
  }
}
