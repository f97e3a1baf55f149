package strickle.cli;

import java.util.List;
import strickle.book.Book;
import strickle.plan.Plan;
import strickle.plan.audit.Audit;
import strickle.plan.audit.Finding;

/** The gate that every plan goes through before anybody sees it. */
final class Audited {

  private Audited() {}

  /**
   * Lets a valid plan through.
   *
   * @throws Bug when the plan breaks a rule
   */
  static Plan plan(Book book, Plan plan) {
    List<Finding> findings = Audit.of(book, plan);
    if (!findings.isEmpty()) {
      int more = findings.size() - 1;
      throw new Bug(
          "its own check refuses the plan, which is therefore neither shown nor written ("
              + findings.get(0)
              + (more == 0 ? "" : ", and " + more + " more")
              + ")");
    }
    return plan;
  }
}
