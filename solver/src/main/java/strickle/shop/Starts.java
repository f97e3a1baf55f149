package strickle.shop;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Orders that are good to begin a search with: earliest due, least slack, most contended resource,
 * each with and without neighbours of a family drawn together, and each with a job's later claims
 * right behind its first or behind everybody's first.
 */
final class Starts {

  private final Tables tables;
  private final Claims claims;
  private final int[] dueOfJob;
  private final long[] remaining;
  private final double[] contention;

  Starts(Tables tables, Claims claims) {
    this.tables = tables;
    this.claims = claims;
    this.dueOfJob = dueOfJob();
    this.remaining = remaining();
    this.contention = contention();
  }

  /** The orders, none twice. */
  List<int[]> orders() {
    Comparator<Integer> earliestDue = Comparator.comparingInt(job -> dueOfJob[job]);
    Comparator<Integer> leastSlack =
        Comparator.comparingLong(job -> dueOfJob[job] - remaining[tables.jobKind[job]]);
    Comparator<Integer> mostContended =
        Comparator.comparingDouble(job -> -contention[tables.jobKind[job]]);
    List<List<Integer>> jobOrders = new ArrayList<>();
    for (Comparator<Integer> rule :
        List.of(
            leastSlack,
            earliestDue.thenComparing(leastSlack),
            earliestDue.thenComparing(mostContended),
            mostContended.thenComparing(leastSlack))) {
      List<Integer> jobs = IntStream.range(0, tables.jobs).boxed().sorted(rule).toList();
      jobOrders.add(jobs);
      jobOrders.add(drawnTogether(jobs));
    }
    return jobOrders.stream()
        .flatMap(jobs -> List.of(jobByJob(jobs), firstsFirst(jobs)).stream())
        .collect(
            () -> new ArrayList<int[]>(),
            (kept, one) -> {
              if (kept.stream().noneMatch(other -> Arrays.equals(one, other))) {
                kept.add(one);
              }
            },
            ArrayList::addAll);
  }

  /** Behind each job the next ones of its family, as many as a lot could hold. */
  private List<Integer> drawnTogether(List<Integer> jobs) {
    List<Integer> rest = new ArrayList<>(jobs);
    List<Integer> drawn = new ArrayList<>();
    Lots lots = new Lots(tables, new Timetable(tables));
    while (!rest.isEmpty()) {
      int job = rest.removeFirst();
      drawn.add(job);
      lots.begin(job);
      rest.removeIf(
          other -> {
            boolean joins = lots.sameFamily(other) && lots.join(other);
            if (joins) {
              drawn.add(other);
            }
            return joins;
          });
      lots.drop();
    }
    return drawn;
  }

  private int[] jobByJob(List<Integer> jobs) {
    return arrange(jobs, Comparator.comparingInt(claim -> claims.segment[claim]), true);
  }

  private int[] firstsFirst(List<Integer> jobs) {
    return arrange(jobs, Comparator.comparingInt(claim -> claims.segment[claim]), false);
  }

  private int[] arrange(List<Integer> jobs, Comparator<Integer> bySegment, boolean jobByJob) {
    int[] place = new int[tables.jobs];
    for (int i = 0; i < jobs.size(); i++) {
      place[jobs.get(i)] = i;
    }
    Comparator<Integer> byJob = Comparator.comparingInt(claim -> place[claims.job[claim]]);
    Comparator<Integer> rule =
        jobByJob ? byJob.thenComparing(bySegment) : bySegment.thenComparing(byJob);
    IntStream breaks = IntStream.range(claims.jobClaims, claims.count());
    IntStream sorted =
        IntStream.range(0, claims.jobClaims).boxed().sorted(rule).mapToInt(Integer::intValue);
    return IntStream.concat(sorted, breaks).toArray();
  }

  /** A job is wanted by the first due date that needs so many of its kind. */
  private int[] dueOfJob() {
    int[] due = new int[tables.jobs];
    Arrays.fill(due, tables.shop.horizonMinutes());
    DueTables dues = tables.dues;
    for (int kind = 0; kind < tables.kinds; kind++) {
      for (int need = dues.needFirst[kind]; need < dues.needFirst[kind + 1]; need++) {
        for (int i = 0; i < dues.needCount[need]; i++) {
          int job = tables.jobFirst[kind] + i;
          due[job] = Math.min(due[job], dues.at[dues.needDue[need]]);
        }
      }
    }
    return due;
  }

  /** The least minutes from the start of a job to its end and that of all that waits for it. */
  private long[] remaining() {
    long[] longest = new long[tables.kinds];
    Arrays.fill(longest, -1);
    for (int kind = 0; kind < tables.kinds; kind++) {
      remaining(kind, longest);
    }
    return longest;
  }

  private long remaining(int kind, long[] known) {
    if (known[kind] < 0 && tables.distances.tethers(kind)) {
      known[kind] = remainingTethered(kind);
    } else if (known[kind] < 0) {
      long after = 0;
      LinkTables links = tables.links;
      for (int link = links.first[kind]; link < links.first[kind + 1]; link++) {
        after = Math.max(after, links.minutes[link] + remaining(links.after[link], known));
      }
      known[kind] = ownMinutes(kind) + after;
    }
    return known[kind];
  }

  private long remainingTethered(int kind) {
    return IntStream.range(0, tables.kinds)
        .mapToLong(other -> tables.distances.least[kind][other] + ownMinutes(other))
        .max()
        .orElse(0);
  }

  private long ownMinutes(int kind) {
    long minutes = tables.sharedMinutes[tables.family[kind]] + (long) tables.tail[kind];
    for (int i = tables.first[kind]; i < tables.first[kind] + tables.size[kind]; i++) {
      Clock clock = tables.shop.clocks().get(tables.waitClock[i]);
      minutes += tables.minutes(i, 1) + clock.atLeast(tables.waitHours[i]);
    }
    return minutes;
  }

  /** How long the most asked-for resource of a kind would be held by all who ask for it. */
  private double[] contention() {
    HoldTables holds = tables.holds;
    double[] load = new double[tables.shop.resources().size()];
    for (int hold = 0; hold < holds.resource.length; hold++) {
      int kind = kindOf(holds.opener[hold]);
      int jobs = tables.jobFirst[kind + 1] - tables.jobFirst[kind];
      int resource = holds.resource[hold];
      int capacity = Math.max(1, tables.shop.resources().get(resource).capacity());
      load[resource] += (double) jobs * holds.units[hold] * holds.least[hold] / capacity;
    }
    double[] most = new double[tables.kinds];
    for (int hold = 0; hold < holds.resource.length; hold++) {
      int kind = kindOf(holds.opener[hold]);
      most[kind] = Math.max(most[kind], load[holds.resource[hold]]);
    }
    return most;
  }

  private int kindOf(int activity) {
    int at = Arrays.binarySearch(tables.first, activity);
    return at >= 0 ? at : -at - 2;
  }
}
