package strickle.page;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import strickle.store.SettableClock;

/** A service in a process of its own, which is ended by killing it. */
final class KillableService implements Serving {

  private static final String SERVES = "port ";

  private final Process process;
  private final int port;

  private KillableService(Process process) throws IOException {
    this.process = process;
    this.port = portOf(process);
  }

  /** The process: serves a folder at a port, and says which. */
  public static void main(String[] args) {
    SettableClock clock = new SettableClock(StudioHouse.NOON);
    Serving service = Serving.here(Path.of(args[0]), clock, Integer.parseInt(args[1]));
    System.out.println(SERVES + service.port());
  }

  /** Starts one, and waits until it serves; port 0 is any. */
  static KillableService start(Path folder, int port) {
    ProcessBuilder builder =
        new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            System.getProperty("java.class.path"),
            KillableService.class.getName(),
            folder.toString(),
            Integer.toString(port));
    try {
      return new KillableService(builder.redirectError(ProcessBuilder.Redirect.DISCARD).start());
    } catch (IOException cannot) {
      throw new UncheckedIOException(cannot);
    }
  }

  private static int portOf(Process process) throws IOException {
    BufferedReader said =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    for (String line = said.readLine(); line != null; line = said.readLine()) {
      if (line.startsWith(SERVES)) {
        return Integer.parseInt(line.substring(SERVES.length()));
      }
    }
    throw new IllegalStateException("the service ended before it served");
  }

  @Override
  public int port() {
    return port;
  }

  /** Kills it without a word (SIGKILL where there is such). */
  @Override
  public void end() {
    try {
      process.destroyForcibly().waitFor();
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
    }
  }
}
