package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.store.Database;
import strickle.store.Postgres;

/** A studio that moves from a file to a server and back is the same studio. */
class StudioMovesTest {

  private static final String QUICK =
      "{\"from\": \"2027-03-01T00:00\", \"schedules\": 20, \"seed\": 1}";
  private static final String EMPTY = "{\"name\": \"Ash Lane\", \"begin\": \"empty\"}";
  private static final List<String> PLACES =
      List.of(
          "/api/export",
          "/api/book",
          "/api/studio",
          "/api/pieces",
          "/api/progress",
          "/api/drying",
          "/api/plan-in-use",
          "/api/cautions?plan=in-use");

  @Test
  void fromAFileToAServerAndBackEverythingIsTheSame(@TempDir Path here, @TempDir Path there) {
    List<String> first;
    try (Web file = Web.demo(here)) {
      lived(file);
      first = everything(file);
      assertEquals(PLACES.size(), new HashSet<>(first).size());
    }
    List<String> served;
    try (Web server = Web.on(Database.postgresql(Postgres.freshDatabase()))) {
      served = moved(first.get(0), server);
    }
    assertEquals(first, served);
    try (Web back = Web.empty(there)) {
      assertEquals(first, moved(served.get(0), back));
      assertEquals(200, done(back, "/api/undo"));
      assertNotEquals(first.get(0), back.get("/api/export").body());
    }
    System.out.println(
        PLACES.size() + " places of a studio the same in a file, on a server, and in a file again");
  }

  // A plan in use, something that happened to it, a drying log, an order with letters of all kinds.
  private static void lived(Web web) {
    String id = web.planned(QUICK);
    assertEquals(200, done(web, "/api/plans/" + id + "/accept"));
    String away =
        "{\"kind\": \"away\", \"person\": \"maren\", \"from\": \"2027-03-10T11:00\","
            + " \"to\": \"2027-03-11T00:00\"}";
    assertEquals(201, web.send("POST", "/api/progress", away).statusCode());
    assertEquals(201, web.send("POST", "/api/drying", Collection.DRYING.example()).statusCode());
    String name = "žluťoučký 🪨 \\u202e \\\" ' ; -- %";
    String rack = "{\"id\": \"r-9\", \"name\": \"" + name + "\", \"places\": 4}";
    assertEquals(201, web.send("POST", "/api/stations", rack).statusCode());
  }

  private static int done(Web web, String path) {
    return web.send("POST", path, "", "If-Match", "*").statusCode();
  }

  private static List<String> moved(String export, Web to) {
    to.send("POST", "/api/studios", EMPTY);
    assertEquals(200, to.send("PUT", "/api/export", export, "If-Match", "*").statusCode());
    return everything(to);
  }

  private static List<String> everything(Web web) {
    return PLACES.stream().map(place -> web.get(place).body()).toList();
  }
}
