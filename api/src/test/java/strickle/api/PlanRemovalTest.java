package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(value = 180, unit = TimeUnit.SECONDS)
class PlanRemovalTest {

  private static final String QUICK =
      "{\"from\": \"2027-03-01T00:00\", \"schedules\": 100, \"seed\": 1}";

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
  void thePlanInUseIsNotRemovedAndUndoFindsOneThatWasInUseAndIsRemoved() {
    String first = used(QUICK);
    String before = web.get("/api/plan-in-use").body();
    assertEquals(1, count(web.get("/api/plans").body(), "\"inUse\": \"" + first + '"'));
    String second = used("{\"from\": \"2027-03-01T00:00\", \"schedules\": 1, \"seed\": 7}");
    HttpResponse<String> refused = web.send("DELETE", "/api/plans/" + second, "");
    assertEquals(409, refused.statusCode(), refused.body());
    assertTrue(refused.body().contains("Work by another first, then remove it."), refused.body());
    assertEquals(204, web.send("DELETE", "/api/plans/" + first, "").statusCode());
    String after = web.get("/api/plan-in-use").body();
    moved("undo");
    assertEquals(before, web.get("/api/plan-in-use").body());
    assertEquals(0, count(web.get("/api/plans").body(), "\"inUse\""));
    assertEquals(1, count(web.get("/api/plans").body(), "\"anyInUse\": true"));
    assertEquals(200, web.get("/api/plans/in-use/compare/" + second).statusCode());
    moved("redo");
    assertEquals(after, web.get("/api/plan-in-use").body());
    moved("undo");
    assertEquals(204, web.send("DELETE", "/api/plans/" + second, "").statusCode());
    moved("redo");
    assertEquals(after, web.get("/api/plan-in-use").body());
    assertTrue(web.get("/api/plans").body().contains("\"items\": []"));
  }

  private String used(String wanted) {
    String id = web.planned(wanted);
    HttpResponse<String> taken =
        web.send("POST", "/api/plans/" + id + "/accept", "", "If-Match", "*");
    assertEquals(200, taken.statusCode(), taken.body());
    return id;
  }

  private void moved(String how) {
    assertEquals(200, web.send("POST", "/api/" + how, "", "If-Match", "*").statusCode(), how);
  }

  private static int count(String text, String part) {
    return (text.length() - text.replace(part, "").length()) / part.length();
  }
}
