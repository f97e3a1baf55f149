package strickle.web;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The custom properties of the style sheet as one kind of reader sees them. */
record Palette(Map<String, String> tokens) {

  private static final Pattern TOKEN = Pattern.compile("--([a-z0-9-]+):\\s*([^;]+);");

  /**
   * Reads the sheet.
   *
   * @param media empty for the plain rules, else the condition whose rules come on top
   */
  static Palette of(String css, String media) {
    Map<String, String> tokens = new TreeMap<>(own(css, ""));
    tokens.putAll(own(css, media));
    return new Palette(tokens);
  }

  /** Only what is said under the condition itself. */
  static Map<String, String> own(String css, String media) {
    Matcher token = TOKEN.matcher(section(css, media));
    Map<String, String> found = new TreeMap<>();
    while (token.find()) {
      found.put(token.group(1), token.group(2).strip());
    }
    return found;
  }

  private static String section(String css, String media) {
    List<String> sections = List.of(css.split("@media ", -1));
    return media.isEmpty()
        ? sections.get(0)
        : sections.stream().filter(part -> part.startsWith(media)).findFirst().orElseThrow();
  }

  String value(String token) {
    String value = tokens.get(token);
    if (value == null) {
      throw new AssertionError("no --" + token + " among " + tokens.keySet());
    }
    return value;
  }

  /** Contrast ratio of two tokens, 1 to 21, as WCAG 2.2 defines it. */
  double contrast(String one, String other) {
    double a = luminance(value(one));
    double b = luminance(value(other));
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  /** Relative luminance of an sRGB colour #rrggbb, 0 to 1, as WCAG 2.2 defines it. */
  static double luminance(String hex) {
    int rgb = Integer.parseInt(hex.substring(1), 16);
    return 0.2126 * linear(rgb >> 16 & 255)
        + 0.7152 * linear(rgb >> 8 & 255)
        + 0.0722 * linear(rgb & 255);
  }

  private static double linear(int channel) {
    double c = channel / 255.0;
    return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }
}
