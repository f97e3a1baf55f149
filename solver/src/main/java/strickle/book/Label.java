package strickle.book;

/** The rules by which things of a book are told apart, for what is kept beside a book. */
public final class Label {

  private Label() {}

  /**
   * Checks what a thing is called.
   *
   * @param id 1 to 64 characters
   * @param name 1 to 200 characters
   * @throws Faulty with every fault, paths relative to the thing
   */
  public static void check(String id, String name) {
    Check check = new Check();
    check.id(".id", id);
    check.name(".name", name);
    check.done();
  }
}
