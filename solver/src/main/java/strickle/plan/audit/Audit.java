package strickle.plan.audit;

import java.util.ArrayList;
import java.util.List;
import strickle.book.Book;
import strickle.plan.Plan;

/** Reads a plan against its book, by the rules alone. */
public final class Audit {

  private static final List<Rule> RULES =
      List.of(
          new NamesRule(),
          new TimesRule(),
          new WeighOutRule(),
          new BallastRule(),
          new WaitsRule(),
          new TotalsRule(),
          new HistoryRule(),
          new PourRule(),
          new DemouldRule(),
          new StepsRule(),
          new HoursRule(),
          new FormsRule(),
          new StationsRule(),
          new ReadyRule(),
          new OrdersRule(),
          new PinsRule(),
          new CompletenessRule());

  private Audit() {}

  /**
   * Everything that is wrong with a plan; nothing when it is valid.
   *
   * <p>However nonsensical the plan, what is wrong with it is told and not thrown.
   *
   * @throws IllegalStateException when a mould the plan pours has a mesh that was not measured
   * @throws strickle.book.Faulty when a mix or a shape the plan pours cannot be worked out
   */
  public static List<Finding> of(Book book, Plan plan) {
    Facts facts = Facts.of(book, plan);
    List<Finding> found = new ArrayList<>();
    for (Rule rule : RULES) {
      rule.read(facts, (where, text) -> found.add(new Finding(rule.number(), where, text)));
    }
    return List.copyOf(found);
  }
}
