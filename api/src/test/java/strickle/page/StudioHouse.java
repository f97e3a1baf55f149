package strickle.page;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Instant;
import java.util.function.IntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strickle.api.Password;
import strickle.api.Service;
import strickle.store.Database;
import strickle.store.SettableClock;
import strickle.store.Studios;

/** The real service on a real store of its own, at the time of the demo's first evening. */
final class StudioHouse implements AutoCloseable {

  /** Monday 1 March 2027, 12:00 in the demo studio: the plan of the demo begins that day. */
  static final Instant NOON = Instant.parse("2027-03-01T16:00:00Z");

  private static final String[] JSON = {"Content-Type", "application/json"};

  private final SettableClock clock;
  private final IntFunction<Serving> start;
  private Serving service;

  private StudioHouse(SettableClock clock, IntFunction<Serving> start) {
    this.clock = clock;
    this.start = start;
    this.service = start.apply(0);
  }

  /** A service without a studio. */
  static StudioHouse empty(Path folder) {
    SettableClock clock = new SettableClock(NOON);
    return new StudioHouse(clock, port -> Serving.here(folder, clock, port));
  }

  /** A service with the demo's studio. */
  static StudioHouse demo(Path folder) {
    return empty(folder).withDemo();
  }

  /** A service with the demo's studio and a plan in use. */
  static StudioHouse working(Path folder) {
    Prepared.into(folder);
    return empty(folder);
  }

  /** A service with the demo's studio in a process of its own, which {@link #end} kills. */
  static StudioHouse killable(Path folder) {
    SettableClock clock = new SettableClock(NOON);
    return new StudioHouse(clock, port -> KillableService.start(folder, port)).withDemo();
  }

  /** A service with an empty studio that a password opens. */
  static StudioHouse closed(Path folder, String name, String password) {
    SettableClock clock = new SettableClock(NOON);
    try (Database database = Database.inFolder(folder)) {
      Service.createEmpty(new Studios(database, clock), name, Password.hash(password));
    }
    return empty(folder);
  }

  private StudioHouse withDemo() {
    send("POST", "/api/studios", "{\"name\": \"Gannet Row\", \"begin\": \"demo\"}", JSON);
    return this;
  }

  /** Puts another book in place of the one there is. */
  void takeBook(String book) {
    String tag = send("GET", "/api/book", "").headers().firstValue("ETag").orElseThrow();
    HttpResponse<String> taken =
        send("PUT", "/api/book", book, "If-Match", tag, "Content-Type", "application/json");
    if (taken.statusCode() != 200) {
      throw new IllegalStateException("the book is not taken: " + taken.body());
    }
  }

  /** Adds an order of one piece, due in five weeks. */
  void order(String id, String piece) {
    String order =
        """
        {"id": "%s", "kind": "order", "due": "2027-04-05T17:00",
         "lines": [{"piece": "%s", "quantity": 1}]}
        """
            .formatted(id, piece);
    HttpResponse<String> made = send("POST", "/api/orders", order, JSON);
    if (made.statusCode() != 201) {
      throw new IllegalStateException("the order is not taken: " + made.body());
    }
  }

  /** Lays out a plan and works by it. */
  void workByAPlan() {
    workByAPlan(300);
  }

  /** Lays out a plan after looking at so many schedules, and works by it. */
  void workByAPlan(int schedules) {
    work(
        "/api/plans",
        "{\"from\": \"2027-03-01T00:00\", \"schedules\": " + schedules + ", \"seed\": 1}");
  }

  /** Lays the plan in use out anew with what has happened, and works by that. */
  void goOn(String now) {
    work("/api/replan", "{\"now\": \"" + now + "\", \"schedules\": 60, \"seed\": 1}");
  }

  private void work(String path, String asked) {
    String place = send("POST", path, asked, JSON).headers().firstValue("Location").orElseThrow();
    while (get(place).matches("(?s).*\"state\": \"(waiting|running)\".*")) {
      Thread.onSpinWait();
    }
    String tag = send("GET", "/api/book", "").headers().firstValue("ETag").orElseThrow();
    if (send("POST", place + "/accept", "", "If-Match", tag).statusCode() != 200) {
      throw new IllegalStateException("no plan in use: " + get(place));
    }
  }

  /** Lets every plan that is being laid out end with the best so far. */
  void endLaying() {
    Matcher ids = Pattern.compile("\"id\": \"([^\"]+)\"").matcher(get("/api/plans"));
    while (ids.find()) {
      send("POST", "/api/plans/" + ids.group(1) + "/stop", "");
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
    service.end();
  }

  /** Starts it again at the same port. */
  void again() {
    service = start.apply(service.port());
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
    service.end();
  }
}
