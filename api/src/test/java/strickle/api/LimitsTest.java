package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.store.Database;

/** What is too much is refused before it costs anything. */
class LimitsTest {

  private static final Duration PATIENCE = Duration.ofSeconds(60);
  private static final Duration HASTE = Duration.ofMillis(700);

  @TempDir Path folder;
  private Web web;

  @BeforeEach
  void start() {
    web = waiting(PATIENCE);
    web.send("POST", "/api/studios", "{\"name\": \"Ash Lane\", \"begin\": \"demo\"}");
  }

  @AfterEach
  void stop() {
    web.close();
  }

  /** A service that waits so long for a body, and no longer. */
  private Web waiting(Duration patience) {
    Listening listening = new Listening(Listening.LOOPBACK, 0, Set.of(), false, patience);
    return Web.of(Database.inFolder(folder), Clock.systemUTC(), listening);
  }

  private void makeHaste() {
    web.close();
    web = waiting(HASTE);
  }

  @Test
  void aBodyThatIsTooLongOrPackedOrTooDeepOrNoTextIsRefused() {
    assertEquals(413, post(" ".repeat(Call.USUAL_BYTES + 1)));
    assertEquals(422, post("[".repeat(5000)));
    assertEquals(422, post("{\"places\":[" + "0,".repeat(3_000_000) + "0]}"));
    assertEquals(422, post("{\"id\":\"" + "x".repeat(200_000) + "\"}"));
    assertEquals(422, post("{\"places\":1" + "0".repeat(10_000) + "}"));
    assertEquals(400, RawHttp.status(RawHttp.ask(web.port(), head(2, "") + "\u00ff\u00fe")));
    assertEquals(
        415, RawHttp.status(RawHttp.ask(web.port(), head(2, "Content-Encoding: gzip\r\n") + "{}")));
    assertEquals(
        431, RawHttp.status(RawHttp.ask(web.port(), head(0, "X: " + "y".repeat(20_000) + "\r\n"))));
  }

  @Test
  void aByteOrderMarkBeforeTheBodyIsNoneOfIt() {
    String rack = "{\"id\": \"r\", \"name\": \"rack\", \"places\": 4}";
    assertEquals(201, web.send("POST", "/api/stations", "\uFEFF" + rack).statusCode());
    String undo = web.get("/api/export").body();
    String back = "\uFEFF" + undo;
    assertEquals(200, web.send("PUT", "/api/export", back, "If-Match", "*").statusCode());
    String lift = "\uFEFF{\"massKg\": 25, \"reachMm\": 400}";
    assertEquals(200, web.send("POST", "/api/lift", lift).statusCode());
    assertEquals(422, web.send("POST", "/api/lift", "\uFEFF").statusCode());
    assertEquals(422, web.send("POST", "/api/lift", "\uFEFF" + lift).statusCode(), "once only");
  }

  @Test
  void aBodyThatTricklesInIsNotWaitedFor() throws Exception {
    makeHaste();
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), web.port())) {
      socket.setSoTimeout(20_000);
      socket.getOutputStream().write(head(1000, "").getBytes(StandardCharsets.ISO_8859_1));
      InputStream in = socket.getInputStream();
      for (int i = 0; i < 60 && in.available() == 0; i++) {
        socket.getOutputStream().write(' ');
        socket.getOutputStream().flush();
        Thread.sleep(100);
      }
      assertTrue(new String(in.readNBytes(12), StandardCharsets.ISO_8859_1).endsWith("408"));
    }
    assertEquals(200, web.get("/health").statusCode());
  }

  @Test
  void aBodyThatStopsIsNotWaitedFor() {
    makeHaste();
    String answer = RawHttp.ask(web.port(), head(1000, "") + "{");
    assertTrue(Set.of(0, 400, 408).contains(RawHttp.status(answer)), answer);
  }

  @Test
  void noMoreThanTwoHundredConnectionsAreServedAndThenOthersAgain() throws Exception {
    List<Socket> idle = new ArrayList<>();
    // More than that, and the system itself makes who connects wait for minutes.
    for (int i = 0; i < 240; i++) {
      idle.add(new Socket(InetAddress.getLoopbackAddress(), web.port()));
    }
    for (Socket socket : idle) {
      socket.close();
    }
    assertEquals(200, RawHttp.status(RawHttp.ask(web.port(), get("/health"))));
  }

  @Test
  void noPathLeadsToAFile() throws Exception {
    Files.writeString(folder.resolve("secret.txt"), "zz-secret");
    for (String path :
        List.of(
            "/../secret.txt",
            "/..%2fsecret.txt",
            "/%2e%2e/secret.txt",
            "/strickle.db",
            "/page/x/..%2f..%2fsecret.txt",
            "/page/x/../../secret.txt",
            "/page/x/%2e%2e/%2e%2e/secret.txt",
            "/page/x" + folder + "/secret.txt",
            "/today/..%2fsecret.txt",
            "/api/../../secret.txt",
            "/api/snapshots/..%2f..%2fsecret.txt",
            "/api/snapshots/" + folder.toString().replace("/", "%2f") + "%2fsecret.txt",
            "//etc/passwd",
            "/api/export?file=" + folder + "/secret.txt",
            "file://" + folder + "/secret.txt",
            "/secret.txt%00.json",
            "/..\\secret.txt")) {
      String answer = RawHttp.ask(web.port(), get(path));
      assertTrue(!answer.contains("zz-secret") && !answer.contains("SQLite"), path);
      assertTrue(!answer.contains("root:") && RawHttp.status(answer) < 500, path + answer);
    }
  }

  /** Statements are made of texts and constants of the program; what is asked goes beside them. */
  @Test
  void noStatementIsPutTogetherFromWhatIsAsked() throws Exception {
    List<String> nasty =
        List.of("'", "\"", "';--", "' or '1'='1", "%", "\\", "\u0000", "$1", ":id");
    for (String text : nasty) {
      String id = URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
      for (String path : List.of("/api/stations/" + id, "/api/snapshots/" + id)) {
        int status = RawHttp.status(RawHttp.ask(web.port(), get(path)));
        assertTrue(status == 404 || status == 400, path + " was answered " + status);
      }
    }
    try (Stream<Path> files = Files.walk(sources())) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String java =
            Files.readString(file)
                .replaceAll("\\b[A-Z_]+\\s*\\+|\\+\\s*[A-Z_]+\\b", "")
                .replaceAll("\"\\s*\\+\\s*\"", "");
        boolean joined =
            java.matches(
                "(?s).*(createQuery|createUpdate|prepareBatch|createScript|handle\\.execute)\\(\\s*"
                    + "(\"[^\"]*\"\\s*(\\+|\\.formatted)|[a-z]\\w*\\s*[+,)]).*");
        assertTrue(!joined, file + " puts a statement together");
      }
    }
  }

  private static Path sources() {
    Path root = Path.of("").toAbsolutePath();
    while (!Files.isDirectory(root.resolve("solver"))) {
      root = root.getParent();
    }
    return root.resolve("api/src/main/java/strickle/store");
  }

  private int post(String body) {
    return RawHttp.status(RawHttp.ask(web.port(), head(body.length(), "") + body));
  }

  private String head(int length, String more) {
    return "POST /api/stations HTTP/1.1\r\nHost: localhost:"
        + web.port()
        + "\r\n"
        + more
        + "Content-Length: "
        + length
        + "\r\n\r\n";
  }

  private String get(String path) {
    return "GET "
        + path
        + " HTTP/1.1\r\nHost: localhost:"
        + web.port()
        + "\r\nConnection: close\r\n\r\n";
  }
}
