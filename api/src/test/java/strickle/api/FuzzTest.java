package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.store.Database;
import strickle.store.StoreHash;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Whatever is asked is answered as the contract says, and what is refused has no effect. */
class FuzzTest {

  private static final Set<Integer> REFUSALS =
      Set.of(
          400, 401, 403, 404, 405, 408, 409, 411, 412, 413, 414, 415, 417, 422, 426, 428, 429, 431,
          501, 505);

  /** Beyond these a request is no valid HTTP, and the server may close the connection. */
  private static final List<String> IDS =
      List.of(
          "rack",
          "rack-9",
          "1",
          "2",
          "0",
          "none",
          "%00",
          "..",
          "%2e%2e",
          "ä",
          "a b",
          "",
          "x".repeat(300),
          "%ff",
          "'",
          "\"",
          ";",
          "*");

  private static final List<String> SHARDS =
      List.of(
          "{",
          "}",
          "[",
          "]",
          "null",
          "-1",
          "1e999",
          "\"",
          "\\u0000",
          "true",
          ",",
          ":",
          "99999999999999999999",
          "0.1",
          "\"\"",
          "{}",
          "[]",
          "\ud83d");

  private record Op(String method, String path, String body, Set<Integer> statuses) {}

  @TempDir Path folder;

  private final Random random = new Random(11);
  private final ObjectMapper json = new ObjectMapper();
  private final Map<Integer, Integer> answers = new TreeMap<>();

  @Test
  @Tag("slow")
  void twoThousandRequestsAreAnsweredByTheContract() {
    fuzz(2_000, 1);
  }

  @Test
  @Tag("long")
  void aHundredThousandRequestsAreAnsweredByTheContract() {
    fuzz(100_000, 10);
  }

  // The hash is looked at after every so many refusals; it holds whatever was refused before.
  private void fuzz(int requests, int every) {
    Database database = Database.inFolder(folder);
    StoreHash hash = new StoreHash(database);
    List<String> wrong = new ArrayList<>();
    try (Web web = Web.of(database, Clock.systemUTC(), Listening.here(0))) {
      web.send("POST", "/api/studios", "{\"name\": \"Ash Lane\", \"begin\": \"demo\"}");
      List<Op> operations = operations(web);
      String before = hash.now();
      for (int i = 0; i < requests && wrong.size() < 20; i++) {
        Op operation = operations.get(random.nextInt(operations.size()));
        byte[] request = request(operation, web.port());
        String answer = RawHttp.ask(web.port(), request);
        int status = RawHttp.status(answer);
        answers.merge(status, 1, Integer::sum);
        judge(operation, request, answer, wrong);
        if (status < 300 && status > 0 && !operation.method().equals("GET")) {
          before = hash.now();
        } else if (i % every == 0 && !before.equals(hash.now())) {
          wrong.add("changed by a refused " + shown(request) + " -> " + status);
          before = hash.now();
        }
      }
    }
    System.out.println(requests + " requests, answers by status " + answers);
    assertEquals(List.of(), wrong);
    assertTrue(answers.keySet().stream().filter(status -> status < 300).count() >= 2);
  }

  private void judge(Op operation, byte[] request, String answer, List<String> wrong) {
    int status = RawHttp.status(answer);
    boolean ok = status == 0 || operation.statuses().contains(status);
    if (ok && status != 0) {
      return;
    }
    String body = RawHttp.body(answer);
    boolean bodiless = new String(request, StandardCharsets.ISO_8859_1).startsWith("HEAD");
    boolean problem =
        REFUSALS.contains(status)
            && answer.contains("application/problem+json")
            && (bodiless || body.contains("\"status\": " + status));
    boolean otherMethod = status == 200 || status == 304; // the method itself was mutated
    if (!problem && !otherMethod) {
      wrong.add(shown(request) + " -> " + status + " " + body);
    }
  }

  private static String shown(byte[] request) {
    String text = new String(request, StandardCharsets.ISO_8859_1);
    return text.substring(0, Math.min(text.length(), 400)).replace("\r\n", " | ");
  }

  private byte[] request(Op operation, int port) {
    String method =
        random.nextInt(40) == 0
            ? oneOf(List.of("HEAD", "OPTIONS", "PATCH", "TRACE", "get", "FOO"))
            : operation.method();
    String path = operation.path().replaceAll("\\{[A-Za-z]+\\}", "{}");
    while (path.contains("{}")) {
      path = path.replaceFirst("\\{\\}", Matcher.quoteReplacement(encoded(oneOf(IDS))));
    }
    if (random.nextInt(5) == 0) {
      path += "?" + oneOf(List.of("limit", "after", "x", "begin")) + "=" + encoded(oneOf(IDS));
    }
    String body = random.nextInt(3) == 0 ? operation.body() : mutated(operation.body());
    byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
    String head =
        method
            + " "
            + path
            + " HTTP/1.1\r\nHost: localhost:"
            + port
            + "\r\n"
            + headers()
            + "Connection: close\r\nContent-Length: "
            + bytes.length
            + "\r\n\r\n";
    byte[] start = head.getBytes(StandardCharsets.ISO_8859_1);
    byte[] all = Arrays.copyOf(start, start.length + bytes.length);
    System.arraycopy(bytes, 0, all, start.length, bytes.length);
    return all;
  }

  private String headers() {
    return switch (random.nextInt(8)) {
      case 0 -> "If-Match: *\r\n";
      case 1 -> "If-Match: \"r" + random.nextInt(50) + "\"\r\n";
      case 2 -> "Idempotency-Key: k" + random.nextInt(5) + "\r\nIf-Match: *\r\n";
      case 3 -> "Content-Type: text/" + oneOf(SHARDS).replace("\ud83d", "x") + "\r\n";
      case 4 -> "Cookie: strickle-session=" + random.nextLong() + "\r\nIf-Match: *\r\n";
      case 5 -> "If-None-Match: *\r\n";
      case 6 -> "Accept: text/html\r\nRange: bytes=0-1\r\nExpect: nothing\r\n";
      default -> "If-Match: *\r\nStrickle-Who: " + "m".repeat(random.nextInt(300)) + "\r\n";
    };
  }

  private String mutated(String body) {
    StringBuilder text = new StringBuilder(body);
    for (int i = random.nextInt(4); i >= 0 && !text.isEmpty(); i--) {
      int at = random.nextInt(text.length());
      switch (random.nextInt(4)) {
        case 0 -> text.insert(at, oneOf(SHARDS));
        case 1 -> text.deleteCharAt(at);
        case 2 -> text.setLength(at);
        default -> text.replace(at, Math.min(text.length(), at + 3), oneOf(SHARDS));
      }
    }
    return text.toString();
  }

  private static String encoded(String id) {
    return id.replace(" ", "%20").replace("ä", "%c3%a4").replace("\"", "%22");
  }

  private String oneOf(List<String> words) {
    return words.get(random.nextInt(words.size()));
  }

  private List<Op> operations(Web web) {
    JsonNode contract = json.readTree(web.get("/api/openapi.json").body());
    List<Op> all = new ArrayList<>();
    for (Map.Entry<String, JsonNode> path : contract.get("paths").properties()) {
      for (Map.Entry<String, JsonNode> method : path.getValue().properties()) {
        String name = method.getKey().toUpperCase(Locale.ROOT);
        // A plan takes its time and its tables are changed by the queue; so does a stream.
        boolean lasting = path.getKey().startsWith("/api/plans");
        if (!lasting && !path.getKey().equals("/api/session")) {
          all.add(operation(name, path.getKey(), method.getValue(), web));
        }
      }
    }
    return all;
  }

  private static Op operation(String method, String path, JsonNode node, Web web) {
    JsonNode example =
        node.path("requestBody").path("content").path("application/json").path("example");
    String body = example.isMissingNode() ? "" : example.toString();
    if (body.isEmpty() && method.equals("PUT")) {
      body = web.get(path).body(); // a book, a studio
    }
    Set<Integer> statuses = new HashSet<>();
    node.get("responses").propertyNames().stream()
        .filter(name -> name.matches("[0-9]+"))
        .forEach(name -> statuses.add(Integer.valueOf(name)));
    return new Op(method, path, body, statuses);
  }
}
