package strickle.web;

/** What the document of a room asks for before any module of it is there. */
public enum Asks {
  /** Nothing: no studio is open to the reader. */
  NOTHING(""),

  /** The studio, which works by no plan; to ask for one would be refused. */
  STUDIO("<script>"),

  /** The studio and the plan it works by. */
  STUDIO_AND_PLAN("<script data-plan=\"in-use\">");

  private final String begin;

  Asks(String begin) {
    this.begin = begin;
  }

  /** The element that asks, with its text in it; empty when nothing is asked for. */
  String element(String text) {
    return begin.isEmpty() ? "" : begin + text + "</script>\n";
  }
}
