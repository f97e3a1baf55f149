package strickle.paper;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import strickle.book.Book;
import strickle.book.Person;
import strickle.plan.Plan;
import strickle.plan.Spell;
import strickle.plan.Task;

/**
 * What somebody does at a stretch.
 *
 * @param date the studio's date
 * @param task the task
 * @param spell the spell of it
 * @param part which of its spells, from 1
 */
record Stint(LocalDate date, Task task, Spell spell, int part) {

  /** All of a plan, by day, then person in the order of the book, then time. */
  static List<Stint> of(Book book, Plan plan, Times times) {
    Map<String, Integer> place = new HashMap<>();
    for (Person person : book.people()) {
      place.put(person.id(), place.size());
    }
    List<Stint> stints = new ArrayList<>();
    for (Task task : plan.tasks()) {
      for (int i = 0; i < task.spells().size(); i++) {
        Spell spell = task.spells().get(i);
        stints.add(new Stint(times.date(spell.start()), task, spell, i + 1));
      }
    }
    stints.sort(
        Comparator.comparing(Stint::date)
            .thenComparing(stint -> place.get(stint.person()))
            .thenComparing(stint -> stint.spell.start()));
    return stints;
  }

  String person() {
    return task.person();
  }

  /** " (part 1 of 2)" of a task in several spells, else nothing. */
  String parts() {
    int all = task.spells().size();
    return all == 1 ? "" : " (part " + part + " of " + all + ")";
  }
}
