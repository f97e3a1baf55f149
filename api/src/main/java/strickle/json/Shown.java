package strickle.json;

import java.util.Map;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.StringNode;

/** Shows a value found to a person, as JSON and shortened to 60 characters. */
final class Shown {

  /** The most characters of a value that are shown. */
  static final int MOST = 60;

  private final StringBuilder out = new StringBuilder();

  private Shown() {}

  /** A value of any kind. */
  static String of(JsonNode node) {
    Shown shown = new Shown();
    shown.add(node);
    return shortened(shown.out.toString());
  }

  /** A text, in double quotes. */
  static String text(String text) {
    return shortened(quoted(text));
  }

  // Stops as soon as enough is there, so a fault about a huge list costs no more than a small one.
  private void add(JsonNode node) {
    if (node.isObject()) {
      addObject(node);
    } else if (node.isArray()) {
      addList(node);
    } else if (node.isString()) {
      out.append(quoted(node.stringValue()));
    } else {
      out.append(node);
    }
  }

  private void addObject(JsonNode node) {
    out.append('{');
    String between = "";
    for (Map.Entry<String, JsonNode> field : node.properties()) {
      if (out.length() > MOST) {
        return;
      }
      out.append(between).append(quoted(field.getKey())).append(": ");
      add(field.getValue());
      between = ", ";
    }
    out.append('}');
  }

  private void addList(JsonNode node) {
    out.append('[');
    String between = "";
    for (JsonNode value : node) {
      if (out.length() > MOST) {
        return;
      }
      out.append(between);
      add(value);
      between = ", ";
    }
    out.append(']');
  }

  private static String quoted(String text) {
    return StringNode.valueOf(text.substring(0, Math.min(text.length(), MOST + 1))).toString();
  }

  /** The first characters of what a person wrote. */
  static String shortened(String whole) {
    if (whole.length() <= MOST) {
      return whole;
    }
    int end = MOST - 1;
    return whole.substring(0, Character.isHighSurrogate(whole.charAt(end - 1)) ? end - 1 : end)
        + "…";
  }
}
