package strickle.page;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * What was measured, by name: the same figure again and again, and what it may be at most. A time
 * is held to its limit by its median, because a machine that does something else for a moment makes
 * any one time long; what does not depend on the machine is held by its worst.
 */
final class Figures {

  /** How a figure is told, and held. */
  enum Kind {
    TIME("ms", 0, false),
    SHIFT("", 4, true),
    COUNT("", 0, true);

    private final String unit;
    private final int digits;
    private final boolean byItsWorst;

    Kind(String unit, int digits, boolean byItsWorst) {
      this.unit = unit;
      this.digits = digits;
      this.byItsWorst = byItsWorst;
    }

    private String told(double value) {
      return String.format(Locale.ROOT, "%." + digits + "f", value)
          + (unit.isEmpty() ? "" : " " + unit);
    }
  }

  /** A figure; a limit of infinity is for those that are only told. */
  private record Figure(String name, Kind kind, double limit, List<Double> values) {

    double median() {
      double[] sorted = values.stream().mapToDouble(Double::doubleValue).sorted().toArray();
      return (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
    }

    double worst() {
      return values.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    }

    boolean isMissed() {
      return (kind.byItsWorst ? worst() : median()) > limit;
    }

    String line() {
      String held = Double.isInfinite(limit) ? "" : "limit " + kind.told(limit);
      return String.format(
          Locale.ROOT,
          "%-52s median %9s  worst %9s  of %2d  %-15s%s",
          name,
          kind.told(median()),
          kind.told(worst()),
          values.size(),
          held,
          isMissed() ? "  MISSED" : "");
    }
  }

  private final Map<String, Figure> figures = new LinkedHashMap<>();
  private final List<String> notes = new ArrayList<>();
  private int printed;

  /** One more value of a figure that may be so much at most. */
  void hold(String name, Kind kind, double limit, double... values) {
    Figure figure =
        figures.computeIfAbsent(name, any -> new Figure(name, kind, limit, new ArrayList<>()));
    Arrays.stream(values).forEach(figure.values()::add);
  }

  /** One more value of a figure that is only told. */
  void tell(String name, Kind kind, double value) {
    hold(name, kind, Double.POSITIVE_INFINITY, value);
  }

  /** Something to say with a figure that is missed. */
  void note(String text) {
    notes.add(text);
  }

  /** Prints a line for each figure that is not printed yet, and what was noted since. */
  void print(PrintStream out) {
    figures.values().stream().skip(printed).forEach(figure -> out.println(figure.line()));
    notes.stream().distinct().forEach(note -> out.println("  " + note));
    printed = figures.size();
    notes.clear();
  }

  /** How many figures are over their limit. */
  long missed() {
    return figures.values().stream().filter(Figure::isMissed).count();
  }
}
