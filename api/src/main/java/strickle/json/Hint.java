package strickle.json;

import java.util.Collection;
import java.util.Comparator;
import strickle.book.Nearest;

/** Says what a misspelt word was probably meant to be. */
final class Hint {

  private Hint() {}

  /** So many letters at the beginning make two words alike. */
  private static final int ALIKE = 3;

  /** The nearest known word in quotes if one is near, else the other advice. */
  static String toward(String word, Collection<String> known, String otherwise) {
    return Nearest.to(word, known).map(near -> "\"" + near + "\"").orElse(otherwise);
  }

  /**
   * The nearest known word if one is near; else one that begins alike, and all there are; else all
   * there are.
   */
  static String toward(String word, Collection<String> known) {
    String all = "one of " + String.join(", ", known);
    String begun =
        known.stream()
            .max(Comparator.comparingInt(one -> shared(word, one)))
            .filter(one -> shared(word, one) >= ALIKE)
            .map(one -> "\"" + one + "\", or " + all)
            .orElse(all);
    return toward(word, known, begun);
  }

  /** How many letters two words share at their beginning, upper and lower case counting as one. */
  private static int shared(String one, String other) {
    int most = Math.min(one.length(), other.length());
    int letters = 0;
    while (letters < most
        && Character.toLowerCase(one.charAt(letters))
            == Character.toLowerCase(other.charAt(letters))) {
      letters++;
    }
    return letters;
  }
}
