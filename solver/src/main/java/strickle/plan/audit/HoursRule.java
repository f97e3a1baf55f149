package strickle.plan.audit;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import strickle.plan.Spell;
import strickle.plan.Task;
import strickle.plan.TaskKind;

/** Rule 4: people work in their opening windows, break off only at closing, and once at a time. */
final class HoursRule implements Rule {

  /** A spell with its task, in minutes since 1970. */
  private record Work(Task task, long start, long end) {

    static Work of(Task task, Spell spell) {
      return new Work(task, ZonedMinutes.minute(spell.start()), ZonedMinutes.minute(spell.end()));
    }

    String where() {
      return "task " + task.id();
    }
  }

  @Override
  public int number() {
    return 4;
  }

  @Override
  public void read(Facts facts, Findings findings) {
    Map<String, OpenHours> hours = new HashMap<>();
    facts.book().people().forEach(person -> hours.put(person.id(), OpenHours.of(person, facts)));
    for (Task task : facts.plan().tasks()) {
      OpenHours open = hours.get(task.person());
      if (open == null) {
        findings.add("task " + task.id(), task.person() + " is nobody the book knows");
      } else {
        inHours(facts, task, open, findings);
      }
    }
    byPerson(facts).values().forEach(works -> onceAtATime(facts, works, findings));
  }

  private static void inHours(Facts facts, Task task, OpenHours open, Findings findings) {
    List<Work> works = task.spells().stream().map(spell -> Work.of(task, spell)).toList();
    for (Work work : works) {
      findings.unless(
          work.start() < work.end(),
          work.where(),
          "has a spell of no minutes at " + facts.time().say(work.start()));
      findings.unless(
          open.isOpen(work.start(), work.end()) || isHistory(task),
          work.where(),
          say(facts, work) + " is not within the hours of " + task.person());
    }
    // A pour may not be cut at all, which is for rule 1 to say.
    if (task.kind() != TaskKind.POUR && !isHistory(task)) {
      for (int i = 1; i < works.size(); i++) {
        goesOn(facts, works.get(i - 1), works.get(i), open, findings);
      }
    }
  }

  /** What really happened keeps to no hours. */
  private static boolean isHistory(Task task) {
    return task.done() || task.begun();
  }

  private static void goesOn(
      Facts facts, Work before, Work after, OpenHours open, Findings findings) {
    if (!open.isWindowEnd(before.end())) {
      String at = facts.time().say(before.end());
      findings.add(before.where(), "breaks off at " + at + ", when no window closes");
      return;
    }
    OptionalLong next = open.backAt(before.end());
    String due = next.isPresent() ? facts.time().say(next.getAsLong()) : "never";
    findings.unless(
        next.isPresent() && next.getAsLong() == after.start(),
        after.where(),
        "goes on at " + facts.time().say(after.start()) + "; the next window opens " + due);
  }

  private static Map<String, List<Work>> byPerson(Facts facts) {
    return facts.plan().tasks().stream()
        .flatMap(task -> task.spells().stream().map(spell -> Work.of(task, spell)))
        .collect(Collectors.groupingBy(work -> work.task().person()));
  }

  private static void onceAtATime(Facts facts, Collection<Work> works, Findings findings) {
    List<Work> inOrder = works.stream().sorted(Comparator.comparingLong(Work::start)).toList();
    Work latest = inOrder.get(0);
    for (Work work : inOrder.subList(1, inOrder.size())) {
      findings.unless(
          work.start() >= latest.end()
              || work.start() == work.end()
              || (isHistory(work.task()) && isHistory(latest.task())),
          "person " + work.task().person(),
          "does " + work.where() + " and " + latest.where() + " at once, " + say(facts, work));
      latest = work.end() > latest.end() ? work : latest;
    }
  }

  private static String say(Facts facts, Work work) {
    return facts.time().say(work.start()) + " to " + facts.time().say(work.end());
  }
}
