package strickle.plan.audit;

/** One rule, as read by this package. */
interface Rule {

  /** Its number on the page, or 0 for what the page asks outside the numbered list. */
  int number();

  /** Tells everything in the plan that breaks the rule. */
  void read(Facts facts, Findings findings);

  /** Where a rule tells what it finds. */
  @FunctionalInterface
  interface Findings {

    /** Takes note of one thing. */
    void add(String where, String text);

    /** Takes note of one thing unless the rule holds. */
    default void unless(boolean holds, String where, String text) {
      if (!holds) {
        add(where, text);
      }
    }
  }
}
