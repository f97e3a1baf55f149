package strickle.plan.audit;

import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strickle.book.Altered;
import strickle.plan.FormHold;
import strickle.plan.Lot;
import strickle.plan.Plan;
import strickle.plan.Run;
import strickle.plan.SamplePlan;
import strickle.plan.Spell;
import strickle.plan.Task;

/** The sample plan moved by days, or done again and again; local times stay what they are. */
final class Repeated {

  private static final ZoneId ZONE = ZoneId.of("America/Chicago");
  private static final int THREE_WEEKS = 21;

  private Repeated() {}

  /** The sample's tasks so many days later; everything that follows is still to be settled. */
  static PlanDraft later(int days) {
    Plan sample = SamplePlan.example();
    return PlanDraft.of(sample)
        .with("from", later(sample.from(), days))
        .with("tasks", sample.tasks().stream().map(task -> copy(task, "", days)).toList());
  }

  /** The sample's four lots so many times over, every three weeks; still to be settled. */
  static PlanDraft times(int times) {
    Plan sample = SamplePlan.example();
    List<Lot> lots = new ArrayList<>();
    List<Task> tasks = new ArrayList<>();
    for (int i = 0; i < times; i++) {
      String mark = "w" + i;
      int days = i * THREE_WEEKS;
      sample.lots().forEach(lot -> lots.add(copy(lot, mark)));
      sample.tasks().forEach(task -> tasks.add(copy(task, mark, days)));
    }
    return PlanDraft.of(sample).with("lots", lots).with("tasks", tasks);
  }

  private static Lot copy(Lot lot, String mark) {
    Run run = lot.runs().get(0);
    List<FormHold> forms = run.forms();
    Run copied =
        new Run(mark + run.id(), run.piece(), run.castings(), forms, run.ballastGramsEach());
    return new Lot(mark + lot.id(), lot.mix(), List.of(copied), lot.weighOut(), lot.wetGrams());
  }

  private static Task copy(Task task, String mark, int days) {
    Optional<String> run = task.run().map(id -> mark + id);
    Spell spell = task.spells().get(0);
    Spell moved = new Spell(later(spell.start(), days), later(spell.end(), days));
    Task renamed = Altered.of(Altered.of(task, "id", mark + task.id()), "lot", mark + task.lot());
    return Altered.of(Altered.of(renamed, "run", run), "spells", List.of(moved));
  }

  private static OffsetDateTime later(OffsetDateTime at, int days) {
    return at.toLocalDateTime().plusDays(days).atZone(ZONE).toOffsetDateTime();
  }
}
