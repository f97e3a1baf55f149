package strickle.bench;

import java.io.PrintStream;
import java.util.List;
import java.util.Set;
import java.util.logging.LogManager;
import strickle.book.Fault;
import strickle.book.Faulty;

/** The command line of the bench; {@link Help} says what it takes. */
public final class Bench {

  private static final int DONE = 0;
  private static final int FAILED = 1;
  private static final int WRONG = 2;

  private static final int MOST_THREADS = 256;

  /** The most that a made-up book can need. */
  private static final int MOST_CASTINGS = 2000;

  private static final int MOST_SECONDS = 86_400;
  private static final double NANOS = 1e9;

  private final PrintStream out;

  private Bench(PrintStream out) {
    this.out = out;
  }

  /** Measures and ends the process: 0 when done, 2 for wrong input, 1 for anything else. */
  public static void main(String[] words) {
    // What libraries log is no measurement.
    LogManager.getLogManager().reset();
    System.exit(run(System.out, System.err, words));
  }

  /**
   * Measures.
   *
   * @return the exit code
   */
  static int run(PrintStream out, PrintStream err, String... words) {
    try {
      return new Bench(out).run(List.of(words));
    } catch (Faulty faulty) {
      faulty.faults().forEach(fault -> err.println("bench: " + fault));
      return WRONG;
    } catch (IllegalStateException failed) {
      err.println("bench: " + failed.getMessage());
      return FAILED;
    }
  }

  private int run(List<String> words) {
    if (words.contains("--help")) {
      out.print(Help.TEXT);
      return DONE;
    }
    String command = words.isEmpty() ? "nothing" : words.get(0);
    List<String> rest = words.stream().skip(1).toList();
    return switch (command) {
      case "rcpsp", "jobshop" -> published(command, rest);
      case "rcpspmax" -> lagged(rest);
      case "tardiness" -> tardiness(rest);
      case "weeks" -> weeks(rest);
      default -> throw new Faulty(List.of(new Fault("command", command, Help.COMMANDS)));
    };
  }

  private int published(String command, List<String> words) {
    Set<String> known = Set.of("--best-known", "--schedules", "--only", "--seed", "--threads");
    Arguments given = new Arguments(words, known);
    String folder = given.place("DIR");
    String table = given.needed("--best-known");
    String names = given.text("--only").orElse("*");
    List<Long> limits = limits(given);
    Runner runner = runner(given);
    given.done();
    Lines best = Lines.of(Folder.path(table));
    Benchmark benchmark =
        command.equals("rcpsp")
            ? new Projects(Folder.files(folder, Projects.ENDING, names), best)
            : new JobShops(Folder.files(folder, JobShops.ENDING, names), best);
    return measure(benchmark, limits, runner);
  }

  private int lagged(List<String> words) {
    Arguments given = new Arguments(words, Set.of("--schedules", "--only", "--seed", "--threads"));
    String folder = given.place("DIR");
    String names = given.text("--only").orElse("*");
    List<Long> limits = limits(given);
    Runner runner = runner(given);
    given.done();
    return measure(
        new LaggedProjects(Folder.files(folder, LaggedProjects.ENDING, names)), limits, runner);
  }

  private int tardiness(List<String> words) {
    Set<String> known = Set.of("--best-known", "--schedules", "--seed", "--threads");
    Arguments given = new Arguments(words, known);
    String problems = given.place("FILE");
    String best = given.needed("--best-known");
    List<Long> limits = limits(given);
    Runner runner = runner(given);
    given.done();
    Lines lines = Lines.of(Folder.path(problems));
    return measure(new OneMachines(lines, Lines.of(Folder.path(best))), limits, runner);
  }

  private static int weeks(List<String> words) {
    Arguments given = new Arguments(words, Set.of("--castings", "--seconds", "--seed", "--exact"));
    given.noPlace();
    List<Long> castings = given.wholes("--castings", 1, MOST_CASTINGS);
    given.needed("--seconds");
    long seconds = given.whole("--seconds", 1, MOST_SECONDS, 1);
    long seed = seed(given);
    long exact = given.whole("--exact", 1, MOST_SECONDS, 0);
    given.done();
    return new Weeks(seconds, seed, exact).run(castings);
  }

  private static List<Long> limits(Arguments given) {
    return given.wholes("--schedules", 1, Integer.MAX_VALUE);
  }

  private static long seed(Arguments given) {
    return given.whole("--seed", Long.MIN_VALUE, Long.MAX_VALUE, 0);
  }

  private static Runner runner(Arguments given) {
    int processors = Runtime.getRuntime().availableProcessors();
    return new Runner(
        Math.toIntExact(given.whole("--threads", 1, MOST_THREADS, processors)), seed(given));
  }

  private int measure(Benchmark benchmark, List<Long> limits, Runner runner) {
    for (long limit : limits) {
      String start = "schedules=" + limit + " ";
      long began = System.nanoTime();
      List<Result> results =
          runner.run(
              benchmark.instances(),
              limit,
              result ->
                  benchmark.line(result).ifPresent(line -> tell(start + line, result.seconds())));
      String whole = "instances=" + results.size() + " " + benchmark.summary(results);
      tell(start + whole, (System.nanoTime() - began) / NANOS);
    }
    return DONE;
  }

  private void tell(String line, double seconds) {
    out.println(line + " seconds=" + Benchmark.decimals(seconds));
    out.flush();
  }
}
