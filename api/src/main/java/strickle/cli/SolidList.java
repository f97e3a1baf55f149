package strickle.cli;

import java.util.ArrayList;
import java.util.List;
import strickle.book.ShapePart;

/**
 * Solids that are added and taken away, as they are written on the command line.
 *
 * @param texts as they were written, what is added first
 * @param shape the same as solids
 */
record SolidList(List<String> texts, List<ShapePart> shape) {

  /** The option that adds a solid. */
  static final String ADD = "--add";

  /** The option that takes one away. */
  static final String SUBTRACT = "--subtract";

  /** Copies the lists. */
  SolidList {
    texts = List.copyOf(texts);
    shape = List.copyOf(shape);
  }

  /** Reads them; those that are wrong are noted and left out. */
  static SolidList read(Given values, List<String> add, List<String> subtract) {
    List<String> texts = new ArrayList<>();
    List<ShapePart> shape = new ArrayList<>();
    add.forEach(text -> part(values, ADD, text, texts, shape));
    subtract.forEach(text -> part(values, SUBTRACT, text, texts, shape));
    return new SolidList(texts, shape);
  }

  private static void part(
      Given values, String option, String text, List<String> texts, List<ShapePart> shape) {
    values
        .within(SolidText.place(option, text), () -> SolidText.read(text))
        .ifPresent(
            solid -> {
              texts.add(text);
              shape.add(new ShapePart(solid, option.equals(SUBTRACT)));
            });
  }
}
