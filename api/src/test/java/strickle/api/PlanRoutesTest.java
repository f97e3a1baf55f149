package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import strickle.demo.Demo;
import strickle.demo.Size;
import strickle.json.Noted;
import strickle.json.PlanFile;
import strickle.plan.Effort;
import strickle.plan.Plan;
import strickle.plan.PlanRequest;
import strickle.plan.Planning;
import strickle.plan.audit.Audit;

@Timeout(value = 180, unit = TimeUnit.SECONDS)
class PlanRoutesTest {

  private static final String QUICK =
      "{\"from\": \"2027-03-01T00:00\", \"schedules\": 100, \"seed\": 1}";
  private static final String LONG = "{\"seconds\": 600}";

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
  void aPlanIsWhatTheCommandLineWouldMakeOfTheSameBook() {
    String id = web.planned(QUICK);
    PlanRequest request = new PlanRequest(Demo.start(), Effort.ofSchedules(100), 1);
    Plan made = Planning.of(Demo.book(Size.MEDIUM), request, better -> {}).run();
    HttpResponse<String> result = web.get("/api/plans/" + id + "/result");
    assertEquals(PlanFile.write(made), result.body());
    String tag = result.headers().firstValue("ETag").orElseThrow();
    assertEquals(304, web.get("/api/plans/" + id + "/result", "If-None-Match", tag).statusCode());
    String state = web.get("/api/plans/" + id).body();
    assertTrue(state.contains("\"state\": \"done\""), state);
    assertTrue(state.contains("\"weightedLateHours\""), state);
    assertTrue(web.get("/api/plans").body().contains(id));
  }

  @Test
  void thePlanInUseIsTheOneAcceptedLastAndThatCanBeUndone() {
    assertEquals(404, web.get("/api/plan-in-use").statusCode());
    String first = web.planned(QUICK);
    String second = web.planned("{\"from\": \"2027-03-01T00:00\", \"schedules\": 1, \"seed\": 7}");
    assertEquals(
        200, web.send("POST", "/api/plans/" + first + "/accept", "", "If-Match", "*").statusCode());
    assertEquals(result(first), web.get("/api/plan-in-use").body());
    assertEquals(
        200,
        web.send("POST", "/api/plans/" + second + "/accept", "", "If-Match", "*").statusCode());
    assertEquals(result(second), web.get("/api/plan-in-use").body());
    assertTrue(web.get("/api/journal").body().contains("a plan accepted"));
    web.send("POST", "/api/undo", "", "If-Match", "*");
    assertEquals(result(first), web.get("/api/plan-in-use").body());
    String moved = web.get("/api/plans/in-use/compare/" + second).body();
    assertTrue(moved.contains("\"moves\""), moved);
    String same = web.get("/api/plans/" + first + "/compare/in-use").body();
    assertTrue(same.contains("\"moved\": 0"), same);
    web.send("POST", "/api/undo", "", "If-Match", "*");
    assertEquals(404, web.get("/api/plan-in-use").statusCode());
  }

  @Test
  void everybodyWhoListensHearsOfProgressAndOfTheEnd()
      throws ExecutionException, InterruptedException {
    String place = web.asked("/api/plans", "{\"seconds\": 3}");
    try (ExecutorService people = Executors.newFixedThreadPool(5)) {
      List<Future<String>> heard =
          IntStream.range(0, 5)
              .mapToObj(i -> people.submit(() -> web.get(place + "/events").body()))
              .toList();
      for (Future<String> one : heard) {
        String events = one.get();
        assertTrue(events.contains("event: progress\ndata: {"), events);
        for (String figure : List.of("elapsedSeconds", "schedules", "weightedLateHours")) {
          assertTrue(events.contains('"' + figure + "\":"), events);
        }
        assertTrue(events.endsWith("\n\n"), events);
        assertEquals(1, count(events, "event: done"), events);
      }
    }
    assertEquals(404, web.get("/api/plans/none/events").statusCode());
  }

  @Test
  void whoListensIsLetGoWhenTheServiceEndsAndHearsTheEndFromTheNext() throws Exception {
    String place = web.asked("/api/plans", LONG);
    until(place, "\"state\": \"running\"");
    try (HttpClient listener = HttpClient.newHttpClient()) {
      URI events = URI.create("http://localhost:" + web.port() + place + "/events");
      HttpResponse<InputStream> heard =
          listener.send(
              HttpRequest.newBuilder(events).build(), HttpResponse.BodyHandlers.ofInputStream());
      String first = new String(heard.body().readNBytes(1), StandardCharsets.UTF_8);
      web.close();
      String all = first + new String(heard.body().readAllBytes(), StandardCharsets.UTF_8);
      assertTrue(all.startsWith("retry: ") && !all.contains("event: done"), all);
      assertTrue(all.endsWith("\n\n"), "no event is cut in two: " + all);
    }
    web = Web.empty(folder);
    until(place, "\"state\": \"running\"");
    assertEquals(202, web.send("POST", place + "/stop", "").statusCode());
    assertTrue(web.over(place).contains("\"state\":\"stopped\""));
  }

  @Test
  void whoAsksForTheHeadOfEventsDoesNotListen() {
    String place = web.asked("/api/plans", LONG);
    until(place, "\"state\": \"running\"");
    HttpResponse<String> head = web.send("HEAD", place + "/events", "");
    assertEquals(200, head.statusCode());
    assertEquals("text/event-stream", head.headers().firstValue("Content-Type").orElse("nothing"));
    assertEquals(202, web.send("POST", place + "/stop", "").statusCode(), "still running");
  }

  @Test
  void aStoppedPlanHasItsBestAndARemovedOneIsGone() {
    String place = web.asked("/api/plans", LONG);
    until(place, "\"state\": \"running\"");
    HttpResponse<String> underWay = web.send("DELETE", place, "");
    assertEquals(409, underWay.statusCode(), underWay.body());
    assertTrue(underWay.body().contains("Stop it first"), underWay.body());
    assertEquals(202, web.send("POST", place + "/stop", "").statusCode());
    assertTrue(web.over(place).contains("\"stopped\""));
    Plan best = PlanFile.parse(web.get(place + "/result").body());
    assertEquals(List.of(), Audit.of(Demo.book(Size.MEDIUM), best));
    assertEquals(204, web.send("DELETE", place, "").statusCode());
    assertEquals(404, web.get(place).statusCode());
    assertEquals(404, web.send("POST", place + "/stop", "").statusCode());
    assertEquals(404, web.send("DELETE", place, "").statusCode());
  }

  @Test
  void manyOfTheSameAskedAtOnceAreOnePlanAndTooManyAreRefused()
      throws ExecutionException, InterruptedException {
    try (ExecutorService people = Executors.newFixedThreadPool(16)) {
      List<Future<String>> asked =
          IntStream.range(0, 30).mapToObj(i -> people.submit(() -> located("same"))).toList();
      String first = asked.get(0).get();
      for (Future<String> one : asked) {
        assertEquals(first, one.get());
      }
    }
    HttpResponse<String> full = web.send("POST", "/api/plans", LONG);
    for (int i = 0; full.statusCode() == 202 && i < 30; i++) {
      full = web.send("POST", "/api/plans", LONG);
    }
    assertEquals(429, full.statusCode(), full.body());
    assertTrue(full.body().contains("20 plans are waiting"), full.body());
    String page = web.get("/api/plans?limit=3").body();
    assertTrue(page.contains("\"next\""), page);
    assertEquals(400, web.get("/api/plans?after=none").statusCode());
  }

  @Test
  void whatIsWrongIsToldAllAtOnceAndNothingIsAsked() {
    HttpResponse<String> wrong =
        web.send("POST", "/api/plans", "{\"seconds\": 0, \"schedules\": 2, \"from\": 3}");
    assertEquals(422, wrong.statusCode(), wrong.body());
    HttpResponse<String> both =
        web.send("POST", "/api/plans", "{\"seconds\": 0, \"schedules\": 2}");
    assertEquals(422, both.statusCode());
    assertTrue(both.body().contains("$.seconds"), both.body());
    assertTrue(both.body().contains("either schedules or seconds"), both.body());
    HttpResponse<String> cover = web.send("POST", "/api/plans", "{\"coverPercent\": 20}");
    assertEquals(422, cover.statusCode(), cover.body());
    assertEquals(422, web.send("POST", "/api/plans", "{\"colour\": 1}").statusCode());
    assertTrue(web.get("/api/plans").body().contains("\"items\": []"));
  }

  @Test
  void aPlanUnderWayIsLaidOutAnewWithWhatHasHappened() {
    String id = web.planned(QUICK);
    web.send("POST", "/api/plans/" + id + "/accept", "", "If-Match", "*");
    Plan plan = PlanFile.parse(result(id));
    var pour = plan.tasks().get(0);
    String poured = Noted.poured(pour);
    assertEquals(201, web.send("POST", "/api/progress", poured).statusCode());
    String wanted =
        "{\"now\": \"" + pour.end().toLocalDateTime().plusHours(1) + "\", \"schedules\": 20}";
    String place = web.asked("/api/replan", wanted);
    String end = web.over(place);
    assertTrue(end.contains("\"state\":\"done\""), end);
    assertTrue(end.contains("\"kind\":\"replan\""), end);
    String anew = place.substring(place.lastIndexOf('/') + 1);
    assertNotEquals(result(id), result(anew));
    assertTrue(web.get("/api/progress").body().contains("poured"));
    assertEquals(
        200, web.send("POST", "/api/plans/" + anew + "/accept", "", "If-Match", "*").statusCode());
    assertFalse(web.get("/api/progress").body().contains("poured"));
    assertEquals(202, web.send("POST", "/api/replan", wanted).statusCode());
    web.send("POST", "/api/progress", poured.replace(pour.lot(), "nowhere"));
    HttpResponse<String> unknown = web.send("POST", "/api/replan", wanted);
    assertEquals(422, unknown.statusCode());
    assertTrue(unknown.body().contains("nowhere"), unknown.body());
  }

  @Test
  @Timeout(value = 60, unit = TimeUnit.SECONDS)
  void aPlanIsNotGoneOnWithYearsAfterItsEnd() {
    String id = web.planned(QUICK);
    web.send("POST", "/api/plans/" + id + "/accept", "", "If-Match", "*");
    for (String wanted :
        List.of(
            "{\"now\": \"9000-01-01T00:00\"}",
            "{\"now\": \"9999-12-31T23:59\", \"frozenHours\": 8760}",
            "{\"now\": \"2999-12-31T23:59\"}")) {
      HttpResponse<String> refused = web.send("POST", "/api/replan", wanted);
      assertEquals(422, refused.statusCode(), refused.body());
      assertTrue(refused.body().contains("\"now\""), refused.body());
      assertTrue(refused.body().contains("a time not after 20"), refused.body());
    }
  }

  private String located(String key) {
    return web.send("POST", "/api/plans", LONG, "Idempotency-Key", key)
        .headers()
        .firstValue("Location")
        .orElseThrow();
  }

  private String result(String id) {
    return web.get("/api/plans/" + id + "/result").body();
  }

  private void until(String place, String words) {
    while (!web.get(place).body().contains(words)) {
      Thread.onSpinWait();
    }
  }

  private static int count(String text, String part) {
    return (text.length() - text.replace(part, "").length()) / part.length();
  }
}
