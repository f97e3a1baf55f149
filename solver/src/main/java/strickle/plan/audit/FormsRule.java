package strickle.plan.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import strickle.book.FormUse;
import strickle.plan.FormHold;
import strickle.plan.History;

/** Rule 5: a run holds the units its moulds need, and a unit is held by one run at a time. */
final class FormsRule implements Rule {

  private record Unit(String form, int number) {}

  /** A run holding something from one minute to another. */
  private record Holding(Course course, long from, long to) {}

  @Override
  public int number() {
    return 5;
  }

  @Override
  public void read(Facts facts, Findings findings) {
    Map<Unit, List<Holding>> holdings =
        new TreeMap<>(Comparator.comparing(Unit::form).thenComparingInt(Unit::number));
    for (Course course : facts.courses()) {
      Map<String, List<Integer>> held = held(course);
      enough(course, held, findings);
      exist(facts, course, held, findings);
      whole(facts, course, held, findings);
      hold(course, held, holdings);
    }
    holdings.forEach((unit, list) -> onceAtATime(facts, unit, list, findings));
  }

  private static Map<String, List<Integer>> held(Course course) {
    return course.run().forms().stream()
        .collect(
            Collectors.groupingBy(
                FormHold::form,
                TreeMap::new,
                Collectors.flatMapping(hold -> hold.units().stream(), Collectors.toList())));
  }

  private static void enough(Course course, Map<String, List<Integer>> held, Findings findings) {
    Map<String, Integer> each =
        course.mould().forms().stream()
            .collect(Collectors.toMap(FormUse::form, FormUse::count, Integer::sum, TreeMap::new));
    Set<String> forms = new HashSet<>(held.keySet());
    forms.addAll(each.keySet());
    for (String form : forms.stream().sorted().toList()) {
      long due = (long) each.getOrDefault(form, 0) * course.run().castings();
      int units = held.getOrDefault(form, List.of()).size();
      findings.unless(
          units == due && each.containsKey(form),
          course.where(),
          "holds " + units + " units of form " + form + "; its moulds need " + due);
    }
  }

  private static void exist(
      Facts facts, Course course, Map<String, List<Integer>> held, Findings findings) {
    held.forEach(
        (form, units) -> {
          boolean distinct = Set.copyOf(units).size() == units.size();
          findings.unless(distinct, course.where(), "holds a unit of form " + form + " twice");
          int count = facts.formCount(form);
          for (int unit : units) {
            findings.unless(
                1 <= unit && unit <= count,
                course.where(),
                "holds unit " + unit + " of form " + form + ", of which there are " + count);
          }
        });
  }

  /** Nothing is poured into what is broken then. */
  private static void whole(
      Facts facts, Course course, Map<String, List<Integer>> held, Findings findings) {
    for (History.Broken broken : facts.history().map(History::broken).orElse(List.of())) {
      long since = ZonedMinutes.minute(broken.from());
      long until = broken.to().map(ZonedMinutes::minute).orElse(Long.MAX_VALUE);
      long start = course.pour().map(Stint::start).orElse(Long.MIN_VALUE);
      if (since <= start && start < until && !course.isPoured()) {
        List<Integer> units = held.getOrDefault(broken.form(), List.of());
        findings.unless(
            units.stream().noneMatch(broken.units()::contains),
            course.where(),
            "holds a broken unit of form " + broken.form());
      }
    }
  }

  private static void hold(
      Course course, Map<String, List<Integer>> held, Map<Unit, List<Holding>> holdings) {
    if (course.pour().isEmpty() || course.demould().isEmpty()) {
      return;
    }
    Holding holding =
        new Holding(course, course.pour().get().start(), course.demould().get().end());
    held.forEach(
        (form, units) ->
            Set.copyOf(units)
                .forEach(
                    unit ->
                        holdings
                            .computeIfAbsent(new Unit(form, unit), u -> new ArrayList<>())
                            .add(holding)));
  }

  private static void onceAtATime(
      Facts facts, Unit unit, List<Holding> holdings, Findings findings) {
    List<Holding> inOrder =
        holdings.stream().sorted(Comparator.comparingLong(Holding::from)).toList();
    Holding latest = inOrder.get(0);
    for (Holding next : inOrder.subList(1, inOrder.size())) {
      findings.unless(
          next.from() >= latest.to(),
          "form " + unit.form() + " unit " + unit.number(),
          "is held by "
              + latest.course().where()
              + " until "
              + facts.time().say(latest.to())
              + ", and by "
              + next.course().where()
              + " from "
              + facts.time().say(next.from()));
      latest = next.to() > latest.to() ? next : latest;
    }
  }
}
