package strickle.api;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import strickle.store.Database;
import strickle.store.SettableClock;

/** A service in a process of its own, which can be killed. */
final class OtherProcess {

  private static final String POSTGRESQL = "jdbc:";

  private final Process process;
  private final int port;

  private OtherProcess(Process process, int port) {
    this.process = process;
    this.port = port;
  }

  /** Serves a PostgreSQL database or a folder, and prints its port. */
  public static void main(String[] args) {
    Database database =
        args[0].startsWith(POSTGRESQL)
            ? Database.postgresql(args[0])
            : Database.inFolder(Path.of(args[0]));
    SettableClock clock = new SettableClock(Instant.parse("2027-04-05T09:00:00Z"));
    Service service = Service.start(database, Listening.here(0), clock, "test", Web.QUICK);
    System.out.println("port " + service.port());
  }

  /** Starts one on a database, and waits until it serves. */
  static OtherProcess start(String place) {
    try {
      Process process =
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-cp",
                  System.getProperty("java.class.path"),
                  OtherProcess.class.getName(),
                  place)
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      return new OtherProcess(process, port(process));
    } catch (IOException cannot) {
      throw new UncheckedIOException(cannot);
    }
  }

  private static int port(Process process) throws IOException {
    BufferedReader said =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    for (String line = said.readLine(); line != null; line = said.readLine()) {
      if (line.startsWith("port ")) {
        return Integer.parseInt(line.substring(5));
      }
    }
    throw new IllegalStateException("it ended before it served");
  }

  /** Its port. */
  int port() {
    return port;
  }

  /** Kills it without a word (SIGKILL where there is such). */
  void kill() {
    try {
      process.destroyForcibly().waitFor();
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
    }
  }
}
