package strickle.bench;

import java.util.Arrays;
import java.util.stream.IntStream;
import strickle.shop.Published;
import strickle.shop.Shop;

/**
 * Reads a job shop in the customary format, {@code .jss}, into a shop whose lateness is the
 * makespan: after remarks that begin with {@code #}, jobs and machines; then for each job its
 * machines, counted from 0, each with its minutes.
 *
 * <p>Source: the OR-Library, J. E. Beasley, Journal of the Operational Research Society 41 (1990)
 * 1069-1072.
 */
final class JobShopFile {

  private JobShopFile() {}

  /**
   * Reads a job shop.
   *
   * @throws strickle.book.Faulty naming the line
   */
  static Shop read(Lines lines) {
    String size = lines.next("jobs and machines");
    while (size.startsWith("#")) {
      size = lines.next("jobs and machines");
    }
    String[] cells = Lines.cells(size, "\\s+");
    lines.must(cells.length == 2, size, "jobs and machines, two numbers");
    int machines = lines.number(cells[1]);
    int[][] jobs = new int[lines.number(cells[0])][];
    lines.must(jobs.length > 0 && machines > 0, size, "1 job or more on 1 machine or more");
    for (int i = 0; i < jobs.length; i++) {
      jobs[i] = job(lines, machines);
    }
    lines.must(!lines.more(), "more", "no line after the last of " + jobs.length + " jobs");
    return Published.jobShop(jobs);
  }

  private static int[] job(Lines lines, int machines) {
    int[] job = lines.numbers("a line for each job");
    lines.must(job.length == 2 * machines, job.length, 2 * machines + " numbers");
    int[] order = IntStream.range(0, machines).map(i -> job[2 * i]).sorted().toArray();
    boolean each = Arrays.equals(order, IntStream.range(0, machines).toArray());
    lines.must(each, Arrays.toString(order), "each machine once, counted from 0");
    return job;
  }
}
