package strickle.page;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Instant;
import strickle.api.Listening;
import strickle.api.Service;
import strickle.store.Database;
import strickle.store.SettableClock;

/** The real service on a real store of its own, at the time of the demo's first evening. */
final class StudioHouse implements AutoCloseable {

  /** Monday 1 March 2027, 12:00 in the demo studio: the plan of the demo begins that day. */
  static final Instant NOON = Instant.parse("2027-03-01T16:00:00Z");

  private static final String[] JSON = {"Content-Type", "application/json"};

  private final Path folder;
  private final SettableClock clock = new SettableClock(NOON);
  private Service service;
  private int port;

  private StudioHouse(Path folder) {
    this.folder = folder;
    this.service = start(0);
  }

  /** A service without a studio. */
  static StudioHouse empty(Path folder) {
    return new StudioHouse(folder);
  }

  /** A service with the demo's studio. */
  static StudioHouse demo(Path folder) {
    StudioHouse house = new StudioHouse(folder);
    house.send("POST", "/api/studios", "{\"name\": \"Gannet Row\", \"begin\": \"demo\"}", JSON);
    return house;
  }

  private Service start(int port) {
    return Service.start(Database.inFolder(folder), Listening.here(port), clock, "test");
  }

  /** Lays out a plan and works by it. */
  void workByAPlan() {
    String asked = "{\"from\": \"2027-03-01T00:00\", \"schedules\": 300, \"seed\": 1}";
    String place =
        send("POST", "/api/plans", asked, JSON).headers().firstValue("Location").orElseThrow();
    while (get(place).matches("(?s).*\"state\": \"(waiting|running)\".*")) {
      Thread.onSpinWait();
    }
    String tag = send("GET", "/api/book", "").headers().firstValue("ETag").orElseThrow();
    if (send("POST", place + "/accept", "", "If-Match", tag).statusCode() != 200) {
      throw new IllegalStateException("no plan in use: " + get(place));
    }
  }

  /** How many things a list holds. */
  int count(String path) {
    return get(path).split("\"kind\"", -1).length - 1;
  }

  /** Its address, without a slash at the end. */
  String address() {
    return "http://127.0.0.1:" + service.port();
  }

  /** Puts the service's clock to a moment. */
  void at(Instant moment) {
    clock.set(moment);
  }

  /** Ends the service; {@link #again} starts it at the same port. */
  void end() {
    port = service.port();
    service.close();
  }

  /** Starts it again at the same port. */
  void again() {
    service = start(port);
  }

  /** Asks the service, as no page would: to prepare a test or to see what was kept. */
  HttpResponse<String> send(String method, String path, String body, String... headers) {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create(address() + path))
            .method(method, HttpRequest.BodyPublishers.ofString(body));
    if (headers.length > 0) {
      request.headers(headers);
    }
    try (HttpClient client = HttpClient.newHttpClient()) {
      return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    } catch (IOException cannot) {
      throw new UncheckedIOException(cannot);
    } catch (InterruptedException stopped) {
      throw new IllegalStateException(stopped);
    }
  }

  /** What it answers to GET. */
  String get(String path) {
    return send("GET", path, "").body();
  }

  @Override
  public void close() {
    service.close();
  }
}
