package strickle.shop;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * Keeps a number of good orders and makes new ones of two of them: the beginning and the end of
 * one, and between them the claims that are left, as the other has them. Most are then shuffled a
 * little or get a claim elsewhere, every one is justified, and takes the place of the worst kept
 * unless it is worse still.
 *
 * <p>Sources: two-point crossover of activity lists, S. Hartmann, A competitive genetic algorithm
 * for resource-constrained project scheduling, Naval Research Logistics 45 (1998) 733-750;
 * justification of every child, V. Valls, F. Ballestín, S. Quintanilla, A hybrid genetic algorithm
 * for the resource-constrained project scheduling problem, European Journal of Operational Research
 * 185 (2008) 495-508. The changes afterwards are this project's own.
 */
final class Population implements Walk {

  /** So many orders are kept: this factor times the steps there will be, to this power. */
  private static final double SIZE_FACTOR = 1.6;

  private static final double SIZE_POWER = 0.5;

  /** And at least one for so many steps: with many to come, few orders are all alike too soon. */
  private static final double STEPS_EACH = 43;

  private static final int SMALLEST = 10;
  private static final int LARGEST = 400;

  /** Of a hundred new orders so many are changed. */
  private static final int CHANGED_PERCENT = 60;

  /** Claims shuffled among themselves in a new order, and in the orders to begin with. */
  private static final int SHUFFLED = 16;

  private static final int HUNDRED = 100;
  private static final int LEVELS = 3;

  private final Trials trials;
  private final Neighbours neighbours;
  private final RandomGenerator random;
  private final int size;
  private final List<Member> members = new ArrayList<>();
  private final int bases;
  private final int[] child;
  private final boolean[] taken;

  /** An order that is kept, with its value. */
  private static final class Member {

    private final int[] order;
    private final long[] value;

    Member(int[] order, long[] value) {
      this.order = order;
      this.value = value;
    }

    boolean isNoWorseThan(Member other) {
      return Arrays.compare(value, other.value) <= 0;
    }
  }

  /**
   * A population that begins with the orders given.
   *
   * @param steps how many orders it will be asked for, or about so many
   */
  Population(
      Trials trials,
      Neighbours neighbours,
      List<int[]> orders,
      long steps,
      RandomGenerator random) {
    this.trials = trials;
    this.neighbours = neighbours;
    this.random = random;
    double wanted =
        Math.max(SIZE_FACTOR * Math.pow((double) steps, SIZE_POWER), (double) steps / STEPS_EACH);
    this.size = (int) Math.max(SMALLEST, Math.min(LARGEST, wanted));
    this.child = orders.get(0).clone();
    this.taken = new boolean[child.length];
    orders.forEach(this::addFirst);
    this.bases = orders.size();
  }

  private void addFirst(int[] order) {
    System.arraycopy(order, 0, child, 0, child.length);
    trials.tryOrder(child);
    keep();
  }

  @Override
  public void step() {
    boolean first = members.size() < size;
    if (first) {
      System.arraycopy(members.get(random.nextInt(bases)).order, 0, child, 0, child.length);
      neighbours.shuffle(child, Math.max(SHUFFLED, child.length / 2), random);
    } else {
      cross(winner().order, winner().order);
      if (random.nextInt(HUNDRED) < CHANGED_PERCENT) {
        change();
      }
    }
    trials.refine(child);
    if (trials.tryOrder(child) || !trials.spent()) {
      admit(first);
    }
  }

  /** The better of two members that chance picks. */
  private Member winner() {
    Member one = members.get(random.nextInt(members.size()));
    Member other = members.get(random.nextInt(members.size()));
    return one.isNoWorseThan(other) ? one : other;
  }

  private void cross(int[] outer, int[] inner) {
    int one = random.nextInt(child.length);
    int other = random.nextInt(child.length);
    int from = Math.min(one, other);
    int to = Math.max(one, other);
    Arrays.fill(taken, false);
    int filled = fill(outer, 0, from);
    filled = fill(inner, filled, to);
    fill(outer, filled, child.length);
  }

  /** Takes over what is not taken yet, in its order, until the child has so many claims. */
  private int fill(int[] from, int filled, int until) {
    int at = filled;
    for (int i = 0; at < until; i++) {
      if (!taken[from[i]]) {
        taken[from[i]] = true;
        child[at++] = from[i];
      }
    }
    return at;
  }

  private void change() {
    if (random.nextBoolean()) {
      neighbours.shuffle(child, SHUFFLED, random);
    } else {
      neighbours.moveOne(child, random);
    }
  }

  private void admit(boolean first) {
    if (first) {
      keep();
      return;
    }
    int worst = 0;
    for (int i = 1; i < members.size(); i++) {
      worst = members.get(i).isNoWorseThan(members.get(worst)) ? worst : i;
    }
    Member born = new Member(child.clone(), value());
    if (born.isNoWorseThan(members.get(worst)) && isNew()) {
      members.set(worst, born);
    }
  }

  private boolean isNew() {
    return members.stream().noneMatch(member -> Arrays.equals(member.order, child));
  }

  private long[] value() {
    long[] value = new long[LEVELS];
    trials.read(value);
    return value;
  }

  private void keep() {
    members.add(new Member(child.clone(), value()));
  }
}
