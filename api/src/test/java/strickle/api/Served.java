package strickle.api;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** A service in a process of its own, as a person starts it. */
final class Served implements AutoCloseable {

  private static final int PATIENCE_SECONDS = 120;

  private final HttpClient client = HttpClient.newHttpClient();
  private final Process process;
  private final int port;
  private final String told;

  private Served(Process process, int port, String told) {
    this.process = process;
    this.port = port;
    this.told = told;
  }

  /** Starts one on a folder, with further options for Java. */
  static Served on(Path folder, String... java) throws IOException {
    List<String> options = new ArrayList<>(List.of(java));
    options.addAll(FastStart.none());
    return on(folder, options);
  }

  /** Starts one on a folder, with the options of {@link FastStart}. */
  static Served on(Path folder, List<String> java) throws IOException {
    return of(builder("", folder, java));
  }

  /** Starts one after a command of the shell, such as a limit. */
  static Served after(String shell, Path folder) throws IOException {
    return of(builder(shell + "; ", folder, FastStart.none()));
  }

  /** Starts one on a folder and kills it so many milliseconds later, whatever it is at then. */
  static void killedAfter(Path folder, List<String> java, int millis)
      throws IOException, InterruptedException {
    Process process =
        builder("", folder, java).redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
    Thread.sleep(millis);
    process.destroyForcibly().waitFor();
  }

  private static ProcessBuilder builder(String shell, Path folder, List<String> java) {
    List<String> words = new ArrayList<>();
    words.addAll(List.of("sh", "-c", shell + "exec \"$0\" \"$@\""));
    words.add(FastStart.java());
    words.addAll(java);
    words.addAll(List.of("strickle.cli.Main", "serve", "--port", "0", "--log-level", "warning"));
    words.addAll(List.of("--data", folder.toString()));
    return new ProcessBuilder(words).redirectErrorStream(true);
  }

  private static Served of(ProcessBuilder builder) throws IOException {
    Process process = builder.start();
    BufferedReader out = process.inputReader(StandardCharsets.UTF_8);
    StringBuilder told = new StringBuilder();
    for (String line = out.readLine(); line != null; line = out.readLine()) {
      told.append(line).append('\n');
      if (line.startsWith("Serving at ")) {
        drain(process, out);
        return new Served(process, Integer.parseInt(line.split("[:/]", -1)[4]), told.toString());
      }
    }
    return new Served(process, 0, told.toString());
  }

  // What is said later must not fill the pipe.
  private static void drain(Process process, BufferedReader out) {
    Thread.ofVirtual()
        .start(
            () -> {
              try {
                while (process.isAlive() && out.readLine() != null) {
                  Thread.onSpinWait();
                }
              } catch (IOException ended) {
                // Nothing more to read.
              }
            });
  }

  /** Whether it serves; if not, it has ended. */
  boolean serves() {
    return port > 0;
  }

  /** What it said until it served, or ended. */
  String told() {
    return told;
  }

  /** Waits for its end. */
  int exitCode() throws InterruptedException {
    if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new IllegalStateException("did not end");
    }
    return process.exitValue();
  }

  /** Ends it as a power cut would. */
  void kill() throws InterruptedException {
    process.destroyForcibly(); // SIGKILL
    process.waitFor();
  }

  /** Asks it to end. */
  void end() {
    process.destroy(); // SIGTERM
  }

  /** The status and body of an answer; 0 when it was cut off. */
  record Answer(int status, String body) {}

  /** Asks it something; headers are name and value in turn. */
  Answer send(String method, String path, String body, String... headers)
      throws InterruptedException {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create("http://localhost:" + port + path))
            .timeout(Duration.ofSeconds(PATIENCE_SECONDS))
            .method(method, HttpRequest.BodyPublishers.ofString(body));
    if (headers.length > 0) {
      request.headers(headers);
    }
    try {
      HttpResponse<String> answer =
          client.send(request.build(), HttpResponse.BodyHandlers.ofString());
      return new Answer(answer.statusCode(), answer.body());
    } catch (IOException cutOff) {
      return new Answer(0, "");
    }
  }

  /** Makes the demo's studio. */
  void demo() throws InterruptedException {
    send("POST", "/api/studios", "{\"name\": \"Ash Lane\", \"begin\": \"demo\"}");
  }

  /** Creates a station. */
  Answer station(String id) throws InterruptedException {
    String body = "{\"id\": \"" + id + "\", \"name\": \"rack\", \"places\": 4}";
    return send("POST", "/api/stations", body);
  }

  @Override
  public void close() {
    process.destroyForcibly();
    process.onExit().join();
    client.close();
  }
}
