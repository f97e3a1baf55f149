package strickle.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Made-up weeks of a studio, planned for a time. Who makes them up stands outside this module, so
 * each size is measured by a program of its own; that is also what a person waits for: a fresh Java
 * that has not seen such a book yet.
 */
final class Weeks {

  private static final String PROGRAM = "strickle.bench.Week";

  private final long seconds;
  private final long seed;

  /** Plans for so many seconds, from a seed that also draws the book. */
  Weeks(long seconds, long seed) {
    this.seconds = seconds;
    this.seed = seed;
  }

  /**
   * Measures each size in turn, until one fails.
   *
   * @return the exit code of the last
   */
  int run(List<Long> castings) {
    int code = 0;
    for (int i = 0; i < castings.size() && code == 0; i++) {
      code = run(castings.get(i));
    }
    return code;
  }

  private int run(long castings) {
    try {
      Process process = new ProcessBuilder(command(castings)).inheritIO().start();
      Thread killer = new Thread(process::destroy);
      Runtime.getRuntime().addShutdownHook(killer);
      int code = process.waitFor();
      Runtime.getRuntime().removeShutdownHook(killer);
      return code;
    } catch (IOException failed) {
      throw new IllegalStateException(failed.getMessage(), failed);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", stopped);
    }
  }

  private List<String> command(long castings) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(ManagementFactory.getRuntimeMXBean().getInputArguments());
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), PROGRAM));
    command.addAll(List.of(Long.toString(castings), Long.toString(seconds), Long.toString(seed)));
    return command;
  }
}
