package strickle.plan.audit;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.LongStream;
import strickle.plan.Plan;
import strickle.plan.Totals;

/** The totals follow from the tasks, the runs and the orders. */
final class TotalsRule implements Rule {

  private static final String WHERE = "totals";

  @Override
  public int number() {
    return 0;
  }

  @Override
  public void read(Facts facts, Findings findings) {
    Plan plan = facts.plan();
    Totals totals = plan.totals();
    figure("lots", totals.lots(), plan.lots().size(), findings);
    long attended = facts.stints().stream().mapToLong(Stint::minutes).sum();
    figure("attendedMinutes", totals.attendedMinutes(), attended, findings);
    lastReady(facts, findings);
    if (facts.services().stream().allMatch(service -> service.ready().isPresent())) {
      lateness(facts.services(), totals, findings);
    }
  }

  private static void lateness(List<Service> services, Totals totals, Findings findings) {
    long late = services.stream().filter(Service::isLate).count();
    figure("lateOrders", totals.lateOrders(), late, findings);
    BigDecimal hours =
        services.stream().map(TotalsRule::weighted).reduce(BigDecimal.ZERO, BigDecimal::add);
    findings.unless(
        hours.compareTo(totals.weightedLateHours()) == 0,
        WHERE,
        "weightedLateHours " + totals.weightedLateHours() + ", but the orders make " + hours);
  }

  private static BigDecimal weighted(Service service) {
    long startedHours = Math.ceilDiv(service.lateMinutes().orElseThrow(), 60L);
    return service.order().weight().multiply(BigDecimal.valueOf(startedHours));
  }

  private static void lastReady(Facts facts, Findings findings) {
    LongStream ready =
        facts.courses().stream().flatMapToLong(course -> facts.ready(course).stream());
    long due = ready.max().orElse(facts.from());
    findings.unless(
        ZonedMinutes.minute(facts.plan().totals().lastReady()) == due,
        WHERE,
        "lastReady " + facts.plan().totals().lastReady() + ", but it is " + facts.time().say(due));
  }

  private static void figure(String name, long stated, long due, Findings findings) {
    findings.unless(stated == due, WHERE, name + " " + stated + ", but the plan makes " + due);
  }
}
