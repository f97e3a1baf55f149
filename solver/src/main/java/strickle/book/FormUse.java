package strickle.book;

/**
 * Units of a form that a mould is set up from.
 *
 * @param form id of the form
 * @param count units for one casting, 1 to 1000
 */
public record FormUse(String form, int count) {

  /**
   * Checks the use.
   *
   * @throws Faulty with every fault, paths relative to the use
   */
  public FormUse {
    Check check = new Check();
    check.id(".form", form);
    check.whole(".count", count, 1, Check.MOST_AT_ONCE);
    check.done();
  }
}
