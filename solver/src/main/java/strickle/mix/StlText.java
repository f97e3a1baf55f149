package strickle.mix;

import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;
import strickle.book.Faulty;

/**
 * Text STL: {@code solid name}, facets of three vertices each, {@code endsolid name}; a file may
 * hold several solids, which then are one mesh. Normals are not read: the winding says the same.
 */
final class StlText {

  private static final int LONGEST_WORD = 64;
  private static final int LOOKED_AT = 512;
  private static final Pattern NUMBER = Pattern.compile("[-+.0-9eE]+");

  private final byte[] file;
  private final Coordinates corners = new Coordinates(1);
  private int at;
  private int line = 1;

  private StlText(byte[] file) {
    this.file = file;
    this.at = afterByteOrderMark(file);
  }

  /**
   * Whether the bytes begin as text STL does and hold no zero byte early on, as text never does.
   */
  static boolean matches(byte[] file) {
    for (int i = 0; i < Math.min(file.length, LOOKED_AT); i++) {
      if (file[i] == 0) {
        return false;
      }
    }
    StlText text = new StlText(file);
    text.skipBlank();
    int length = Math.min(text.wordLength(), LONGEST_WORD);
    return new String(file, text.at, length, StandardCharsets.UTF_8).equalsIgnoreCase("solid");
  }

  /**
   * Nine coordinates for every triangle.
   *
   * @throws Faulty at the first word that is out of place, with its line
   */
  static double[] read(byte[] file) {
    StlText text = new StlText(file);
    do {
      text.solid();
      text.skipBlank();
    } while (text.at < file.length);
    return text.corners.all();
  }

  private void solid() {
    expect("solid");
    skipLine();
    String word = word();
    while (word.equalsIgnoreCase("facet")) {
      facet();
      word = word();
    }
    require(word, "endsolid");
    skipLine();
  }

  private void facet() {
    expect("normal");
    for (int i = 0; i < 3; i++) {
      word();
    }
    expect("outer");
    expect("loop");
    for (int i = 0; i < 3; i++) {
      expect("vertex");
      corner();
    }
    expect("endloop");
    expect("endfacet");
  }

  private void corner() {
    for (int i = 0; i < 3; i++) {
      String word = word();
      if (!NUMBER.matcher(word).matches()) {
        throw misplaced(word, "a number");
      }
      corners.add(number(word), "line", line);
    }
  }

  private double number(String word) {
    try {
      return Double.parseDouble(word);
    } catch (NumberFormatException e) {
      throw misplaced(word, "a number");
    }
  }

  private void expect(String right) {
    require(word(), right);
  }

  private void require(String word, String right) {
    if (!word.equalsIgnoreCase(right)) {
      throw misplaced(word, '"' + right + '"');
    }
  }

  private Faulty misplaced(String word, String right) {
    String found = word.isEmpty() ? "the end of the file" : '"' + word + '"';
    return StlMesh.refused(found + " on line " + line, right + " in text STL");
  }

  /** The next word, or nothing at the end of the file. */
  private String word() {
    skipBlank();
    int length = wordLength();
    String word = new String(file, at, Math.min(length, LONGEST_WORD), StandardCharsets.UTF_8);
    if (length > LONGEST_WORD) {
      throw misplaced(word + "…", "a word of at most " + LONGEST_WORD + " characters");
    }
    at += length;
    return word;
  }

  private int wordLength() {
    int end = at;
    while (end < file.length && !isBlank(file[end])) {
      end++;
    }
    return end - at;
  }

  private void skipBlank() {
    while (at < file.length && isBlank(file[at])) {
      pass();
    }
  }

  private void skipLine() {
    while (at < file.length && file[at] != '\n' && file[at] != '\r') {
      at++;
    }
  }

  private void pass() {
    line += file[at] == '\n' ? 1 : 0;
    at++;
  }

  private static boolean isBlank(byte value) {
    return value >= 0 && value <= ' ';
  }

  private static int afterByteOrderMark(byte[] file) {
    boolean marked =
        file.length >= 3
            && file[0] == (byte) 0xEF
            && file[1] == (byte) 0xBB
            && file[2] == (byte) 0xBF;
    return marked ? 3 : 0;
  }
}
