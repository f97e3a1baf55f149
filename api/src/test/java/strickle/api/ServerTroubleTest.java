package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.time.Instant;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import strickle.store.Database;
import strickle.store.Postgres;
import strickle.store.SettableClock;

/** What becomes of a service whose PostgreSQL goes away. */
@Tag("slow")
class ServerTroubleTest {

  private final SettableClock clock = new SettableClock(Instant.parse("2027-04-05T09:00:00Z"));

  // One that was used a moment ago is not looked at before it is used again.
  @Test
  void connectionsThatWereCutAreMadeAnewAndNothingIsLost() {
    String url = Postgres.freshDatabase();
    try (Web web = served(Database.postgresql(url))) {
      assertEquals(201, rack(web, "a").statusCode());
      Postgres.cutOff(url);
      HttpResponse<String> next = rack(web, "b");
      for (int i = 0; next.statusCode() == 503 && i < 20; i++) {
        assertTrue(next.body().contains("nothing was changed"), next.body());
        next = rack(web, "b");
      }
      assertEquals(201, next.statusCode(), next.body());
      assertEquals(200, web.get("/api/stations/a").statusCode());
    }
  }

  @Test
  void aDatabaseThatIsClosedIsNotWell() {
    Database database = Database.postgresql(Postgres.freshDatabase());
    try (Web web = served(database)) {
      assertEquals(200, web.get("/health").statusCode());
      database.close();
      HttpResponse<String> ill = web.get("/health");
      assertEquals(503, ill.statusCode(), ill.body());
      assertTrue(ill.body().contains("The database cannot be reached"), ill.body());
    }
  }

  /** Whoever asks may wait ten seconds for a connection, so it can take its time. */
  @Test
  void aServerThatIsAwayIsToldAndLaterItGoesOn() {
    String url = Postgres.freshDatabase();
    try (Web web = served(Database.postgresql(url))) {
      assertEquals(201, rack(web, "a").statusCode());
      Postgres.shut(url);
      HttpResponse<String> refused = rack(web, "b");
      assertEquals(503, refused.statusCode(), refused.body());
      assertTrue(refused.body().contains("cannot be reached: nothing was changed"));
      Postgres.open(url);
      untilWell(web);
      assertEquals(200, web.get("/api/stations/a").statusCode());
      assertEquals(404, web.get("/api/stations/b").statusCode());
      assertEquals(201, rack(web, "b").statusCode());
    }
  }

  // Each connection that was cut is noticed when it is used, or a moment later.
  private static void untilWell(Web web) {
    for (int i = 0; i < 50 && web.get("/health").statusCode() != 200; i++) {
      Thread.onSpinWait();
    }
    assertEquals(200, web.get("/health").statusCode());
  }

  private Web served(Database database) {
    Web web = Web.of(database, clock, Listening.here(0));
    web.send("POST", "/api/studios", "{\"name\": \"Ash Lane\", \"begin\": \"demo\"}");
    return web;
  }

  private static HttpResponse<String> rack(Web web, String id) {
    String rack = "{\"id\": \"" + id + "\", \"name\": \"rack\", \"places\": 4}";
    return web.send("POST", "/api/stations", rack);
  }
}
