package strickle.web;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;

/**
 * Finds the words of a module that are code: in no comment, text, template or regular expression
 * (ECMA-262, 12). It reads the files of this page, not any script there could be: a slash behind a
 * bracket divides, one behind a brace does not. Where that is not true, what follows does not end
 * as it should, and is refused.
 */
final class Code {

  /**
   * A word that is code, and not the name of a property.
   *
   * @param text the word
   * @param at where it begins
   * @param depth how many braces it stands in
   */
  record Word(String text, int at, int depth) {}

  private static final Set<String> WANTED = Set.of("import", "export", "await");

  private static final Set<String> BEFORE_AN_EXPRESSION =
      Set.of(
          "await",
          "case",
          "delete",
          "do",
          "else",
          "in",
          "instanceof",
          "new",
          "of",
          "return",
          "throw",
          "typeof",
          "void",
          "yield");

  private final String name;
  private final String text;
  private final Deque<Integer> templates = new ArrayDeque<>();
  private final List<Word> found = new ArrayList<>();
  private int at;
  private int depth;
  private int word = -1;
  private boolean divides;

  private Code(String name, String text) {
    this.name = name;
    this.text = text;
  }

  /**
   * The words {@code import}, {@code export} and {@code await} in the order in which they stand.
   *
   * @param name of the file, for what is said when it cannot be read
   * @param text what it holds
   * @throws IllegalStateException if a text, comment or brace is not closed
   */
  static List<Word> words(String name, String text) {
    Code code = new Code(name, text);
    while (code.at < text.length()) {
      code.step();
    }
    if (code.depth != 0) {
      throw new IllegalStateException(name + " has braces that do not match");
    }
    return code.found;
  }

  private void step() {
    char next = text.charAt(at);
    if (Character.isJavaIdentifierPart(next)) {
      readWord();
      return;
    }
    switch (next) {
      case ' ', '\n', '\r', '\t' -> at++;
      case '/' -> slash();
      case '"', '\'' -> after(found(Ends.text(text, at + 1, next), "a text"), true);
      case '`' -> template(at + 1);
      case '{' -> open(at + 1);
      case '}' -> close();
      default -> after(at + 1, next == ')' || next == ']');
    }
  }

  // A word that is nothing special is not even cut out: there are a hundred thousand.
  private void readWord() {
    word = at;
    while (at < text.length() && Character.isJavaIdentifierPart(text.charAt(at))) {
      at++;
    }
    int length = at - word;
    if (length == 5 || length == 6) {
      String read = text.substring(word, at);
      if (WANTED.contains(read) && !isProperty()) {
        found.add(new Word(read, word, depth));
      }
    }
    divides = true;
  }

  private boolean isProperty() {
    char before = word == 0 ? ' ' : text.charAt(word - 1);
    return before == '#' || (before == '.' && !text.startsWith("..", word - 2));
  }

  private void after(int next, boolean nowDivides) {
    at = next;
    word = -1;
    divides = nowDivides;
  }

  private void slash() {
    if (text.startsWith("//", at)) {
      int end = text.indexOf('\n', at);
      at = end < 0 ? text.length() : end;
    } else if (text.startsWith("/*", at)) {
      at = found(text.indexOf("*/", at + 2), "a comment") + 2;
    } else {
      int end = isDivision() ? -1 : Ends.expression(text, at + 1);
      after(end < 0 ? at + 1 : end, end >= 0);
    }
  }

  private boolean isDivision() {
    return divides && (word < 0 || !BEFORE_AN_EXPRESSION.contains(lastWord()));
  }

  private String lastWord() {
    int end = word;
    while (end < at && Character.isJavaIdentifierPart(text.charAt(end))) {
      end++;
    }
    return text.substring(word, end);
  }

  private void template(int from) {
    for (int i = from; i < text.length(); i++) {
      char next = text.charAt(i);
      if (next == '`') {
        after(i + 1, true);
        return;
      }
      if (next == '$' && text.startsWith("${", i)) {
        templates.push(depth);
        open(i + 2);
        return;
      }
      i += next == '\\' ? 1 : 0;
    }
    found(-1, "a template");
  }

  private void open(int next) {
    depth++;
    after(next, false);
  }

  private void close() {
    depth--;
    if (!templates.isEmpty() && templates.peek() == depth) {
      templates.pop();
      template(at + 1);
    } else {
      after(at + 1, false);
    }
  }

  private int found(int end, String what) {
    if (end < 0) {
      long line = text.substring(0, at).lines().count();
      throw new IllegalStateException(name + " does not close " + what + " of line " + line);
    }
    return end;
  }
}
