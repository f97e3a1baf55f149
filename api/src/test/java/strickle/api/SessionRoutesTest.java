package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.book.Faulty;
import strickle.store.Database;
import strickle.store.SettableClock;
import strickle.store.Studios;

class SessionRoutesTest {

  private static final String PASSWORD = "grey dust on the sill";
  private static final String HASH = Password.hash(PASSWORD);

  @TempDir Path folder;

  private final SettableClock clock = new SettableClock(Instant.parse("2027-04-05T09:00:00Z"));
  private Database database;
  private Web web;

  @BeforeEach
  void start() {
    database = Database.inFolder(folder);
    StudioRoutes.createEmpty(new Studios(database, clock), "Ash Lane", HASH);
    web = Web.of(database, clock, Listening.here(0));
  }

  @AfterEach
  void stop() {
    web.close();
  }

  @Test
  void aStudioWithAPasswordIsShutUntilItIsOpened() {
    assertEquals(401, web.get("/api/book").statusCode());
    assertEquals(401, web.get("/api/session").statusCode());
    assertTrue(web.get("/api/studios").body().contains("\"closed\": true"));
    assertFalse(web.get("/api/studios").body().contains("Ash Lane"));
    assertEquals(200, web.get("/health").statusCode());
    String cookie = cookie(open(PASSWORD));
    assertEquals(200, web.get("/api/book", "Cookie", cookie).statusCode());
    assertTrue(web.get("/api/session", "Cookie", cookie).body().contains("2027-05-05T09:00:00Z"));
    assertTrue(web.get("/api/studios", "Cookie", cookie).body().contains("Ash Lane"));
    assertEquals(401, web.get("/api/book", "Cookie", cookie + "x").statusCode());
  }

  @Test
  void whereSeveralAreAndOneHasNoPasswordItIsToldHowItGetsOne() {
    assertFalse(web.get("/api/book").body().contains("--set-password"));
    Studios studios = new Studios(database, clock);
    String second = StudioRoutes.createEmpty(studios, "Birch Yard", HASH).id();
    assertFalse(web.get("/api/book").body().contains("--set-password"));
    studios.setPasswordHash(second, Optional.empty());
    HttpResponse<String> shut = web.get("/api/book");
    assertEquals(401, shut.statusCode());
    assertTrue(shut.body().contains("serve --set-password --studio NAME"), shut.body());
    assertFalse(shut.body().contains("Birch Yard"), shut.body());
  }

  @Test
  void headIsAnsweredAsGetIsWithoutTheBody() {
    String cookie = cookie(open(PASSWORD));
    for (String path :
        List.of("/api/book", "/api/orders/nope", "/api/orders", "/health", "/nope", "/")) {
      isAnsweredAlike(path, "Cookie", cookie);
      isAnsweredAlike(path, "X-Nothing", "nothing");
    }
    assertEquals(401, web.send("HEAD", "/api/book", "").statusCode());
    assertEquals(404, web.send("HEAD", "/api/orders/nope", "", "Cookie", cookie).statusCode());
    assertEquals(404, web.send("HEAD", "/page/none/none.js", "").statusCode());
  }

  private void isAnsweredAlike(String path, String... headers) {
    HttpResponse<String> got = web.get(path, headers);
    HttpResponse<String> head = web.send("HEAD", path, "", headers);
    assertEquals(got.statusCode(), head.statusCode(), path);
    assertEquals("", head.body(), path);
    for (String name : List.of("ETag", "Content-Type", "Cache-Control")) {
      assertEquals(got.headers().allValues(name), head.headers().allValues(name), path);
    }
  }

  @Test
  void noScriptAndNoOtherSiteCanUseTheCookie() {
    String header = open(PASSWORD).headers().firstValue("Set-Cookie").orElseThrow();
    assertTrue(header.endsWith("; Path=/; Max-Age=2592000; HttpOnly; SameSite=Strict"), header);
    assertTrue(SessionCookie.of("t", Duration.ofDays(1), true).endsWith("; Secure"));
  }

  @Test
  void aSessionEndsWhenItIsClosedOrOverOrThePasswordIsAnother() {
    String closed = cookie(open(PASSWORD));
    assertEquals(204, web.send("DELETE", "/api/session", "", "Cookie", closed).statusCode());
    assertEquals(401, web.get("/api/book", "Cookie", closed).statusCode());
    String over = cookie(open(PASSWORD));
    clock.set(Instant.parse("2027-05-05T09:00:00Z"));
    assertEquals(401, web.get("/api/book", "Cookie", over).statusCode());
    String before = cookie(open(PASSWORD));
    Studios studios = new Studios(database, clock);
    studios.setPasswordHash(studios.all().get(0).id(), Optional.of(HASH));
    assertEquals(401, web.get("/api/book", "Cookie", before).statusCode());
  }

  @Test
  void guessingIsSlowedDown() {
    for (int i = 0; i < 3; i++) {
      assertEquals(401, open("not the one, really").statusCode());
    }
    HttpResponse<String> paused = open(PASSWORD);
    assertEquals(429, paused.statusCode());
    assertEquals("3", paused.headers().firstValue("Retry-After").orElseThrow());
    clock.set(clock.instant().plusSeconds(3));
    assertEquals(200, open(PASSWORD).statusCode());
  }

  @Test
  void guessingManyAtOnceIsSlowedDownLikeGuessingOneAfterTheOther() throws Exception {
    List<Integer> statuses = new ArrayList<>();
    Callable<HttpResponse<String>> guess = () -> open("not the one, really");
    try (ExecutorService crowd = Executors.newVirtualThreadPerTaskExecutor()) {
      for (Future<HttpResponse<String>> answer : crowd.invokeAll(Collections.nCopies(8, guess))) {
        statuses.add(answer.get().statusCode());
      }
    }
    Collections.sort(statuses);
    assertEquals(List.of(401, 401, 401, 429, 429, 429, 429, 429), statuses);
  }

  @Test
  void aNameThatIsNoStudioIsAnsweredLikeAWrongPassword() {
    String body = "{\"studio\": \"Nowhere\", \"password\": \"" + PASSWORD + "\"}";
    HttpResponse<String> unknown = web.send("POST", "/api/session", body);
    assertEquals(401, unknown.statusCode());
    assertEquals(open("not the one, really").body(), unknown.body());
  }

  @Test
  void nobodyElseIsServedWithoutAPassword(@TempDir Path other) {
    Listening everywhere = new Listening("0.0.0.0", 0, Set.of(), false, Duration.ofSeconds(5));
    try (Database empty = Database.inFolder(other)) {
      assertThrows(Faulty.class, () -> Service.start(empty, everywhere, clock, "test"));
    }
    try (Web open = Web.of(Database.inFolder(other), clock, Listening.here(0))) {
      open.send("POST", "/api/studios", "{\"name\": \"Open\", \"begin\": \"empty\"}");
      assertEquals(200, open.get("/api/book").statusCode());
    }
    try (Database unlocked = Database.inFolder(other)) {
      assertThrows(Faulty.class, () -> Service.start(unlocked, everywhere, clock, "test"));
    }
  }

  @Test
  void whatIsReachedThroughSomethingInFrontNeedsAPasswordToo(@TempDir Path other) {
    try (Web open = Web.of(Database.inFolder(other), clock, Listening.here(0))) {
      open.send("POST", "/api/studios", "{\"name\": \"Open\", \"begin\": \"empty\"}");
    }
    try (Database unlocked = Database.inFolder(other)) {
      assertEquals("--name", refused(unlocked, here(Set.of("bench.lan"), false)));
      assertEquals("--behind-tls", refused(unlocked, here(Set.of(), true)));
    }
    Database locked = Database.inFolder(other);
    Studios studios = new Studios(locked, clock);
    studios.setPasswordHash(studios.all().get(0).id(), Optional.of(HASH));
    try (Web shut = Web.of(locked, clock, here(Set.of("bench.lan"), true))) {
      assertEquals(401, shut.get("/api/book").statusCode());
      studios.setPasswordHash(studios.all().get(0).id(), Optional.empty());
      assertEquals(401, shut.get("/api/book").statusCode(), "a password taken away later");
    }
  }

  private static Listening here(Set<String> names, boolean behindTls) {
    return new Listening(Listening.LOOPBACK, 0, names, behindTls, Duration.ofSeconds(5));
  }

  private String refused(Database database, Listening listening) {
    return assertThrows(Faulty.class, () -> Service.start(database, listening, clock, "test"))
        .faults()
        .get(0)
        .path();
  }

  private HttpResponse<String> open(String password) {
    String body = "{\"studio\": \"Ash Lane\", \"password\": \"" + password + "\"}";
    return web.send("POST", "/api/session", body);
  }

  private static String cookie(HttpResponse<String> opened) {
    assertEquals(200, opened.statusCode(), opened.body());
    return opened.headers().firstValue("Set-Cookie").orElseThrow().split(";", 2)[0];
  }
}
