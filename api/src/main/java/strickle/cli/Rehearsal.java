package strickle.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.logging.LogManager;
import strickle.api.Listening;
import strickle.api.Service;
import strickle.store.Database;

/**
 * Does once what a studio does every day, so that the launcher's cache holds the classes of it: a
 * book is planned and shown, and a service started and asked.
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
    serve(folder.resolve("data"));
    System.exit(0);
  }

  private static void plan(Path folder) {
    PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, UTF_8);
    Surroundings here =
        new Surroundings(Clock.systemUTC(), nowhere, nowhere, () -> false, new Interruption());
    String book = folder.resolve("book.json").toString();
    String plan = folder.resolve("plan.json").toString();
    Main.run(here, "demo", "--castings", "12", "--seed", "1", "--out", book);
    Main.run(here, "plan", book, "--from", "2027-03-01", "--schedules", "300", "--out", plan);
  }

  private static void serve(Path data) throws IOException {
    Database database = Database.inFolder(data);
    try (Service service =
        Service.start(database, Listening.here(0), Clock.systemUTC(), Version.NUMBER)) {
      ask(service.port(), "POST", "/api/studios", "{\"name\": \"Rehearsal\", \"begin\": \"demo\"}");
      for (String path : List.of("/health", "/api/book", "/api/pieces", "/api/openapi.json")) {
        ask(service.port(), "GET", path, "");
      }
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
