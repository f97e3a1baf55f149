package strickle.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** Compiles classic machine-scheduling problems into shops, for tests and measurements. */
public final class Published {

  private static final OptionalInt NO_LIMIT = OptionalInt.empty();

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
      kinds.add(new Kind("job " + kinds.size(), 0, 1, List.of(1L), chain, 0));
    }
    List<Resource> all =
        IntStream.range(0, machines).mapToObj(i -> new Resource("machine " + i, 1)).toList();
    return shop(all, kinds, List.of(wholeDueAtOnce(kinds)));
  }

  /** One machine; the lateness is the sum of weight x minutes late. */
  public static Shop oneMachine(int[] minutes, int[] weights, int[] dues) {
    List<Kind> kinds = new ArrayList<>();
    List<Due> all = new ArrayList<>();
    for (int i = 0; i < minutes.length; i++) {
      Activity only = machine("job " + i, minutes[i], List.of(Hold.during(0, 1, 0)));
      kinds.add(new Kind("job " + i, 0, 1, List.of(1L), List.of(only), 0));
      all.add(new Due("job " + i, dues[i], weights[i], List.of(new Due.Need(i, 1))));
    }
    return shop(List.of(new Resource("machine", 1)), kinds, all);
  }

  private static Due wholeDueAtOnce(List<Kind> kinds) {
    List<Due.Need> needs =
        IntStream.range(0, kinds.size()).mapToObj(kind -> new Due.Need(kind, 1)).toList();
    return new Due("all", 0, 1, needs);
  }

  private static Activity machine(String name, int minutes, List<Hold> holds) {
    return new Activity(name, minutes, 0, List.of(), false, new Wait(0, 0, NO_LIMIT), holds);
  }

  private static Shop shop(List<Resource> resources, List<Kind> kinds, List<Due> dues) {
    return new Shop(
        10_000_000,
        1,
        List.of(),
        List.of(Clock.wall()),
        resources,
        List.of(Family.alone()),
        kinds,
        List.of(),
        dues,
        List.of());
  }
}
