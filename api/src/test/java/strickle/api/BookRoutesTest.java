package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.demo.Demo;
import strickle.demo.Size;
import strickle.json.BookFile;
import strickle.json.Meshes;

class BookRoutesTest {

  private static final String RACK = "{\"id\": \"rack-9\", \"name\": \"rack nine\", \"places\": 4}";

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

  @Test
  void theBookOfTheDemoIsThere() {
    HttpResponse<String> book = web.get("/api/book");
    assertEquals(200, book.statusCode());
    assertEquals(Demo.book(Size.MEDIUM), BookFile.parse(book.body(), Meshes.in(folder)));
    String tag = tag(book);
    assertEquals(304, web.get("/api/book", "If-None-Match", tag).statusCode());
  }

  @Test
  void aThingIsCreatedReadChangedAndRemoved() {
    HttpResponse<String> made = web.send("POST", "/api/stations", RACK);
    assertEquals(201, made.statusCode(), made.body());
    assertEquals("/api/stations/rack-9", made.headers().firstValue("Location").orElseThrow());
    HttpResponse<String> read = web.get("/api/stations/rack-9");
    assertEquals(tag(made), tag(read));
    String more = RACK.replace("4", "6");
    HttpResponse<String> changed =
        web.send("PUT", "/api/stations/rack-9", more, "If-Match", tag(read));
    assertEquals(200, changed.statusCode(), changed.body());
    assertNotEquals(tag(read), tag(changed));
    HttpResponse<String> gone =
        web.send("DELETE", "/api/stations/rack-9", "", "If-Match", tag(changed));
    assertEquals(204, gone.statusCode(), gone.body());
    assertEquals(404, web.get("/api/stations/rack-9").statusCode());
  }

  @Test
  void nobodyWritesOverAnothersChange() {
    String first = tag(web.get("/api/book"));
    web.send("POST", "/api/stations", RACK);
    assertEquals(428, web.send("PUT", "/api/stations/rack-9", RACK).statusCode());
    HttpResponse<String> stale =
        web.send("PUT", "/api/stations/rack-9", RACK.replace("4", "5"), "If-Match", "\"old\"");
    assertEquals(412, stale.statusCode());
    assertTrue(stale.body().contains("\"places\""), stale.body());
    HttpResponse<String> wholeBook =
        web.send("PUT", "/api/book", web.get("/api/book").body(), "If-Match", first);
    assertEquals(412, wholeBook.statusCode());
    assertTrue(wholeBook.body().contains("station created"), wholeBook.body());
  }

  @Test
  void whatIsWrongIsToldFaultByFaultAndChangesNothing() {
    String tag = tag(web.get("/api/book"));
    HttpResponse<String> wrong =
        web.send("POST", "/api/stations", "{\"id\": \"r\", \"places\": -1, \"colour\": 3}");
    assertEquals(422, wrong.statusCode());
    assertTrue(
        wrong.headers().firstValue("Content-Type").get().startsWith("application/problem+json"));
    assertTrue(wrong.body().contains("$.name"), wrong.body());
    assertTrue(wrong.body().contains("$.colour"), wrong.body());
    assertEquals(422, web.send("POST", "/api/stations", "{").statusCode());
    assertEquals(422, web.send("POST", "/api/stations", "").statusCode());
    HttpResponse<String> unknown =
        web.send(
            "POST",
            "/api/orders",
            "{\"id\": \"O\", \"due\": \"2027-04-16T17:00\","
                + " \"lines\": [{\"piece\": \"nowhere\", \"quantity\": 1}]}");
    assertEquals(422, unknown.statusCode());
    assertTrue(unknown.body().contains("nowhere"), unknown.body());
    assertEquals(tag, tag(web.get("/api/book")));
  }

  @Test
  void whatIsThereAlreadyIsNotCreatedAgain() {
    assertEquals(201, web.send("POST", "/api/stations", RACK).statusCode());
    assertEquals(409, web.send("POST", "/api/stations", RACK).statusCode());
    String other = RACK.replace("rack-9", "rack-8");
    HttpResponse<String> first = web.send("POST", "/api/stations", other, "Idempotency-Key", "k");
    HttpResponse<String> again = web.send("POST", "/api/stations", other, "Idempotency-Key", "k");
    assertEquals(201, first.statusCode(), first.body());
    assertEquals(first.body(), again.body());
    assertEquals(201, again.statusCode());
    assertEquals(422, web.send("POST", "/api/stations", RACK, "Idempotency-Key", "k").statusCode());
  }

  @Test
  void aListComesInPages() {
    HttpResponse<String> first = web.get("/api/pieces?limit=2");
    assertEquals(200, first.statusCode());
    assertTrue(first.body().contains("\"next\""), first.body());
    assertEquals(400, web.get("/api/pieces?limit=0").statusCode());
    assertEquals(400, web.get("/api/pieces?after=nowhere").statusCode());
  }

  @Test
  void everyChangeIsInTheJournalAndCanBeUndone() {
    String before = web.get("/api/book").body();
    web.send("POST", "/api/stations", RACK, "Strickle-Who", "Maren");
    String journal = web.get("/api/journal").body();
    assertTrue(journal.contains("station created") && journal.contains("Maren"), journal);
    assertTrue(web.get("/api/journal/1").body().contains("rack nine"));
    assertEquals(200, web.send("POST", "/api/undo", "", "If-Match", "*").statusCode());
    assertEquals(before, web.get("/api/book").body());
    assertEquals(200, web.send("POST", "/api/redo", "", "If-Match", "*").statusCode());
    assertNotEquals(before, web.get("/api/book").body());
    assertEquals(409, web.send("POST", "/api/redo", "", "If-Match", "*").statusCode());
  }

  @Test
  void aStudioExportedAndImportedIsTheSame() {
    String file = web.get("/api/export").body();
    web.send("POST", "/api/stations", RACK);
    String tag = tag(web.get("/api/book"));
    HttpResponse<String> back = web.send("PUT", "/api/export", file, "If-Match", tag);
    assertEquals(200, back.statusCode(), back.body());
    assertEquals(file, web.get("/api/export").body());
  }

  @Test
  void aStrangersNameIsRefusedBeforeAnythingElse() {
    HttpResponse<String> foreign =
        web.send("POST", "/api/stations", RACK, "Origin", "http://evil.example");
    assertEquals(403, foreign.statusCode());
    assertEquals(404, web.get("/api/stations/rack-9").statusCode());
  }

  @Test
  void whatIsNotThereIsRefusedLikeEverythingElse() {
    for (String path :
        List.of("/api/nowhere", "/api/book/nowhere", "/api/stations/none", "/api/journal/77")) {
      HttpResponse<String> none = web.get(path);
      assertEquals(404, none.statusCode(), path);
      assertTrue(none.body().contains("\"title\": \"Not there\""), none.body());
    }
    HttpResponse<String> method = web.send("DELETE", "/api/book", "");
    assertEquals(405, method.statusCode());
    assertTrue(method.body().contains("\"title\": \"Not this method\""), method.body());
    String allowed = method.headers().firstValue("Allow").orElse("none told");
    assertEquals(Set.of("GET", "HEAD", "PUT"), Set.of(allowed.split(", ")));
  }

  private static String tag(HttpResponse<String> response) {
    return response.headers().firstValue("ETag").orElseThrow();
  }
}
