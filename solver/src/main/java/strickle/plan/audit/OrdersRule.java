package strickle.plan.audit;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import strickle.book.Order;
import strickle.plan.OrderOutcome;

/** Rule 8: each order is ready and late as the serving rule has it; nothing starts too early. */
final class OrdersRule implements Rule {

  @Override
  public int number() {
    return 8;
  }

  @Override
  public void read(Facts facts, Findings findings) {
    for (Stint stint : facts.stints()) {
      findings.unless(
          stint.start() >= facts.now() || stint.isHistory(),
          stint.where(),
          "starts at "
              + facts.time().say(stint.start())
              + ", before "
              + facts.time().say(facts.now()));
    }
    List<OrderOutcome> outcomes = facts.plan().orders();
    Set<String> orders = facts.book().orders().stream().map(Order::id).collect(Collectors.toSet());
    for (OrderOutcome outcome : outcomes) {
      boolean known = orders.contains(outcome.order());
      findings.unless(known, where(outcome.order()), "is not in the book");
    }
    Map<String, List<OrderOutcome>> stated =
        outcomes.stream().collect(Collectors.groupingBy(OrderOutcome::order));
    for (Service service : facts.services()) {
      String id = service.order().id();
      order(facts, service, stated.getOrDefault(id, List.of()), findings);
    }
  }

  private static void order(
      Facts facts, Service service, List<OrderOutcome> outcomes, Findings findings) {
    String where = where(service.order().id());
    int times = outcomes.size();
    findings.unless(times == 1, where, "is listed " + times + " times, not once");
    if (service.ready().isEmpty()) {
      findings.add(where, "cannot be served: the runs of the plan bring too few good pieces");
      return;
    }
    long ready = service.ready().getAsLong();
    long late = service.lateMinutes().getAsLong();
    for (OrderOutcome outcome : outcomes) {
      findings.unless(
          ZonedMinutes.minute(outcome.ready()) == ready,
          where,
          "is listed as ready at " + outcome.ready() + ", but is at " + facts.time().say(ready));
      findings.unless(
          outcome.lateMinutes() == late,
          where,
          "is listed as late by " + outcome.lateMinutes() + " minutes, but is by " + late);
    }
  }

  private static String where(String order) {
    return "order " + order;
  }
}
