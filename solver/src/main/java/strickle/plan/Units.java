package strickle.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import strickle.book.Book;
import strickle.book.Form;

/**
 * Says which units of a form each run holds: as runs are poured one after the other, each takes the
 * lowest numbers that are free again. As no more are ever held than there are, that always works.
 */
final class Units {

  private final Map<String, int[]> freeFrom = new HashMap<>();

  /** All units free. */
  Units(Book book) {
    for (Form form : book.forms()) {
      freeFrom.put(form.id(), new int[form.count()]);
    }
  }

  /**
   * Takes {@code count} units of a form from minute {@code start} to {@code end}; counted from 1.
   */
  List<Integer> take(String form, int count, int start, int end) {
    int[] free = freeFrom.get(form);
    List<Integer> units = new ArrayList<>();
    for (int unit = 0; unit < free.length && units.size() < count; unit++) {
      if (free[unit] <= start) {
        free[unit] = end;
        units.add(unit + 1);
      }
    }
    if (units.size() < count) {
      throw new IllegalStateException(
          "form " + form + ": " + count + " units asked for at minute " + start + ", too few free");
    }
    return units;
  }
}
