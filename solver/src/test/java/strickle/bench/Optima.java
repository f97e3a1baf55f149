package strickle.bench;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import strickle.book.Fault;
import strickle.book.Faulty;

/**
 * What is proved about problems that may have no schedule: a table with columns problem and
 * optimum. An optimum is a whole number, two with ".." between them when it lies somewhere from one
 * to the other, or "unsat" when there is no schedule.
 */
final class Optima {

  private static final String HEADER = "problem,optimum";
  private static final String NO_SCHEDULE = "unsat";
  private static final String TO = "..";

  /**
   * What is proved about one of them.
   *
   * @param bound no schedule is shorter; {@link Result#NONE} when there is none
   * @param best the shortest that is known
   */
  record Optimum(long bound, long best) {}

  private final Map<String, Optimum> rows = new HashMap<>();

  private Optima() {}

  /**
   * Reads a table.
   *
   * @throws Faulty naming the line
   */
  static Optima read(Lines lines) {
    String header = lines.next("a line with the names of columns");
    lines.must(header.equals(HEADER), header, HEADER);
    Optima optima = new Optima();
    while (lines.more()) {
      String line = lines.next("");
      String[] row = Lines.cells(line, ",");
      lines.must(row.length == 2, line, "a problem, a comma and its optimum");
      Optimum before = optima.rows.put(key(row[0]), optimum(lines, row[1]));
      lines.must(before == null, row[0], "each problem once");
    }
    return optima;
  }

  private static Optimum optimum(Lines lines, String text) {
    if (text.equals(NO_SCHEDULE)) {
      return new Optimum(Result.NONE, Result.NONE);
    }
    int to = text.indexOf(TO);
    int bound = lines.number(to < 0 ? text : text.substring(0, to));
    int best = to < 0 ? bound : lines.number(text.substring(to + TO.length()));
    lines.must(bound > 0 && bound <= best, text, "a number from 1, or a smaller and a larger one");
    return new Optimum(bound, best);
  }

  /**
   * What is proved about a problem; its name may be in other letters, small or large.
   *
   * @throws Faulty when there is no such row
   */
  Optimum of(String problem) {
    Optimum optimum = rows.get(key(problem));
    if (optimum == null) {
      throw new Faulty(
          List.of(new Fault("optimum.csv", "nothing about " + problem, "a row for it")));
    }
    return optimum;
  }

  private static String key(String problem) {
    return problem.toLowerCase(Locale.ROOT);
  }
}
