package strickle.price.fair;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import strickle.price.fair.Programme.Chosen;
import strickle.price.fair.Programme.Level;

/**
 * Branch and bound: what a branch is worth at most tells whether anything better can be in it;
 * where an item is a mixture of levels, or a column that must be whole is not, the branch is parted
 * there. The half nearer to the mixture is looked into first.
 */
final class Branching {

  /** What is no better by more than this is no better. */
  private static final double TOLERANCE = 1e-7;

  /** A share or a column nearer to whole than this is whole. */
  private static final double WHOLE = 1e-6;

  private final Programme programme;
  private final Deque<Branch> open = new ArrayDeque<>();
  private Optional<Chosen> best = Optional.empty();

  Branching(Programme programme) {
    this.programme = programme;
  }

  /** Whether anything keeps the limits. */
  boolean isPossible() {
    search();
    return best.isPresent();
  }

  /**
   * The best choice.
   *
   * @throws IllegalStateException when no choice keeps the limits
   */
  Chosen best() {
    search();
    return best.orElseThrow(() -> new IllegalStateException("no choice keeps the limits"));
  }

  private void search() {
    open.push(Branch.all(programme));
    while (!open.isEmpty()) {
      Branch branch = open.pop();
      Relaxed.of(programme, branch)
          .filter(relaxed -> best.isEmpty() || relaxed.worth() > best.get().worth() + TOLERANCE)
          .ifPresent(relaxed -> look(branch, relaxed));
    }
  }

  private void look(Branch branch, Relaxed relaxed) {
    int item = mixed(relaxed);
    int side = item < 0 ? parted(relaxed) : -1;
    if (item >= 0) {
      part(branch, item, mean(relaxed.shares().get(item)));
    } else if (side >= 0) {
      partSide(branch, side, relaxed.sides().get(side));
    } else {
      take(branch, relaxed);
    }
  }

  /** The item whose levels lie furthest apart; -1 when none is a mixture. */
  private static int mixed(Relaxed relaxed) {
    int found = -1;
    double widest = 0;
    for (int i = 0; i < relaxed.shares().size(); i++) {
      double width = width(relaxed.shares().get(i));
      if (width > widest) {
        widest = width;
        found = i;
      }
    }
    return found;
  }

  /** How far shares are from one level; 0 for one. */
  private static double width(List<Double> shares) {
    double largest = shares.stream().mapToDouble(Double::doubleValue).max().orElse(1);
    return largest > 1 - WHOLE ? 0 : 1 - largest;
  }

  private static double mean(List<Double> shares) {
    double mean = 0;
    for (int i = 0; i < shares.size(); i++) {
      mean += i * shares.get(i);
    }
    return mean;
  }

  private int parted(Relaxed relaxed) {
    for (int i = 0; i < relaxed.sides().size(); i++) {
      double amount = relaxed.sides().get(i);
      if (programme.sides().get(i).whole() && Math.abs(amount - Math.rint(amount)) > WHOLE) {
        return i;
      }
    }
    return -1;
  }

  private void part(Branch branch, int item, double mean) {
    Branch.Range range = branch.items().get(item);
    int last = (int) Math.min(range.most() - 1L, range.least() + (long) Math.floor(mean));
    Branch fewer = branch.withItem(item, range.least(), last);
    Branch more = branch.withItem(item, last + 1, range.most());
    boolean upper = range.least() + mean - last > 0.5;
    open.push(upper ? fewer : more);
    open.push(upper ? more : fewer);
  }

  private void partSide(Branch branch, int side, double amount) {
    Branch.Range range = branch.sides().get(side);
    int last = (int) Math.floor(amount);
    open.push(branch.withSide(side, range.least(), last));
    open.push(branch.withSide(side, last + 1, range.most()));
  }

  private void take(Branch branch, Relaxed relaxed) {
    List<Level> levels = new ArrayList<>();
    for (int i = 0; i < relaxed.shares().size(); i++) {
      int at = branch.items().get(i).least() + (int) Math.rint(mean(relaxed.shares().get(i)));
      levels.add(programme.items().get(i).get(at));
    }
    double worth = levels.stream().mapToDouble(Level::worth).sum();
    if (best.isEmpty() || worth > best.get().worth()) {
      best = Optional.of(new Chosen(levels, relaxed.sides(), worth));
    }
  }
}
