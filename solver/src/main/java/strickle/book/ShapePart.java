package strickle.book;

/**
 * One solid of a mould's shape.
 *
 * @param solid the solid
 * @param subtract true when it is taken away (a core, a bowl's inside), false when it is added
 */
public record ShapePart(Solid solid, boolean subtract) {

  /** Throws {@link Faulty} when there is no solid. */
  public ShapePart {
    Check check = new Check();
    check.given(".solid", solid, "a solid, such as a box or a cylinder");
    check.done();
  }
}
