package strickle.plan.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Tells closed hours from busy people: why nobody began a task between two minutes. */
final class WhoWas {

  private final List<Hands> whoMay;
  private final int stage;

  WhoWas(List<Hands> whoMay, int stage) {
    this.whoMay = whoMay;
    this.stage = stage;
  }

  /**
   * What kept everybody: closed hours before anybody opens, then errands, then the hours after the
   * last has closed. Closed hours in between are part of being busy.
   */
  List<Hold> between(int from, int until) {
    List<Hands> open = whoMay.stream().filter(one -> one.open(from, until) > 0).toList();
    if (open.isEmpty()) {
      return List.of(new Hold.Closed(stage, from, until));
    }
    int first = open.stream().mapToInt(one -> one.opens(from)).min().orElse(from);
    int last = open.stream().mapToInt(one -> one.closed(until)).max().orElse(until);
    List<Errand> errands = new ArrayList<>();
    open.forEach(one -> latest(one, first, last).ifPresent(errands::add));
    List<Hold> holds = new ArrayList<>();
    if (first > from) {
      holds.add(new Hold.Closed(stage, from, first));
    }
    if (errands.isEmpty()) {
      holds.add(new Hold.TooShort(stage, first, until));
      return holds;
    }
    holds.add(new Hold.Busy(stage, first, last, List.copyOf(errands)));
    if (last < until) {
      holds.add(new Hold.Closed(stage, last, until));
    }
    return holds;
  }

  private static Optional<Errand> latest(Hands one, int from, int until) {
    List<Errand> errands = one.errands(from, until);
    return errands.isEmpty() ? Optional.empty() : Optional.of(errands.get(errands.size() - 1));
  }
}
