package strickle.json;

import java.util.Collection;
import strickle.book.Nearest;

/** Says what a misspelt word was probably meant to be. */
final class Hint {

  private Hint() {}

  /** The nearest known word in quotes if one is near, else the other advice. */
  static String toward(String word, Collection<String> known, String otherwise) {
    return Nearest.to(word, known).map(near -> "\"" + near + "\"").orElse(otherwise);
  }

  /** The nearest known word if one is near, else all of them. */
  static String toward(String word, Collection<String> known) {
    return toward(word, known, "one of " + String.join(", ", known));
  }
}
