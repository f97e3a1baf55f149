package strickle.api;

import static java.util.stream.Collectors.joining;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What is wrong with a parameter is told by its name. */
class QueriesTest {

  @TempDir static Path folder;

  private static Web web;

  @BeforeAll
  static void start() {
    web = Web.demo(folder);
  }

  @AfterAll
  static void stop() {
    web.close();
  }

  @ParameterizedTest
  @CsvSource({
    "/api/prices?margin=200, margin",
    "/api/prices?margin=forty, margin",
    "/api/prices?markup=-1, markup",
    "/api/prices?hourly=-1, hourly",
    "/api/prices?every=0, every",
    "/api/prices?ending=20, ending",
    "/api/prices?discount=200, discount",
    "/api/prices?bundle=nowhere&bundlePrice=10, bundle",
    "/api/prices?bundle=%3D&bundlePrice=10, bundle",
    "/api/prices?bundle=doorstop-brick=0&bundlePrice=10, bundle",
    "/api/prices?bundle=doorstop-brick&bundlePrice=-1, bundlePrice",
    "/api/prices?bundle=doorstop-brick&bundlePrice=1.23456, bundlePrice",
    "/api/prices?bundle=doorstop-brick, bundlePrice",
    "/api/prices?fair=nowhere, fair",
    "/api/prices?piece=doorstop-brick&price=-1, price",
    "/api/prices?piece=nowhere, piece",
    "/api/bound?from=1000-01-01T00:00, from",
    "/api/bound?from=2027-03-01T00:00&cover=20, cover",
    "/api/bound?from=soon, from",
    "/api/bound?cover=90, cover",
    "/api/bound?from=2027-03-01T00:00&plan=in-use, plan",
    "/api/check?from=1000-01-01T00:00, from",
    "/api/check?cover=20, cover",
    "/api/room?wind=500, wind",
    "/api/price-list.csv?channel=nowhere, channel",
    "/api/demo?castings=0, castings",
  })
  void aFaultOfAParameterNamesItAsItWasWritten(String path, String name) {
    HttpResponse<String> answer = web.get(path);
    assertTrue(answer.statusCode() == 400 || answer.statusCode() == 422, answer.body());
    for (JsonNode fault : faults(answer)) {
      assertEquals(name, fault.path("path").asString(), answer.body());
    }
    assertTrue(!faults(answer).isEmpty(), answer.body());
  }

  @Test
  void aFaultOfAPartOfTheAddressNamesItToo() {
    HttpResponse<String> answer = web.send("PUT", "/api/meshes/bowl.txt", MeshRoutes.EXAMPLE);
    assertEquals(422, answer.statusCode());
    assertEquals("file", faults(answer).path(0).path("path").asString(), answer.body());
  }

  @ParameterizedTest
  @CsvSource({
    "GET, /api/prices?margins=40, margins, one of plan",
    "GET, /api/pieces?limit=1&From=2, From, 'one of limit, after'",
    "GET, /api/book?plan=in-use, plan, no parameters here",
    "GET, /health?x, x, no parameters here",
    "GET, /api/openapi.json?%5B%5D=1, [], no parameters here",
    "POST, /api/stations?id=r, id, no parameters here",
    "GET, /api/pieces?limit=1&limit=2, limit, one value",
  })
  void whatAnOperationDoesNotKnowIsRefused(String method, String path, String name, String right) {
    String rack = "{\"id\": \"r\", \"name\": \"rack\", \"places\": 4}";
    HttpResponse<String> answer = web.send(method, path, method.equals("GET") ? "" : rack);
    assertEquals(400, answer.statusCode(), answer.body());
    JsonNode fault = faults(answer).path(0);
    assertEquals(name, fault.path("path").asString(), answer.body());
    assertTrue(fault.path("right").asString().startsWith(right), answer.body());
    assertEquals(404, web.get("/api/stations/r").statusCode());
  }

  @Test
  void ofManyFaultsNoMoreAreToldThanAnybodyReads() {
    String path = "/health?" + IntStream.range(0, 500).mapToObj(i -> "x" + i).collect(joining("&"));
    assertEquals(20, faults(web.get(path)).size());
  }

  @Test
  void whatIsTooLongIsCutBetweenItsLetters() {
    String start = "a".repeat(59);
    HttpResponse<String> answer =
        web.get("/api/snapshots?after=" + start + "%F0%9F%98%80%F0%9F%98%80");
    String found = faults(answer).path(0).path("found").asString();
    assertEquals('"' + start + "…\"", found);
    String why = "{\"why\": \"" + "a".repeat(199) + "😀\"}";
    assertTrue(web.send("POST", "/api/snapshots", why).body().contains("a\"\n"), why);
  }

  private static JsonNode faults(HttpResponse<String> answer) {
    return JsonMapper.shared().readTree(answer.body()).path("faults");
  }
}
