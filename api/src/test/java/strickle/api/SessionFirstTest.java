package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.store.Database;
import strickle.store.Studios;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Who has not opened the studio is asked to, before anything else is looked at. */
class SessionFirstTest {

  /** The sign-in, what tells that there is one, and what has a secret of its own or none. */
  private static final Set<String> OPEN =
      Set.of("openSession", "listStudios", "readHealth", "subscribeCalendar");

  private record Op(String name, String method, String path, JsonNode node) {}

  @TempDir Path folder;
  private Web web;

  @BeforeEach
  void start() {
    Database database = Database.inFolder(folder);
    String hash = Password.hash("grey dust on the sill");
    StudioRoutes.createEmpty(new Studios(database, Clock.systemUTC()), "Ash Lane", hash);
    Listening patient =
        new Listening(Listening.LOOPBACK, 0, Set.of(), false, Duration.ofMinutes(1));
    web = Web.of(database, Clock.systemUTC(), patient);
  }

  @AfterEach
  void stop() {
    web.close();
  }

  @Test
  void everyOtherOperationIsRefusedWithoutASessionBeforeItsBodyHasCome() {
    Set<String> answered = new TreeSet<>();
    List<Op> operations = operations();
    for (Op op : operations) {
      // A body is announced and never comes: who waits for it gives no answer.
      String announced = op.node().has("requestBody") ? "Content-Length: 100\r\n" : "";
      if (!op.name().equals("openSession")) {
        String answer = ask(op, announced);
        if (RawHttp.status(answer) != 401) {
          answered.add(op.name());
        } else {
          assertTrue(answer.contains("application/problem+json"), answer);
        }
      }
    }
    answered.add("openSession");
    assertEquals(new TreeSet<>(OPEN), answered);
    System.out.println(operations.size() + " operations, " + OPEN.size() + " without a session");
  }

  @Test
  void theContractSaysWhichNeedNone() {
    Set<String> open = new TreeSet<>();
    for (Op op : operations()) {
      if (op.node().path("security").isArray()) {
        assertTrue(op.node().path("security").isEmpty(), op.name());
        open.add(op.name());
      }
    }
    assertEquals(new TreeSet<>(OPEN), open);
    JsonNode scheme = contract().at("/components/securitySchemes/session");
    assertEquals(SessionCookie.NAME, scheme.path("name").asString());
  }

  @Test
  void whoHasNotOpenedItYetCannotSendMuch() {
    String body = "{\"studio\": \"Ash Lane\", \"password\": \"" + "x".repeat(20_000) + "\"}";
    assertEquals(413, web.send("POST", "/api/session", body).statusCode());
  }

  @Test
  void aStudioThatOpensWithoutAPasswordNeedsNoSession(@TempDir Path other) {
    try (Web open = Web.empty(other)) {
      assertEquals(200, open.get("/api/demo?castings=1").statusCode());
      assertEquals(409, open.get("/api/book").statusCode());
    }
  }

  private String ask(Op op, String header) {
    return RawHttp.ask(
        web.port(),
        op.method()
            + " "
            + op.path().replaceAll("[{][a-z]+}", "x")
            + " HTTP/1.1\r\nHost: localhost:"
            + web.port()
            + "\r\n"
            + header
            + (header.isEmpty() ? "Connection: close\r\n" : "")
            + "\r\n");
  }

  // Of a service that anybody may ask: this one does not show it without a session.
  private JsonNode contract() {
    try (Web open = Web.empty(folder.resolve("open"))) {
      return JsonMapper.shared().readTree(open.get("/api/openapi.json").body());
    }
  }

  private List<Op> operations() {
    List<Op> all = new ArrayList<>();
    for (Map.Entry<String, JsonNode> path : contract().path("paths").properties()) {
      for (Map.Entry<String, JsonNode> method : path.getValue().properties()) {
        JsonNode node = method.getValue();
        String verb = method.getKey().toUpperCase(Locale.ROOT);
        all.add(new Op(node.path("operationId").asString(), verb, path.getKey(), node));
      }
    }
    return all;
  }
}
