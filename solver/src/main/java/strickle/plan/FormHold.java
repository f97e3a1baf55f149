package strickle.plan;

import java.util.List;

/**
 * The units of one form that a run holds, from the start of its pour to the end of its demould.
 *
 * @param form the form's id
 * @param units which units of it, numbered from 1
 */
public record FormHold(String form, List<Integer> units) {

  /**
   * Refuses a unit that has no number.
   *
   * @throws strickle.book.Faulty when the form is blank or a unit is below 1
   */
  public FormHold {
    Flaws flaws = new Flaws().id(".form", form);
    units = flaws.list(".units", units);
    for (int i = 0; i < units.size(); i++) {
      flaws.atLeast(1, ".units[" + i + "]", units.get(i));
    }
    flaws.raise();
  }
}
