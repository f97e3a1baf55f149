package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.json.Noted;
import strickle.json.PlanFile;
import strickle.plan.Lot;
import strickle.plan.Plan;
import strickle.plan.Task;
import strickle.plan.Weighed;

/** Taking over what was answered, and beginning anew. */
class TakeRoutesTest {

  private static final String QUICK = "{\"from\": \"2027-03-01T00:00\", \"schedules\": 20}";
  private static final String PROMISE =
      "{\"piece\": \"doorstop-brick\", \"quantity\": 2, \"order\": \"N-1\", \"schedules\": 5}";

  @TempDir Path folder;

  private Web web;

  @BeforeEach
  void start() {
    web = Web.demo(folder);
    String id = web.planned(QUICK);
    web.send("POST", "/api/plans/" + id + "/accept", "", "If-Match", "*");
  }

  @AfterEach
  void stop() {
    web.close();
  }

  @Test
  void aPromiseIsTakenOverAsItWasAnsweredAndUndoneInOne() {
    String before = web.get("/api/export").body();
    String answer = web.send("POST", "/api/promise", PROMISE).body();
    String ready = answer.replaceFirst("(?s).*?\"kept\": .*?\"ready\": \"([^\"]+)\".*", "$1");
    String taken = "{\"date\": \"kept\", \"promise\": " + PROMISE + "}";
    assertEquals(428, web.send("POST", "/api/promise/take", taken).statusCode());
    HttpResponse<String> put = take("promise", taken);
    assertEquals(200, put.statusCode(), put.body());
    String due = web.get("/api/orders/N-1").body();
    assertTrue(due.contains(ready.substring(0, 16)), ready + " " + due);
    assertTrue(web.get("/api/why").body().contains("\"N-1\""), "the plan in use has it");
    assertEquals(200, web.send("POST", "/api/undo", "", "If-Match", "*").statusCode());
    assertEquals(before, web.get("/api/export").body());
  }

  @Test
  void nothingIsTakenOverThatWasAnsweredOfAnotherBook() {
    String tag = tag();
    web.send("POST", "/api/stations", "{\"id\": \"r\", \"name\": \"rack\", \"places\": 4}");
    String taken = "{\"date\": \"kept\", \"promise\": " + PROMISE + "}";
    HttpResponse<String> stale = web.send("POST", "/api/promise/take", taken, "If-Match", tag);
    assertEquals(412, stale.statusCode(), stale.body());
    assertTrue(stale.body().contains("station created"), stale.body());
    assertEquals(404, web.get("/api/orders/N-1").statusCode());
  }

  @Test
  void aDateThatIsNotOfferedIsRefused() {
    String taken = "{\"date\": \"latest\", \"promise\": " + PROMISE + "}";
    HttpResponse<String> none = take("promise", taken);
    assertEquals(422, none.statusCode(), none.body());
    assertTrue(none.body().contains("$.date"), none.body());
  }

  @Test
  void changesThatWereTriedAreMade() {
    String forms = web.get("/api/forms").body();
    String id = forms.replaceFirst("(?s).*?\"id\": \"([^\"]+)\".*", "$1");
    String before = web.get("/api/forms/" + id).body();
    HttpResponse<String> made =
        take("what-if", "{\"changes\": [\"form:" + id + "+1\"], \"schedules\": 20}");
    assertEquals(200, made.statusCode(), made.body());
    assertNotEquals(before, web.get("/api/forms/" + id).body());
    assertEquals(422, take("what-if", "{}").statusCode());
  }

  @Test
  void ofAPlanUnderWayAPromiseIsTakenOverOnceAllThatHappenedIsInIt() {
    Plan plan = PlanFile.parse(web.get("/api/plan-in-use").body());
    Task pour = plan.tasks().get(0);
    String poured = Noted.poured(pour);
    assertEquals(201, web.send("POST", "/api/progress", poured).statusCode());
    String taken = "{\"date\": \"kept\", \"promise\": " + PROMISE + "}";
    HttpResponse<String> early = take("promise", taken);
    assertEquals(409, early.statusCode(), early.body());
    assertTrue(early.body().contains("Lay the rest out anew"), early.body());
    layTheRestOut(pour);
    HttpResponse<String> put = take("promise", taken);
    assertEquals(200, put.statusCode(), put.body());
    Plan now = PlanFile.parse(web.get("/api/plan-in-use").body());
    assertTrue(now.history().isPresent());
    assertTrue(
        now.tasks().stream().anyMatch(task -> isAsItWas(task, pour)),
        "what has happened stays as it was");
    assertTrue(now.orders().stream().anyMatch(order -> order.order().equals("N-1")));
  }

  @Test
  void whatToBuyForAPlanUnderWayLeavesOutWhatWasCounted() {
    Task pour = PlanFile.parse(web.get("/api/plan-in-use").body()).tasks().get(0);
    web.send("POST", "/api/progress", Noted.poured(pour));
    layTheRestOut(pour);
    Lot lot =
        PlanFile.parse(web.get("/api/plan-in-use").body()).lots().stream()
            .filter(one -> one.id().equals(pour.lot()))
            .findFirst()
            .orElseThrow();
    Weighed first = lot.weighOut().get(0);
    String all = web.get("/api/shopping").body();
    String counted = web.get("/api/shopping?counted=" + pour.end().toLocalDateTime()).body();
    // What the pour weighed out has left the stock that was counted after it; to a tenth.
    double left = needed(all, first.material()) - needed(counted, first.material());
    assertEquals(first.grams(), left, 0.11, counted);
    assertEquals(400, web.get("/api/shopping?counted=yesterday").statusCode());
  }

  private static boolean isAsItWas(Task task, Task was) {
    return task.kind() == was.kind()
        && task.lot().equals(was.lot())
        && task.person().equals(was.person())
        && task.start().equals(was.start())
        && task.end().equals(was.end());
  }

  private static double needed(String list, String material) {
    String of = "(?s).*\"material\": \"" + material + "\",\\s*\"needed\": ([0-9.]+).*";
    assertTrue(list.matches(of), list);
    return Double.parseDouble(list.replaceFirst(of, "$1"));
  }

  private void layTheRestOut(Task pour) {
    String when = pour.end().toLocalDateTime().plusHours(1).toString();
    String place = web.asked("/api/replan", "{\"now\": \"" + when + "\", \"schedules\": 20}");
    web.over(place);
    String anew = place.substring(place.lastIndexOf('/') + 1);
    HttpResponse<String> accepted =
        web.send("POST", "/api/plans/" + anew + "/accept", "", "If-Match", "*");
    assertEquals(200, accepted.statusCode(), accepted.body());
  }

  @Test
  void aStudioBeginsAnewAndComesBackByOneUndo() {
    String before = web.get("/api/export").body();
    String empty = "{\"name\": \"Lime Yard\", \"begin\": \"empty\", \"currency\": \"EUR\"}";
    HttpResponse<String> begun = web.send("POST", "/api/begin", empty, "If-Match", tag());
    assertEquals(200, begun.statusCode(), begun.body());
    assertTrue(web.get("/api/pieces").body().contains("\"items\": []"));
    assertTrue(web.get("/api/studio").body().contains("Lime Yard"));
    assertEquals(404, web.get("/api/plan-in-use").statusCode());
    web.send("POST", "/api/undo", "", "If-Match", "*");
    assertEquals(before, web.get("/api/export").body());
    String wrong = empty.replace("\"currency\": \"EUR\"", "\"castings\": 3");
    assertEquals(422, web.send("POST", "/api/begin", wrong, "If-Match", tag()).statusCode());
  }

  @Test
  void aPieceIsPricedAtAPriceOfOnesOwn() {
    String own = web.get("/api/prices?piece=doorstop-brick&price=123").body();
    assertTrue(own.contains("\"price\": 123"), own);
    assertTrue(!own.contains("lantern-tall-basalt"), "only this piece");
    assertEquals(400, web.get("/api/prices?price=123").statusCode());
    assertEquals(400, web.get("/api/prices?piece=none").statusCode());
  }

  @Test
  void snapshotsComeInPages() {
    for (int i = 0; i < 3; i++) {
      web.send("POST", "/api/snapshots", "{\"why\": \"look " + i + "\"}");
    }
    String first = web.get("/api/snapshots?limit=2").body();
    String next = first.replaceFirst("(?s).*\"next\": \"([^\"]+)\".*", "$1");
    String second = web.get("/api/snapshots?limit=2&after=" + next).body();
    assertTrue(second.contains("\"id\"") && !second.contains(next), first + second);
    assertEquals(400, web.get("/api/snapshots?after=none").statusCode());
  }

  private HttpResponse<String> take(String what, String body) {
    return web.send("POST", "/api/" + what + "/take", body, "If-Match", tag());
  }

  private String tag() {
    return web.get("/api/book").headers().firstValue("ETag").orElseThrow();
  }
}
