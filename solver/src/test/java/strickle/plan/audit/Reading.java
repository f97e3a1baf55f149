package strickle.plan.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import strickle.book.Book;
import strickle.book.SampleBook;
import strickle.plan.Plan;
import strickle.plan.SamplePlan;

/** How the tests of the rules say what the audit should find. */
final class Reading {

  static final Book BOOK = SampleBook.example();

  private Reading() {}

  static PlanDraft sample() {
    return PlanDraft.of(SamplePlan.example());
  }

  /** The plan is valid for the book. */
  static void assertValid(Book book, PlanDraft draft) {
    assertEquals(List.of(), Audit.of(book, draft.plan()));
  }

  /** The plan breaks this rule of the sample book and no other. */
  static void assertBreaks(int rule, PlanDraft draft) {
    assertBreaks(rule, BOOK, draft);
  }

  /** The plan breaks this rule and no other. */
  static void assertBreaks(int rule, Book book, PlanDraft draft) {
    List<Finding> findings = Audit.of(book, draft.plan());
    assertEquals(Set.of(rule), rules(findings), findings::toString);
  }

  /** The plan breaks this rule once, there, and no other. */
  static void assertBreaks(int rule, String where, Book book, PlanDraft draft) {
    assertBreaks(rule, book, draft);
    List<Finding> findings = Audit.of(book, draft.plan());
    assertEquals(List.of(where), findings.stream().map(Finding::where).toList());
  }

  static Set<Integer> rulesBroken(Book book, Plan plan) {
    return rules(Audit.of(book, plan));
  }

  private static Set<Integer> rules(List<Finding> findings) {
    return findings.stream().map(Finding::rule).collect(Collectors.toCollection(TreeSet::new));
  }
}
