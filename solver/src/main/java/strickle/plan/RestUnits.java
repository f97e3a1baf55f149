package strickle.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import strickle.book.Form;
import strickle.book.FormUse;

/**
 * Says which units of a form each run holds. A run of the present plan keeps its own if they are
 * free and whole; else a run takes the lowest numbers that are. Runs come in the order of their
 * pours, and no more are ever held than there are, so that always works.
 */
final class RestUnits {

  private final Standing standing;
  private final Map<String, int[]> freeFrom = new HashMap<>();
  private final Map<String, Run> present = new HashMap<>();

  RestUnits(Standing standing) {
    this.standing = standing;
    for (Form form : standing.book().forms()) {
      int[] free = new int[form.count()];
      Arrays.fill(free, Integer.MIN_VALUE);
      freeFrom.put(form.id(), free);
    }
    for (Lot lot : standing.present().lots()) {
      lot.runs().forEach(run -> present.put(run.id(), run));
    }
  }

  /** A run with its units, held from one minute to another. */
  Run with(Run run, int from, int to, Optional<KeptLot> kept) {
    Map<String, Integer> needed = new TreeMap<>();
    String mould = standing.book().piece(run.piece()).mould();
    for (FormUse use : standing.book().mould(mould).forms()) {
      needed.merge(use.form(), use.count() * run.castings(), Integer::sum);
    }
    boolean begun = kept.map(KeptLot::begun).orElse(false);
    List<FormHold> holds = new ArrayList<>();
    needed.forEach(
        (form, count) -> holds.add(new FormHold(form, take(run, form, count, from, to, begun))));
    return new Run(
        run.id(), run.piece(), run.castings(), holds, run.ballastGramsEach(), run.scrapped());
  }

  private List<Integer> take(Run run, String form, int count, int from, int to, boolean begun) {
    List<Integer> order = new ArrayList<>(before(run, form));
    int[] free = freeFrom.get(form);
    for (int unit = 1; unit <= free.length; unit++) {
      if (!order.contains(unit)) {
        order.add(unit);
      }
    }
    List<Integer> taken = new ArrayList<>();
    take(order, taken, form, count, from, to, false);
    if (begun) {
      // What was really poured into was there, whatever has been told of breakages.
      take(order, taken, form, count, from, to, true);
    }
    if (taken.size() < count) {
      throw new IllegalStateException(
          "form " + form + ": " + count + " units at minute " + from + ", too few free");
    }
    return taken.stream().sorted().toList();
  }

  private void take(
      List<Integer> order,
      List<Integer> taken,
      String form,
      int count,
      int from,
      int to,
      boolean evenBroken) {
    int[] free = freeFrom.get(form);
    for (int unit : order) {
      boolean whole = evenBroken || !isBroken(form, unit, from);
      if (taken.size() < count && whole && !taken.contains(unit) && free[unit - 1] <= from) {
        free[unit - 1] = to;
        taken.add(unit);
      }
    }
  }

  private List<Integer> before(Run run, String form) {
    int most = freeFrom.get(form).length;
    return Optional.ofNullable(present.get(run.id())).stream()
        .flatMap(one -> one.forms().stream())
        .filter(hold -> hold.form().equals(form))
        .flatMap(hold -> hold.units().stream())
        .filter(unit -> unit <= most)
        .toList();
  }

  private boolean isBroken(String form, int unit, int at) {
    return standing.broken().stream()
        .anyMatch(
            one ->
                one.form().equals(form)
                    && one.units().contains(unit)
                    && one.isAt(standing.time().at(at)));
  }
}
