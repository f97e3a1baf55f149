package strickle.api;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import strickle.store.Database;
import strickle.store.PlanQueue;
import strickle.store.SettableClock;

/** A service on a free port, and somebody who asks it over real HTTP. */
final class Web implements AutoCloseable {

  /** A queue that is quick to notice. */
  static final PlanQueue.Pace QUICK =
      new PlanQueue.Pace(Duration.ofMillis(100), Duration.ofMillis(500));

  private final HttpClient client = HttpClient.newHttpClient();
  private final int port;
  private final Runnable end;

  private Web(int port, Runnable end) {
    this.port = port;
    this.end = end;
  }

  /** Somebody who asks a service of another process. */
  static Web at(int port) {
    return new Web(port, () -> {});
  }

  /** A service of one's own on a database. */
  static Web on(Database database) {
    SettableClock clock = new SettableClock(Instant.parse("2027-04-05T09:00:00Z"));
    return of(database, clock, Listening.here(0));
  }

  /** A service without a studio. */
  static Web empty(Path folder) {
    return on(Database.inFolder(folder));
  }

  /** A service with the demo's studio. */
  static Web demo(Path folder) {
    Web web = empty(folder);
    web.send("POST", "/api/studios", "{\"name\": \"Ash Lane\", \"begin\": \"demo\"}");
    return web;
  }

  /** A service with a clock of one's own, on a database that it closes. */
  static Web of(Database database, Clock clock, Listening listening) {
    Service service = Service.start(database, listening, clock, "test", QUICK);
    return new Web(service.port(), service::close);
  }

  int port() {
    return port;
  }

  /** Sends a request; headers are name and value in turn. */
  HttpResponse<String> send(String method, String path, String body, String... headers) {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create("http://localhost:" + port() + path))
            .method(
                method,
                body.isEmpty()
                    ? HttpRequest.BodyPublishers.noBody()
                    : HttpRequest.BodyPublishers.ofString(body));
    if (headers.length > 0) {
      request.headers(headers);
    }
    try {
      return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    } catch (InterruptedException stopped) {
      throw new IllegalStateException(stopped);
    }
  }

  HttpResponse<String> get(String path, String... headers) {
    return send("GET", path, "", headers);
  }

  /** Asks for a plan of the demo and waits until it is over; its id. */
  String planned(String wanted) {
    String place = asked("/api/plans", wanted);
    over(place);
    return place.substring(place.lastIndexOf('/') + 1);
  }

  /** Asks for a plan; where its state is. */
  String asked(String path, String wanted) {
    HttpResponse<String> asked = send("POST", path, wanted);
    if (asked.statusCode() != 202) {
      throw new AssertionError(asked.body());
    }
    return asked.headers().firstValue("Location").orElseThrow();
  }

  /** Waits until a plan is over; its last event. */
  String over(String place) {
    String events = get(place + "/events").body();
    return events.substring(events.lastIndexOf("event: done"));
  }

  @Override
  public void close() {
    end.run();
    client.close();
  }
}
