package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strickle.web.Page;

class EtagTest {

  @TempDir Path folder;

  private Web web;

  @BeforeEach
  void start() {
    web = Web.demo(folder);
  }

  @AfterEach
  void stop() {
    web.close();
  }

  private List<String> tagged() {
    return List.of(
        "/api/book",
        "/api/pieces",
        "/api/export",
        "/api/openapi.json",
        "/page/" + Page.now().print() + "/app/words.js",
        "/today");
  }

  @Test
  void packedAndPlainHaveTagsOfTheirOwn() throws IOException, InterruptedException {
    for (String path : tagged()) {
      String plain = tag(web.get(path));
      HttpResponse<byte[]> packed = bytes(path);
      assertEquals("gzip", packed.headers().firstValue("Content-Encoding").orElse("none"), path);
      assertNotEquals(plain, tag(packed), path);
      assertTrue(!plain.startsWith("W/") && !tag(packed).startsWith("W/"), path);
      assertEquals(web.get(path).body(), unpacked(packed.body()), path);
      assertEquals(tag(packed), tag(web.send("HEAD", path, "", "Accept-Encoding", "gzip")), path);
    }
  }

  @Test
  void whoHasItInEitherCodingIsToldSoAlsoByAWeakTag() throws IOException, InterruptedException {
    for (String path : tagged()) {
      for (String tag : List.of(tag(web.get(path)), tag(bytes(path)))) {
        for (String known : List.of(tag, "W/" + tag, "\"other\", W/" + tag, "W/\"a,b\"," + tag)) {
          HttpResponse<String> answer = web.get(path, "If-None-Match", known);
          assertEquals(304, answer.statusCode(), path + " " + known);
          assertEquals(tag, tag(answer), "the tag of what is known");
          assertTrue(
              answer.headers().firstValue("Vary").orElse("none").contains("Accept-Encoding"), path);
        }
      }
      assertEquals(304, web.get(path, "If-None-Match", "*").statusCode());
      assertEquals(200, web.get(path, "If-None-Match", "\"other\"").statusCode());
      assertEquals(200, web.get(path, "If-None-Match", "\"a,*,b\"").statusCode());
    }
  }

  @Test
  void whoHasReadItPackedMayChangeItAndAWeakTagIsNotEnough()
      throws IOException, InterruptedException {
    String book = web.get("/api/book").body();
    String packed = tag(bytes("/api/book"));
    assertEquals(412, web.send("PUT", "/api/book", book, "If-Match", "W/" + packed).statusCode());
    assertEquals(200, web.send("PUT", "/api/book", book, "If-Match", packed).statusCode());
    String both = "\"other\", " + packed;
    assertEquals(200, web.send("PUT", "/api/book", book, "If-Match", both).statusCode());
    String within = "\"a,*,b\"";
    assertEquals(412, web.send("PUT", "/api/book", book, "If-Match", within).statusCode());
  }

  @Test
  void theTagsOfIfMatchMayStandInSeveralLines() {
    HttpResponse<String> book = web.get("/api/book");
    HttpResponse<String> changed =
        web.send("PUT", "/api/book", book.body(), "If-Match", "\"other\"", "If-Match", tag(book));
    assertEquals(200, changed.statusCode(), changed.body());
  }

  @Test
  void whoGivesAWeakTagOrNoneIsNotToldOfSomebodyElse() {
    HttpResponse<String> book = web.get("/api/book");
    String tag = tag(book);
    HttpResponse<String> weak = web.send("PUT", "/api/book", book.body(), "If-Match", "W/" + tag);
    assertEquals(412, weak.statusCode());
    assertTrue(weak.body().contains("takes no weak tag (W/)"), weak.body());
    for (String none : List.of(tag.replace("\"", ""), "", "\"r1")) {
      HttpResponse<String> answer = web.send("PUT", "/api/book", book.body(), "If-Match", none);
      assertEquals(400, answer.statusCode(), answer.body());
      assertTrue(answer.body().contains("\"path\": \"If-Match\""), answer.body());
    }
  }

  @Test
  void whatOthersChangedIsToldToWhoReadItPackedToo() throws IOException, InterruptedException {
    String book = web.get("/api/book").body();
    String packed = tag(bytes("/api/book"));
    web.send("POST", "/api/stations", "{\"id\": \"a\", \"name\": \"a rack\", \"places\": 4}");
    HttpResponse<String> stale = web.send("PUT", "/api/book", book, "If-Match", packed);
    assertEquals(412, stale.statusCode());
    assertTrue(stale.body().contains("\"id\": \"a\""), stale.body());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "gzip|true",
        "br, gzip|true",
        "GZIP;q=0.5|true",
        "*|true",
        "gzip;q=0|false",
        "gzip; q=0.000, *|false",
        "*;q=0|false",
        "identity|false",
        "gzipped|false",
      })
  void itIsPackedForWhoTakesItSo(String accepted, boolean packed) {
    assertEquals(packed, Packing.isTaken(Optional.of(accepted)));
  }

  private HttpResponse<byte[]> bytes(String path) throws IOException, InterruptedException {
    HttpRequest request =
        HttpRequest.newBuilder(URI.create("http://localhost:" + web.port() + path))
            .header("Accept-Encoding", "gzip")
            .build();
    try (HttpClient client = HttpClient.newHttpClient()) {
      return client.send(request, HttpResponse.BodyHandlers.ofByteArray());
    }
  }

  private static String unpacked(byte[] packed) throws IOException {
    try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(packed))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static String tag(HttpResponse<?> answer) {
    return answer.headers().firstValue("ETag").orElseThrow();
  }
}
