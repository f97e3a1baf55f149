package strickle.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.StringNode;

/**
 * Writes JSON for people: what fits stands on one line, everything else is broken with two spaces
 * of indentation. Numbers are written without exponents.
 */
final class Pretty {

  private static final int LINE = 100;
  private static final String STEP = "  ";

  private final StringBuilder out = new StringBuilder();

  private Pretty() {}

  /** The text of a value, with a newline at the end. */
  static String text(JsonNode node) {
    Pretty pretty = new Pretty();
    pretty.add(node, "");
    return pretty.out.append('\n').toString();
  }

  private void add(JsonNode node, String indent) {
    int start = out.length();
    int column = start - (out.lastIndexOf("\n") + 1);
    if (addFlat(node, start + LINE - column)) {
      return;
    }
    out.setLength(start);
    addBroken(node, indent);
  }

  private void addBroken(JsonNode node, String indent) {
    boolean object = node.isObject();
    out.append(object ? '{' : '[');
    String between = "\n";
    for (Part part : parts(node)) {
      out.append(between).append(indent).append(STEP).append(part.label());
      add(part.value(), indent + STEP);
      between = ",\n";
    }
    out.append('\n').append(indent).append(object ? '}' : ']');
  }

  // Gives up as soon as the line is full; a plain value is written whatever its length.
  private boolean addFlat(JsonNode node, int end) {
    if (!node.isContainer()) {
      out.append(plain(node));
      return true;
    }
    out.append(node.isObject() ? '{' : '[');
    String between = "";
    for (Part part : parts(node)) {
      out.append(between).append(part.label());
      if (!addFlat(part.value(), end) || out.length() >= end) {
        return false;
      }
      between = ", ";
    }
    out.append(node.isObject() ? '}' : ']');
    return out.length() < end;
  }

  private static String plain(JsonNode node) {
    if (node.isString()) {
      return quoted(node.stringValue());
    }
    if (node.isInt() || node.isLong()) {
      return Long.toString(node.longValue());
    }
    return node.isNumber() ? node.decimalValue().toPlainString() : node.toString();
  }

  // The library makes a writer for each text; hardly any text has a character that needs it.
  private static String quoted(String text) {
    boolean plain =
        text.chars()
            .allMatch(c -> c >= ' ' && c != '"' && c != '\\' && c < Character.MIN_SURROGATE);
    return plain ? '"' + text + '"' : StringNode.valueOf(text).toString();
  }

  private static List<Part> parts(JsonNode node) {
    List<Part> parts = new ArrayList<>(node.size());
    if (node.isObject()) {
      for (Map.Entry<String, JsonNode> field : node.properties()) {
        parts.add(new Part(quoted(field.getKey()) + ": ", field.getValue()));
      }
    } else {
      node.forEach(value -> parts.add(new Part("", value)));
    }
    return parts;
  }

  private record Part(String label, JsonNode value) {}
}
