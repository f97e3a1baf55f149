package strickle.book;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds what somebody who mistyped a word most likely meant. */
public final class Nearest {

  private static final int LONGEST_WORD = 100;

  private Nearest() {}

  /**
   * The known word that takes the fewest changes to reach: a letter put in, left out, exchanged, or
   * swapped with its neighbour (optimal string alignment distance). Upper and lower case count as
   * the same. Of several as near, the first in the alphabet.
   *
   * @param word what was given
   * @param known what could have been meant, in any order
   * @return nothing when more than a third of the letters would have to change, one change being
   *     always allowed, or when the word has more than 100 letters
   */
  public static Optional<String> to(String word, Collection<String> known) {
    if (word.length() > LONGEST_WORD) {
      return Optional.empty();
    }
    String given = word.toLowerCase(Locale.ROOT);
    String best = null;
    int fewest = Integer.MAX_VALUE;
    for (String candidate : known) {
      int most = Math.min(fewest, allowed(word, candidate));
      int changes = changes(given, candidate.toLowerCase(Locale.ROOT), most);
      if (changes <= most && (changes < fewest || candidate.compareTo(best) < 0)) {
        best = candidate;
        fewest = changes;
      }
    }
    return Optional.ofNullable(best);
  }

  /** "; did you mean …?" for the end of a sentence, or nothing when no word is near. */
  static String hint(String word, Collection<String> known) {
    return to(word, known).map(near -> "; did you mean " + Show.text(near) + "?").orElse("");
  }

  private static int allowed(String word, String candidate) {
    return Math.max(1, Math.max(word.length(), candidate.length()) / 3);
  }

  /** The changes between two words, or more than {@code most} when there are more than that. */
  private static int changes(String a, String b, int most) {
    if (Math.abs(a.length() - b.length()) > most) {
      return most + 1;
    }
    int[] beforeLast = new int[b.length() + 1];
    int[] last = firstRow(b.length());
    for (int i = 1; i <= a.length(); i++) {
      int[] row = nextRow(a, b, i, last, beforeLast);
      // No later row can fall below: a swap gains no more than the row it passes over.
      if (least(row) > most) {
        return most + 1;
      }
      beforeLast = last;
      last = row;
    }
    return last[b.length()];
  }

  private static int[] firstRow(int length) {
    int[] row = new int[length + 1];
    for (int j = 0; j <= length; j++) {
      row[j] = j;
    }
    return row;
  }

  private static int[] nextRow(String a, String b, int i, int[] last, int[] beforeLast) {
    int[] row = new int[b.length() + 1];
    row[0] = i;
    for (int j = 1; j <= b.length(); j++) {
      int exchanged = last[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
      row[j] = Math.min(exchanged, 1 + Math.min(last[j], row[j - 1]));
      if (isSwap(a, b, i, j)) {
        row[j] = Math.min(row[j], beforeLast[j - 2] + 1);
      }
    }
    return row;
  }

  private static boolean isSwap(String a, String b, int i, int j) {
    return i > 1
        && j > 1
        && a.charAt(i - 1) == b.charAt(j - 2)
        && a.charAt(i - 2) == b.charAt(j - 1);
  }

  private static int least(int[] row) {
    int least = row[0];
    for (int value : row) {
      least = Math.min(least, value);
    }
    return least;
  }
}
