package strickle.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.logging.LogManager;
import strickle.store.NativeLibrary;

/**
 * Does once what a studio does every day, so that the launcher's cache holds the classes of it: a
 * book is planned and shown, and a service started and asked. What is unpacked at every start is
 * unpacked once, into the folder {@code native}.
 */
final class Rehearsal {

  private static final int PATIENCE_MILLIS = 20_000;

  private Rehearsal() {}

  /**
   * Runs it.
   *
   * @param arguments an empty folder for what it makes
   */
  public static void main(String[] arguments) throws IOException {
    LogManager.getLogManager().reset();
    Path folder = Path.of(arguments[0]);
    plan(folder);
    NativeLibrary.unpack(folder.resolve("native"));
    serve(folder.resolve("data").toString());
    System.exit(0);
  }

  private static void plan(Path folder) {
    Surroundings here = writingTo(OutputStream.nullOutputStream());
    String book = folder.resolve("book.json").toString();
    String plan = folder.resolve("plan.json").toString();
    Main.run(here, "demo", "--castings", "12", "--seed", "1", "--out", book);
    Main.run(here, "plan", book, "--from", "2027-03-01", "--schedules", "300", "--out", plan);
  }

  // It serves until the program ends.
  private static void serve(String data) throws IOException {
    CompletableFuture<String> said = new CompletableFuture<>();
    Surroundings here = writingTo(new FirstLine(said));
    Thread serving =
        new Thread(
            () -> {
              int code = Main.run(here, "serve", "--port", "0", "--data", data);
              said.completeExceptionally(new IllegalStateException("serve ended with " + code));
            });
    serving.setDaemon(true);
    serving.start();
    askAll(port(said.orTimeout(PATIENCE_MILLIS, TimeUnit.MILLISECONDS).join()));
  }

  /** Hands on the first line that is written to it. */
  private static final class FirstLine extends OutputStream {

    private final ByteArrayOutputStream line = new ByteArrayOutputStream();
    private final CompletableFuture<String> said;

    FirstLine(CompletableFuture<String> said) {
      this.said = said;
    }

    @Override
    public void write(int b) {
      if (b == '\n') {
        said.complete(line.toString(UTF_8));
      }
      line.write(b);
    }
  }

  private static Surroundings writingTo(OutputStream out) {
    PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, UTF_8);
    PrintStream lines = new PrintStream(out, false, UTF_8);
    return new Surroundings(Clock.systemUTC(), lines, nowhere, () -> false, new Interruption());
  }

  private static int port(String line) {
    return Integer.parseInt(line.replaceAll(".*:(\\d+)/.*", "$1"));
  }

  private static void askAll(int port) throws IOException {
    ask(port, "POST", "/api/studios", "{\"name\": \"Rehearsal\", \"begin\": \"demo\"}");
    for (String path :
        List.of("/health", "/", "/week", "/api/book", "/api/pieces", "/api/openapi.json")) {
      ask(port, "GET", path, "");
    }
  }

  private static void ask(int port, String method, String path, String body) throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
      socket.setSoTimeout(PATIENCE_MILLIS);
      String head =
          "%s %s HTTP/1.1\r\nHost: localhost:%d\r\nConnection: close\r\nContent-Length: %d\r\n\r\n"
              .formatted(method, path, port, body.length());
      socket.getOutputStream().write((head + body).getBytes(UTF_8));
      socket.getInputStream().readAllBytes();
    }
  }
}
