package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Of which book a plan is, and whether one is in use, as the list of plans says it. */
class PlanBookTest {

  private static final String QUICK =
      "{\"from\": \"2027-03-01T00:00\", \"schedules\": 1, \"seed\": 1}";

  @TempDir Path folder;

  @Test
  void aPlanSaysOfWhichBookItIsAlsoWhenThatHasBeenPutAway() {
    try (Web web = Web.demo(folder)) {
      says(web, false);
      String id = web.planned(QUICK);
      assertTrue(web.get("/api/plans/" + id).body().contains("\"book\": \"Gannet Row Studio\""));
      assertEquals(
          200, web.send("POST", "/api/plans/" + id + "/accept", "", "If-Match", "*").statusCode());
      says(web, true);
      String empty = "{\"name\": \"Ash Lane\", \"begin\": \"empty\"}";
      String[] json = {"If-Match", "*", "Content-Type", "application/json"};
      assertEquals(200, web.send("POST", "/api/begin", empty, json).statusCode());
      says(web, false);
      assertTrue(web.get("/api/plans").body().contains("\"book\": \"Gannet Row Studio\""));
      assertEquals(200, web.send("POST", "/api/undo", "", "If-Match", "*").statusCode());
      says(web, true);
    }
  }

  private static void says(Web web, boolean any) {
    String plans = web.get("/api/plans").body();
    assertTrue(plans.contains("\"anyInUse\": " + any), plans);
  }
}
