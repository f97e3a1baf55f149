import java.io.BufferedReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What api/bench runs: starts the service through the launcher and looks at it from outside. */
public final class ServeBench {

  private static final List<String> PATHS =
      List.of(
          "/api/book",
          "/api/pieces",
          "/api/orders",
          "/api/studio",
          "/api/plan-in-use",
          "/api/why",
          "/api/days?day=2027-03-01",
          "/api/journal",
          "/api/prices",
          "/health");
  private static final int STARTS = 5;
  private static final int WARM_UP = 2000;
  private static final int READS = 2000;

  private final HttpClient client = HttpClient.newHttpClient();
  private final List<String> missed = new ArrayList<>();
  private final String launcher;
  private final Path data;
  private Process process;
  private String address;

  private ServeBench(String launcher, Path data) {
    this.launcher = launcher;
    this.data = data;
  }

  public static void main(String[] arguments) throws Exception {
    Path folder = Files.createTempDirectory("strickle-bench");
    try {
      new ServeBench(arguments[0], folder.resolve("data")).run(folder.resolve("book.json"));
    } finally {
      try (Stream<Path> files = Files.walk(folder)) {
        for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
          Files.deleteIfExists(file);
        }
      }
    }
  }

  private void run(Path book) throws Exception {
    new ProcessBuilder(launcher, "demo", "--castings", "120", "--seed", "1", "--out", book.toString())
        .inheritIO()
        .start()
        .waitFor();
    start();
    send("POST", "/api/studios", "{\"name\": \"Bench\", \"begin\": \"empty\"}", "*");
    int status = send("PUT", "/api/book", Files.readString(book), "*").statusCode();
    if (status != 200) {
      throw new IllegalStateException("the book was answered with " + status);
    }
    plan();
    stop();
    double[] starts = new double[STARTS];
    for (int i = 0; i < STARTS; i++) {
      starts[i] = start();
      if (i < STARTS - 1) {
        stop();
      }
    }
    Arrays.sort(starts);
    hold("first answer (median, ms)", starts[STARTS / 2], 1500);
    print("first answer after start: median %.0f ms of %d starts, longest %.0f ms",
        starts[STARTS / 2], STARTS, starts[STARTS - 1]);
    Thread.sleep(3000);
    print("memory while idle: %d MB", residentMegabytes());
    hold("memory while idle (MB)", residentMegabytes(), 250);
    for (String path : PATHS) {
      read(path);
    }
    print("memory after %d reads: %d MB", PATHS.size() * (WARM_UP + READS), residentMegabytes());
    stop();
    if (!missed.isEmpty()) {
      throw new IllegalStateException("too much: " + missed);
    }
  }

  // A studio that works by a plan: what is read of it is read too.
  private void plan() throws Exception {
    String asked = "{\"from\": \"2027-03-01T00:00\", \"schedules\": 2000}";
    String place =
        send("POST", "/api/plans", asked, "").headers().firstValue("Location").orElseThrow();
    send("GET", place + "/events", "", "");
    int status = send("POST", place + "/accept", "", "*").statusCode();
    if (status != 200) {
      throw new IllegalStateException("the plan was answered with " + status);
    }
  }

  private double start() throws Exception {
    long begun = System.nanoTime();
    process =
        new ProcessBuilder(
                launcher, "serve", "--port", "0", "--log-level", "error", "--data", data.toString())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    BufferedReader out = process.inputReader(StandardCharsets.UTF_8);
    String line = out.readLine();
    address = line.replaceAll(".*(http://[^/]*)/.*", "$1");
    send("GET", "/health", "", "");
    return (System.nanoTime() - begun) / 1e6;
  }

  private void stop() throws Exception {
    process.destroy();
    process.waitFor();
  }

  private void read(String path) throws Exception {
    double[] millis = new double[READS];
    for (int i = -WARM_UP; i < READS; i++) {
      long begun = System.nanoTime();
      int status = send("GET", path, "", "").statusCode();
      if (status != 200) {
        throw new IllegalStateException(path + " was answered with " + status);
      }
      if (i >= 0) {
        millis[i] = (System.nanoTime() - begun) / 1e6;
      }
    }
    Arrays.sort(millis);
    hold(path + " (99 of 100, ms)", millis[READS * 99 / 100], 10);
    print("%-24s median %.2f ms, 99 of 100 within %.2f ms", path, millis[READS / 2],
        millis[READS * 99 / 100]);
  }

  private HttpResponse<String> send(String method, String path, String body, String match)
      throws Exception {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create(address + path))
            .method(method, HttpRequest.BodyPublishers.ofString(body));
    if (!match.isEmpty()) {
      request.header("If-Match", match);
    }
    return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
  }

  // The launcher becomes the program, so its process is the one. Linux tells; elsewhere it is -1.
  private long residentMegabytes() throws Exception {
    Path status = Path.of("/proc/" + process.pid() + "/status");
    if (!Files.exists(status)) {
      return -1;
    }
    String line =
        Files.readAllLines(status).stream().filter(l -> l.startsWith("VmRSS:")).findFirst().get();
    return Long.parseLong(line.replaceAll("[^0-9]", "")) / 1024;
  }

  private void hold(String what, double found, double most) {
    if (found > most) {
      missed.add(String.format(Locale.ROOT, "%s %.1f, at most %.0f is right", what, found, most));
    }
  }

  private static void print(String format, Object... values) {
    System.out.println(String.format(Locale.ROOT, format, values));
  }
}
