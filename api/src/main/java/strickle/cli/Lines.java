package strickle.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Breaks text into lines. */
final class Lines {

  /** No line that is printed is wider, in columns. */
  static final int WIDEST = 96;

  private Lines() {}

  /** Spaces at which a line may end: none between a number and its unit. */
  private static final Pattern SPACES =
      Pattern.compile(
          "(?<![0-9])\\s+|(?<=[0-9])\\s+(?!(?:%|°C|°C·h|°C·d|°F|K|x|kg|g|lb|lbf|oz|N|kPa|MPa|ml|l|mm|µm|h|min"
              + "|kg/m³|kg/m²/h|lb/ft²/h|lb/ft²|km/h|mph)(?:[.,;:)]|\\s|$))");

  /** A text in lines of so many columns, broken at spaces, and inside words only when it must. */
  static List<String> wrap(String text, int columns) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String one : SPACES.split(text.strip(), -1)) {
      String word = one.replaceAll("\\s+", " ");
      String rest = word;
      if (!line.isEmpty() && Width.of(line.toString()) + 1 + Width.of(rest) > columns) {
        lines.add(line.toString());
        line.setLength(0);
      }
      while (Width.of(rest) > columns) {
        int end = Math.max(1, Width.fitting(rest, columns));
        lines.add(rest.substring(0, end));
        rest = rest.substring(end);
      }
      line.append(line.isEmpty() || rest.isEmpty() ? "" : " ").append(rest);
    }
    if (!line.isEmpty() || lines.isEmpty()) {
      lines.add(line.toString());
    }
    return lines;
  }

  /** A paragraph under a first indentation and a second one for its further lines. */
  static List<String> paragraph(String first, String further, String text) {
    List<String> lines = wrap(text, WIDEST - Math.max(Width.of(first), Width.of(further)));
    List<String> indented = new ArrayList<>();
    for (String line : lines) {
      indented.add((indented.isEmpty() ? first : further) + line);
    }
    return indented;
  }
}
