package strickle.json;

import java.util.Locale;
import java.util.regex.Pattern;
import tools.jackson.core.TokenStreamContext;

/** Writes places in a JSON text as RFC 9535 does: {@code $.moulds[0].volumeMl}. */
final class JsonPath {

  /** The whole text. */
  static final String ROOT = "$";

  private static final Pattern SHORTHAND =
      Pattern.compile("[A-Za-z_\\x{80}-\\x{10FFFF}][A-Za-z0-9_\\x{80}-\\x{10FFFF}]*");

  private JsonPath() {}

  /** The part of a path that leads to a field of an object. */
  static String field(String name) {
    return SHORTHAND.matcher(name).matches() ? "." + name : "['" + escaped(name) + "']";
  }

  /** The part of a path that leads to a value of a list, counted from 0. */
  static String index(int position) {
    return "[" + position + "]";
  }

  /** The path of the value a parser is at. */
  static String of(TokenStreamContext context) {
    if (context.inRoot()) {
      return ROOT;
    }
    String outer = of(context.getParent());
    if (context.inArray()) {
      return outer + index(context.getCurrentIndex());
    }
    return context.currentName() == null ? outer : outer + field(context.currentName());
  }

  private static String escaped(String name) {
    StringBuilder out = new StringBuilder();
    name.chars().forEach(unit -> out.append(escaped((char) unit)));
    return out.toString();
  }

  private static String escaped(char unit) {
    if (unit == '\'' || unit == '\\') {
      return "\\" + unit;
    }
    return unit < ' ' ? String.format(Locale.ROOT, "\\u%04x", (int) unit) : String.valueOf(unit);
  }
}
