package strickle.web;

/** Where things end in a script that end on the line they begin on. */
final class Ends {

  private Ends() {}

  /**
   * Behind the last quote of a text.
   *
   * @param script that it stands in
   * @param from behind its first quote
   * @param quote that it ends with
   * @return less than 0 when it does not end on its line
   */
  static int text(String script, int from, char quote) {
    int at = from;
    while (isOnLine(script, at)) {
      if (script.charAt(at) == quote) {
        return at + 1;
      }
      at += script.charAt(at) == '\\' ? 2 : 1;
    }
    return -1;
  }

  /**
   * Behind the last slash of a regular expression; one in brackets does not count.
   *
   * @param script that it stands in
   * @param from behind its first slash
   * @return less than 0 when it does not end on its line
   */
  static int expression(String script, int from) {
    boolean isInBrackets = false;
    int at = from;
    while (isOnLine(script, at)) {
      char next = script.charAt(at);
      if (next == '/' && !isInBrackets) {
        return at + 1;
      }
      isInBrackets = next == '[' || (isInBrackets && next != ']');
      at += next == '\\' ? 2 : 1;
    }
    return -1;
  }

  private static boolean isOnLine(String script, int at) {
    return at < script.length() && script.charAt(at) != '\n';
  }
}
