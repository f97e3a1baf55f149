package strickle.shop;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Compiles classic scheduling problems into shops, for tests and measurements. */
public final class Published {

  private Published() {}

  /**
   * A job shop whose makespan is the lateness: the whole is due at minute 0.
   *
   * @param machinesAndMinutes for each job machine, minutes, machine, minutes, …
   */
  public static Shop jobShop(int[][] machinesAndMinutes) {
    int machines = machinesAndMinutes[0].length / 2;
    List<Kind> kinds = new ArrayList<>();
    for (int[] job : machinesAndMinutes) {
      List<Activity> chain = new ArrayList<>();
      for (int i = 0; i < job.length / 2; i++) {
        Hold hold = Hold.during(job[2 * i], 1, i);
        chain.add(machine("operation " + i, job[2 * i + 1], List.of(hold)));
      }
      kinds.add(job(kinds.size(), chain, 0));
    }
    return shop(ones(machines), kinds, List.of(), List.of(wholeDueAt(0, kinds)), 1);
  }

  /**
   * A flow shop whose makespan is the lateness: every job goes over all machines in their order.
   *
   * @param minutes for each job its minutes on each machine
   */
  public static Shop flowShop(int[][] minutes) {
    int[][] jobs = new int[minutes.length][2 * minutes[0].length];
    for (int job = 0; job < minutes.length; job++) {
      for (int machine = 0; machine < minutes[job].length; machine++) {
        jobs[job][2 * machine] = machine;
        jobs[job][2 * machine + 1] = minutes[job][machine];
      }
    }
    return jobShop(jobs);
  }

  /** One machine; the lateness is the sum of weight x minutes late. */
  public static Shop oneMachine(int[] minutes, int[] weights, int[] dues) {
    return oneMachine(minutes, weights, dues, 1);
  }

  /** One machine; the lateness is the number of late jobs, each late by at most one unit. */
  public static Shop numberLate(int[] minutes, int[] dues) {
    int[] ones = new int[minutes.length];
    Arrays.fill(ones, 1);
    return oneMachine(minutes, ones, dues, 1_000_000);
  }

  /**
   * One machine; the lateness is the largest of the jobs' latenesses, or 0 when none is late. Each
   * job has a tail as long as it is due before the last due date, which is the due date of all.
   */
  public static Shop largestLateness(int[] minutes, int[] dues) {
    int last = Arrays.stream(dues).max().orElse(0);
    List<Kind> kinds = new ArrayList<>();
    for (int i = 0; i < minutes.length; i++) {
      Activity only = machine("job " + i, minutes[i], List.of(Hold.during(0, 1, 0)));
      kinds.add(job(i, List.of(only), last - dues[i]));
    }
    return shop(ones(1), kinds, List.of(), List.of(wholeDueAt(last, kinds)), 1);
  }

  /**
   * A project whose makespan is the lateness.
   *
   * @param minutes minutes of each activity
   * @param uses for each activity its units of each resource
   * @param links pairs of an activity and one that waits for it
   * @param capacities units of each resource
   */
  public static Shop project(int[] minutes, int[][] uses, int[][] links, int[] capacities) {
    int[] all = IntStream.range(0, minutes.length).toArray();
    int[][] lags =
        Arrays.stream(links)
            .map(link -> new int[] {link[0], link[1], minutes[link[0]]})
            .toArray(int[][]::new);
    return lagged(minutes, uses, lags, capacities, all);
  }

  /**
   * A project with lags; its lateness is when the last of some activities ends.
   *
   * @param minutes minutes of each activity
   * @param uses for each activity its units of each resource
   * @param lags an activity, another, and how much later than the first the other starts at least;
   *     less than 0: how much earlier at most
   * @param capacities units of each resource
   * @param lasts the activities whose end counts
   */
  public static Shop lagged(
      int[] minutes, int[][] uses, int[][] lags, int[] capacities, int[] lasts) {
    List<Kind> kinds = new ArrayList<>();
    for (int i = 0; i < minutes.length; i++) {
      int[] used = uses[i];
      List<Hold> holds =
          IntStream.range(0, used.length)
              .filter(resource -> used[resource] > 0)
              .mapToObj(resource -> Hold.during(resource, used[resource], 0))
              .toList();
      kinds.add(job(i, List.of(machine("activity " + i, minutes[i], holds)), 0));
    }
    List<Resource> resources =
        Arrays.stream(capacities).mapToObj(units -> new Resource("resource", units)).toList();
    List<Link> links =
        Arrays.stream(lags).map(lag -> new Link(lag[0], lag[1], lag[2] - minutes[lag[0]])).toList();
    List<Due.Need> needs = Arrays.stream(lasts).mapToObj(last -> new Due.Need(last, 1)).toList();
    return shop(resources, kinds, links, List.of(new Due("all", 0, 1, needs)), 1);
  }

  private static Shop oneMachine(int[] minutes, int[] weights, int[] dues, int lateUnit) {
    List<Kind> kinds = new ArrayList<>();
    List<Due> all = new ArrayList<>();
    for (int i = 0; i < minutes.length; i++) {
      Activity only = machine("job " + i, minutes[i], List.of(Hold.during(0, 1, 0)));
      kinds.add(job(i, List.of(only), 0));
      all.add(new Due("job " + i, dues[i], weights[i], List.of(new Due.Need(i, 1))));
    }
    return shop(ones(1), kinds, List.of(), all, lateUnit);
  }

  private static Kind job(int index, List<Activity> chain, int tail) {
    return new Kind("job " + index, 0, 1, List.of(1L), chain, tail);
  }

  private static Due wholeDueAt(int at, List<Kind> kinds) {
    List<Due.Need> needs =
        IntStream.range(0, kinds.size()).mapToObj(kind -> new Due.Need(kind, 1)).toList();
    return new Due("all", at, 1, needs);
  }

  private static Activity machine(String name, int minutes, List<Hold> holds) {
    return new Activity(name, minutes, 0, List.of(), false, Wait.NONE, holds);
  }

  private static List<Resource> ones(int machines) {
    return IntStream.range(0, machines).mapToObj(i -> new Resource("machine " + i, 1)).toList();
  }

  private static Shop shop(
      List<Resource> resources, List<Kind> kinds, List<Link> links, List<Due> dues, int lateUnit) {
    return new Shop(
        10_000_000,
        lateUnit,
        List.of(),
        List.of(Clock.wall()),
        resources,
        List.of(Family.alone()),
        kinds,
        links,
        dues,
        List.of());
  }
}
