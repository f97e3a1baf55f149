package strickle.shop;

import java.util.Arrays;

/**
 * The claims of a shop: what the list to be searched is made of. Each job has one claim for each
 * part of its chain that may be placed by itself; besides there are breaks, which stand for nothing
 * but keep their neighbours from sharing a lot.
 */
final class Claims {

  /** Marks a break in {@link #job}. */
  static final int BREAK = -1;

  /** One break for so many jobs is plenty: most plans want their lots full. */
  private static final int JOBS_PER_BREAK = 3;

  final int[] job;
  final int[] segment;
  final int jobClaims;

  /** How many parts of each job have no claim, and where a job's claims would then begin. */
  private final int[] settled;

  private final int[] numbers;

  Claims(Tables tables, int[] settled) {
    this.settled = settled.clone();
    this.numbers = new int[tables.jobs];
    int count = 0;
    for (int one = 0; one < tables.jobs; one++) {
      count += tables.segments[tables.jobKind[one]] - settled[one];
    }
    int breaks = shares(tables) ? (tables.jobs + JOBS_PER_BREAK - 1) / JOBS_PER_BREAK : 0;
    jobClaims = count;
    job = new int[count + breaks];
    segment = new int[count + breaks];
    int next = 0;
    for (int one = 0; one < tables.jobs; one++) {
      numbers[one] = next - settled[one];
      for (int part = settled[one]; part < tables.segments[tables.jobKind[one]]; part++) {
        job[next] = one;
        segment[next] = part;
        next++;
      }
    }
    Arrays.fill(job, count, count + breaks, BREAK);
  }

  /** The claim of a part of a job, or -1 when that part is settled and has none. */
  int of(int one, int part) {
    return part < settled[one] ? -1 : numbers[one] + part;
  }

  /** How many claims there are, breaks included. */
  int count() {
    return job.length;
  }

  /** Whether any two jobs could ever share a lot. */
  private static boolean shares(Tables tables) {
    for (int one = 0; one < tables.kinds; one++) {
      int jobs = tables.jobFirst[one + 1] - tables.jobFirst[one];
      for (int other = jobs > 1 ? one : one + 1; other < tables.kinds; other++) {
        if (tables.family[one] == tables.family[other] && fitTogether(tables, one, other)) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean fitTogether(Tables tables, int one, int other) {
    long[] limits = tables.limits[tables.family[one]];
    for (int measure = 0; measure < limits.length; measure++) {
      if (tables.amounts[one][measure] + tables.amounts[other][measure] > limits[measure]) {
        return false;
      }
    }
    return true;
  }
}
