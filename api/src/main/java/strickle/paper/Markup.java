package strickle.paper;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Writes XHTML, element by element. Whatever text it is given stays text: markup in a name is
 * printed, not obeyed.
 */
final class Markup {

  private final StringBuilder text = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();

  /** Begins an element of a class of the style sheet. */
  Markup open(String element, String style) {
    text.append('<').append(element).append(" class=\"").append(style).append("\">");
    open.push(element);
    return this;
  }

  /** Ends the element begun last. */
  Markup close() {
    text.append("</").append(open.pop()).append('>');
    return this;
  }

  /** An element with nothing but a text. */
  Markup leaf(String element, String style, String content) {
    return open(element, style).text(content).close();
  }

  /** A box to tick. */
  Markup tick() {
    return open("td", "box").leaf("div", "tick", "").close();
  }

  /** A text as it is drawn, with a box in place of what the fonts have no sign for. */
  Markup text(String content) {
    Fonts.printable(RightToLeft.drawn(content)).codePoints().forEach(this::escaped);
    return this;
  }

  private void escaped(int sign) {
    switch (sign) {
      case '&' -> text.append("&amp;");
      case '<' -> text.append("&lt;");
      case '>' -> text.append("&gt;");
      case '"' -> text.append("&quot;");
      default -> text.appendCodePoint(sign);
    }
  }

  /** All of it; every element has to be closed. */
  String xhtml() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("Elements that were not closed: " + open);
    }
    return text.toString();
  }
}
