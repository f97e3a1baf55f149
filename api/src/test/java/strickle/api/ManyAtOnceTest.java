package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.store.Database;
import strickle.store.Postgres;

/** The same creation asked for a hundred times at once, over HTTP. */
@Tag("slow")
class ManyAtOnceTest {

  private static final int MANY = 100;

  private static final List<String> CREATIONS =
      List.of(
          "/api/stations|{'id': 'rack-9', 'name': 'rack nine', 'places': 4}|201",
          "/api/pins|{'kind': 'pour', 'piece': 'doorstop-brick', 'castings': 1, 'person': 'maren',"
              + " 'start': '2027-03-02T19:00'}|201",
          "/api/snapshots|{'why': 'before the fair'}|201",
          "/api/plans|{'from': '2027-03-01T00:00', 'schedules': 1}|202");

  @TempDir Path folder;

  @Test
  void aHundredWithOneKeyMakeOneInAFile() throws InterruptedException, ExecutionException {
    try (Web web = Web.demo(folder)) {
      aHundredMakeOne(web);
    }
  }

  @Test
  void aHundredWithOneKeyMakeOneOnAServer() throws InterruptedException, ExecutionException {
    try (Web web = Web.on(Database.postgresql(Postgres.freshDatabase()))) {
      web.send("POST", "/api/studios", "{\"name\": \"Ash Lane\", \"begin\": \"demo\"}");
      aHundredMakeOne(web);
    }
  }

  @Test
  void ofEightWhoMakeTheFirstStudioOneDoesInAFile()
      throws InterruptedException, ExecutionException {
    try (Web web = Web.empty(folder)) {
      oneOfEightMakesIt(web, web);
    }
  }

  @Test
  void ofEightWhoMakeTheFirstStudioOneDoesOnAServerThatTwoServicesShare()
      throws InterruptedException, ExecutionException {
    String url = Postgres.freshDatabase();
    try (Web web = Web.on(Database.postgresql(url));
        Web other = Web.on(Database.postgresql(url))) {
      oneOfEightMakesIt(web, other);
    }
  }

  private static void oneOfEightMakesIt(Web web, Web other)
      throws InterruptedException, ExecutionException {
    List<Callable<HttpResponse<String>>> eight =
        IntStream.range(0, 8)
            .mapToObj(i -> first(i % 2 == 0 ? web : other, i < 4 ? "Ash Lane" : "Yard " + i))
            .toList();
    List<Integer> statuses = new ArrayList<>();
    try (ExecutorService crowd = Executors.newVirtualThreadPerTaskExecutor()) {
      for (Future<HttpResponse<String>> answer : crowd.invokeAll(eight)) {
        statuses.add(answer.get().statusCode());
      }
    }
    Collections.sort(statuses);
    assertEquals(List.of(201, 409, 409, 409, 409, 409, 409, 409), statuses);
    assertTrue(other.get("/api/studios").body().contains("\"closed\": false"));
    assertEquals(200, web.get("/api/book").statusCode());
  }

  private static Callable<HttpResponse<String>> first(Web web, String name) {
    String body = "{\"name\": \"" + name + "\", \"begin\": \"demo\"}";
    return () -> web.send("POST", "/api/studios", body);
  }

  private static void aHundredMakeOne(Web web) throws InterruptedException, ExecutionException {
    for (String creation : CREATIONS) {
      String[] words = creation.split("[|]", -1);
      aHundredMakeOne(web, words[0], words[1], Integer.parseInt(words[2]));
    }
    System.out.println(CREATIONS.size() + " creations asked for " + MANY + " times at once: one");
  }

  private static void aHundredMakeOne(Web web, String path, String body, int status)
      throws InterruptedException, ExecutionException {
    int before = count(web, path);
    Callable<HttpResponse<String>> ask =
        () -> web.send("POST", path, body.replace('\'', '"'), "Idempotency-Key", "one " + path);
    List<Future<HttpResponse<String>>> answers;
    try (ExecutorService crowd = Executors.newVirtualThreadPerTaskExecutor()) {
      answers = crowd.invokeAll(IntStream.range(0, MANY).mapToObj(i -> ask).toList());
    }
    for (Future<HttpResponse<String>> answer : answers) {
      assertEquals(status, answer.get().statusCode(), answer.get().body());
    }
    Set<String> ids = answers.stream().map(ManyAtOnceTest::id).collect(Collectors.toSet());
    assertEquals(1, ids.size(), "one thing for all: " + ids);
    assertEquals(before + 1, count(web, path));
  }

  private static String id(Future<HttpResponse<String>> answer) {
    HttpResponse<String> got = answer.resultNow();
    return got.headers()
        .firstValue("Location")
        .orElseGet(() -> got.body().replaceFirst("(?s).*\"id\": \"([^\"]+)\".*", "$1"));
  }

  private static int count(Web web, String path) {
    String list = web.get(path + "?limit=200").body();
    return path.equals("/api/pins")
        ? list.split("\"kind\"", -1).length
        : list.split("\"id\"", -1).length;
  }

  @Test
  void answersArePackedForWhoTakesThemAndAskedForAnewEachTime() {
    try (Web web = Web.demo(folder)) {
      arePacked(web);
    }
  }

  private static void arePacked(Web web) {
    HttpResponse<String> plain = web.get("/api/book");
    assertTrue(plain.headers().firstValue("Content-Encoding").isEmpty(), "not asked for");
    HttpResponse<String> packed = web.get("/api/book", "Accept-Encoding", "gzip");
    assertEquals("gzip", packed.headers().firstValue("Content-Encoding").orElse("none"));
    assertEquals(
        "private, no-cache", packed.headers().firstValue("Cache-Control").orElse("nothing"));
    assertTrue(
        packed.headers().allValues("Vary").stream().anyMatch(v -> v.contains("Accept-Encoding")),
        "packed or not by what is asked for: " + packed.headers().map());
    String tag = packed.headers().firstValue("ETag").orElseThrow();
    String again = web.get("/api/book").headers().firstValue("ETag").orElseThrow();
    assertEquals(304, web.get("/api/book", "If-None-Match", tag).statusCode(), again);
  }
}
