package strickle.plan.audit;

import java.time.OffsetDateTime;
import strickle.plan.Plan;
import strickle.plan.Spell;
import strickle.plan.Task;

/** Every time is a whole minute and carries the offset the studio has at that moment. */
final class TimesRule implements Rule {

  @Override
  public int number() {
    return 0;
  }

  @Override
  public void read(Facts facts, Findings findings) {
    Reader reader = new Reader(facts.time(), findings);
    Plan plan = facts.plan();
    reader.read("from", plan.from());
    plan.tasks().forEach(task -> spells(task, reader));
    plan.waits()
        .forEach(wait -> reader.read("a wait of run " + wait.run(), wait.from(), wait.to()));
    plan.ready().forEach(ready -> reader.read("ready of run " + ready.run(), ready.at()));
    plan.orders().forEach(order -> reader.read("order " + order.order(), order.ready()));
    reader.read("totals", plan.totals().lastReady());
  }

  private static void spells(Task task, Reader reader) {
    for (Spell spell : task.spells()) {
      reader.read("task " + task.id(), spell.start(), spell.end());
    }
  }

  private record Reader(ZonedMinutes time, Findings findings) {

    void read(String where, OffsetDateTime... moments) {
      for (OffsetDateTime at : moments) {
        boolean whole = at.getSecond() == 0 && at.getNano() == 0;
        findings.unless(whole, where, at + " is no whole minute, the finest time there is");
        OffsetDateTime local = time.local(at);
        boolean same = local.getOffset().equals(at.getOffset());
        findings.unless(same, where, at + " is " + local + " in the studio's time zone");
      }
    }
  }
}
