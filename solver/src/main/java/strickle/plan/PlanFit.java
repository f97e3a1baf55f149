package strickle.plan;

import java.util.List;
import java.util.Set;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.plan.audit.Audit;
import strickle.plan.audit.Finding;

/** Says why a plan is none of a book, which may be another one or an older one by now. */
public final class PlanFit {

  /** The rules that follow from a book's orders and pins. */
  private static final Set<Integer> OF_ORDERS = Set.of(8, 9, 10);

  /**
   * With more faults than this, a plan is of another book or of an older one, and they are noise.
   */
  private static final int MOST_TOLD = 3;

  private static final String RIGHT = "one laid out for the book as it is";

  private PlanFit() {}

  /** What keeps a plan from being one of this book as it is, with empty paths. */
  public static List<Fault> faults(Book book, Plan plan) {
    return told(book, plan, Audit.of(book, plan));
  }

  /** The same of a plan under way: the orders and pins of the book may have changed since. */
  public static List<Fault> faultsUnderWay(Book book, Plan plan) {
    return told(
        book,
        plan,
        Audit.of(book, plan).stream()
            .filter(finding -> !OF_ORDERS.contains(finding.rule()))
            .filter(finding -> !finding.where().equals("totals"))
            .toList());
  }

  private static List<Fault> told(Book book, Plan plan, List<Finding> findings) {
    String name = book.studio().name();
    if (!findings.isEmpty() && !plan.book().equals(name)) {
      String found = "a plan made for another book, that of \"" + plan.book() + "\"";
      return List.of(new Fault("", found, "one of this book, that of \"" + name + "\""));
    }
    if (findings.size() > MOST_TOLD) {
      String found =
          "what is no plan of this book: it differs in " + findings.size() + " places, first ";
      return List.of(new Fault("", found + findings.get(0), RIGHT));
    }
    return findings.stream().map(PlanFit::fault).toList();
  }

  private static Fault fault(Finding finding) {
    return new Fault("", "what is no plan of this book (" + finding + ")", RIGHT);
  }
}
