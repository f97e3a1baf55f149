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

  /** Since this version Java warns of what the exact model's libraries do to its memory. */
  private static final int WARNS_OF_UNSAFE = 23;

  private final long seconds;
  private final long seed;
  private final long exactSeconds;

  /**
   * Plans for so many seconds, from a seed that also draws the book.
   *
   * @param exactSeconds how long an exact model may look for something better, for each part of a
   *     plan's value; 0 for no model
   */
  Weeks(long seconds, long seed, long exactSeconds) {
    this.seconds = seconds;
    this.seed = seed;
    this.exactSeconds = exactSeconds;
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
    if (exactSeconds > 0) {
      command.addAll(quiet());
    }
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), PROGRAM));
    for (long word : new long[] {castings, seconds, seed, exactSeconds}) {
      command.add(Long.toString(word));
    }
    return command;
  }

  /** The exact model is in a native library; Java need not warn of that. */
  private static List<String> quiet() {
    String nativeAccess = "--enable-native-access=ALL-UNNAMED";
    return Runtime.version().feature() < WARNS_OF_UNSAFE
        ? List.of(nativeAccess)
        : List.of(nativeAccess, "--sun-misc-unsafe-memory-access=allow");
  }
}
