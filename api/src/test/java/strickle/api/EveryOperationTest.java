package strickle.api;

import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import strickle.store.Database;
import strickle.store.Studios;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Asks for everything the contract offers, over real HTTP, and holds every answer against it. */
@Timeout(value = 600, unit = TimeUnit.SECONDS)
class EveryOperationTest {

  private static final JsonMapper JSON = JsonMapper.shared();
  private static final String QUICK =
      "{\"from\": \"2027-03-01T00:00\", \"schedules\": 20, \"seed\": 1,"
          + " \"orderingFrom\": \"2027-02-20T09:00\"}";
  private static final String WEIGHTS =
      Stream.of(
              "01T09:00 5200",
              "02T09:00 5150",
              "03T09:00 5115",
              "04T09:00 5090",
              "05T09:00 5073",
              "06T09:00 5061",
              "07T09:00 5053")
          .map(one -> "{\"at\": \"2027-03-" + one.replace(" ", "\", \"grams\": ") + "}")
          .toList()
          .toString();

  private Web web;
  private ContractTrial trial;

  @Test
  void everyOperationAnswersAsTheContractSays(@TempDir Path folder) {
    Database database = Database.inFolder(folder);
    try (Web service = Web.on(database)) {
      web = service;
      trial = new ContractTrial(service);
      ask("GET", "/api/openapi.json", "");
      ask("GET", "/health", "");
      studio();
      things();
      plans();
      answers();
      takes();
      bench();
      checks();
      paper();
      journal();
      session(new Studios(database, Clock.systemUTC()));
    }
    trial.end();
  }

  private void studio() {
    ask("GET", "/api/studios", "");
    ask("POST", "/api/studios", "{\"name\": \"Ash Lane\", \"begin\": \"demo\"}");
    String book = ask("GET", "/api/book", "").body();
    ask("PUT", "/api/book", book, "If-Match", tag("/api/book"));
    String data = ask("GET", "/api/studio", "").body();
    ask("PUT", "/api/studio", data, "If-Match", tag("/api/studio"));
  }

  private void things() {
    for (Collection collection : Collection.ALL) {
      if (collection.name().equals("pins")) {
        String piece = first("pieces").path("id").asString();
        String person = first("people").path("id").asString();
        cycle(
            "pins",
            "{\"kind\": \"pour\", \"piece\": \""
                + piece
                + "\", \"castings\": 1, \"person\": \""
                + person
                + "\", \"start\": \"2027-03-02T19:00\"}");
      } else {
        ObjectNode copy = (ObjectNode) first(collection.name());
        cycle(collection.name(), copy.put("id", "copy-1").toString());
      }
    }
    cycle("progress", Collection.PROGRESS.example());
    String log = "{\"id\": \"tray\", \"name\": \"a tray\", \"weighings\": " + WEIGHTS + "}";
    cycle("drying", log);
    ask("POST", "/api/drying", log);
    ask("GET", "/api/drying/tray/fit", "");
  }

  private JsonNode first(String list) {
    return JSON.readTree(web.get("/api/" + list + "?limit=1").body()).path("items").path(0);
  }

  private void cycle(String list, String body) {
    HttpResponse<String> made = ask("POST", "/api/" + list, body, "Idempotency-Key", list);
    String place = made.headers().firstValue("Location").orElseThrow();
    ask("GET", "/api/" + list, "");
    ask("GET", place, "");
    ask("PUT", place, body, "If-Match", tag(place));
    ask("DELETE", place, "", "If-Match", tag(place));
  }

  private void plans() {
    String place = ask("POST", "/api/plans", QUICK).headers().firstValue("Location").orElseThrow();
    ask("GET", place + "/events", "");
    ask("GET", place, "");
    ask("GET", place + "/result", "");
    ask("POST", place + "/stop", "");
    ask("POST", place + "/accept", "", "If-Match", tag("/api/book"));
    ask("GET", "/api/plan-in-use", "");
    ask("GET", "/api/plans", "");
    String anew =
        ask("POST", "/api/replan", "{\"now\": \"2027-03-01T08:00\", \"schedules\": 5}")
            .headers()
            .firstValue("Location")
            .orElseThrow();
    assertTrue(web.over(anew).contains("\"state\":\"done\""));
    ask("GET", anew, "");
    ask("GET", place + "/compare" + anew.substring(anew.lastIndexOf('/')), "");
    ask("DELETE", anew, "");
  }

  private void answers() {
    String piece = first("pieces").path("id").asString();
    String channel = first("channels").path("id").asString();
    String form = first("forms").path("id").asString();
    JsonNode made = first("pieces");
    ask("GET", "/api/why", "");
    ask(
        "POST",
        "/api/promise",
        "{\"piece\": \"" + piece + "\", \"quantity\": 1, \"schedules\": 5}");
    ask("POST", "/api/what-if", "{\"changes\": [\"form:" + form + "+1\"], \"schedules\": 20}");
    ask("GET", "/api/bound", "");
    ask("GET", "/api/bound?from=2027-03-01T00:00&cover=90", "");
    ask("GET", "/api/prices", "");
    ask("GET", "/api/prices?plan=in-use&margin=40&ending=0.5", "");
    ask(
        "GET",
        "/api/prices?markup=100&hourly=25&discount=10&ending=9&every=10&bundlePrice=99&bundle="
            + piece
            + "=2&fair="
            + first("fairs").path("id").asString(),
        "");
    String sale = "\"piece\": \"" + piece + "\", \"channel\": \"" + channel + "\", ";
    ask("POST", "/api/target", "{" + sale + "\"price\": 38, \"marginPercent\": 40}");
    ask("POST", "/api/sensitivity", "{" + sale + "\"byPercent\": 10, \"most\": 5}");
    String fair = first("fairs").path("id").asString();
    ask(
        "POST",
        "/api/fair",
        "{\"fair\": \""
            + fair
            + "\", \"from\": \"2027-03-01T00:00\","
            + " \"orderingFrom\": \"2027-02-26T00:00\", \"schedules\": 5}");
    ask("GET", "/api/shopping", "");
    ask("GET", "/api/shopping?now=2027-02-26&counted=2027-02-26T18:00", "");
    ask(
        "POST",
        "/api/batch",
        "{\"mix\": "
            + made.path("mix")
            + ", \"fillings\": [{\"mould\": "
            + made.path("mould")
            + ", \"castings\": 2}], \"roundUpGrams\": 1000,"
            + " \"spare\": [{\"name\": \"cup\", \"volumeMl\": 60}]}");
    ask("GET", "/api/room?plan=in-use&wind=10&mixC=18&pieceC=12", "");
    ask("GET", "/api/cautions?plan=in-use", "");
    ask("POST", "/api/learn", "{}");
  }

  private void bench() {
    ask("GET", "/api/ballast", "");
    for (String name :
        List.of(
            "workOutVolume",
            "workOutBallast",
            "workOutCuring",
            "fitWeights",
            "judgeAir",
            "workOutCoat",
            "judgeLift")) {
      String[] address = trial.address(name);
      ask(address[0], address[1], trial.example(address));
    }
    ask("POST", "/api/volume/mesh?unit=inch", MeshRoutes.EXAMPLE);
    ask("PUT", "/api/meshes/corner.stl", MeshRoutes.EXAMPLE);
    String tag = tag("/api/meshes/corner.stl");
    ask("PUT", "/api/meshes/corner.stl", MeshRoutes.EXAMPLE, "If-Match", tag);
    ask("GET", "/api/meshes", "");
    ask("GET", "/api/meshes/corner.stl", "");
    ask("POST", "/api/volume", "{\"mesh\": \"corner.stl\", \"meshUnit\": \"inch\"}");
    ask("DELETE", "/api/meshes/corner.stl", "", "If-Match", tag);
  }

  private void checks() {
    ask("GET", "/api/check?from=2027-03-01T00:00&cover=90", "");
    for (Collection collection : Collection.ALL) {
      boolean pins = collection.name().equals("pins");
      String body =
          pins
              ? collection.example()
              : ((ObjectNode) first(collection.name())).put("id", "copy-1").toString();
      ask("POST", "/api/check/" + collection.name(), body);
    }
    ask("POST", "/api/check/studio", web.get("/api/studio").body());
    ask("POST", "/api/check/book", web.get("/api/book").body());
  }

  private void paper() {
    ask("GET", "/api/days?day=2027-03-01", "");
    ask("GET", "/api/day-sheets.pdf?day=2027-03-01&paper=letter", "");
    ask("GET", "/api/price-list.pdf", "");
    ask("GET", "/api/price-list.csv", "");
    ask("GET", "/api/calendar.ics", "");
    String orders = ask("GET", "/api/orders.csv", "").body();
    ask("POST", "/api/orders.csv?keepGood=true", orders, "If-Match", tag("/api/book"));
    ask("GET", "/api/calendar-address", "");
    String place =
        ask("POST", "/api/calendar-address", "").headers().firstValue("Location").orElseThrow();
    ask("GET", place, "");
    ask("DELETE", "/api/calendar-address", "");
  }

  /** Each of them is undone again, so that the plan in use stays one of the book. */
  private void takes() {
    String piece = first("pieces").path("id").asString();
    String form = first("forms").path("id").asString();
    String fair = first("fairs").path("id").asString();
    String promise = "{'piece': '" + piece + "', 'quantity': 1, 'schedules': 5}";
    take("promise", "{'date': 'kept', 'promise': " + promise + "}");
    take("what-if", "{'changes': ['form:" + form + "+1'], 'schedules': 20}");
    String build = "{'fair': '" + fair + "', 'from': '2027-03-01T00:00', 'schedules': 5}";
    take("fair", "{'usePlan': true, 'build': " + build + "}");
    ask("POST", "/api/learn/take", "{}", "If-Match", tag("/api/book"));
  }

  private void take(String what, String body) {
    String before = tag("/api/book");
    ask("POST", "/api/" + what + "/take", body.replace('\'', '"'), "If-Match", before);
    assertNotEquals(before, tag("/api/book"), what);
    ask("POST", "/api/undo", "", "If-Match", tag("/api/book"));
  }

  private void journal() {
    ask("GET", "/api/journal", "");
    ask("GET", "/api/journal/1", "");
    ask("POST", "/api/undo", "", "If-Match", tag("/api/book"));
    ask("POST", "/api/redo", "", "If-Match", tag("/api/book"));
    String snapshot =
        JSON.readTree(
                ask("POST", "/api/snapshots", "{\"why\": \"a look\"}", "Idempotency-Key", "look")
                    .body())
            .path("id")
            .asString();
    ask("GET", "/api/snapshots", "");
    ask("GET", "/api/snapshots/" + snapshot, "");
    ask("POST", "/api/snapshots/" + snapshot + "/restore", "", "If-Match", tag("/api/book"));
    ask("DELETE", "/api/snapshots/" + snapshot, "");
    String file = ask("GET", "/api/export", "").body();
    ask("PUT", "/api/export", file, "If-Match", tag("/api/export"));
    ask("GET", "/api/demo?castings=1&seed=1", "");
    String small = "{\"name\": \"Ash Lane\", \"begin\": \"demo\", \"castings\": 1}";
    ask("POST", "/api/begin", small, "If-Match", tag("/api/book"));
    String book = web.get("/api/book").body();
    ask("PUT", "/api/book", book, "If-Match", tag("/api/book"));
    ask("POST", "/api/check/book", book);
    file = web.get("/api/export").body();
    ask("PUT", "/api/export", file, "If-Match", tag("/api/export"));
  }

  private void session(Studios studios) {
    ask("GET", "/api/session", "");
    String password = "grey dust on the sill";
    studios.setPasswordHash(studios.all().get(0).id(), Optional.of(Password.hash(password)));
    String opening = "{\"studio\": \"Ash Lane\", \"password\": \"" + password + "\"}";
    String cookie =
        ask("POST", "/api/session", opening).headers().firstValue("Set-Cookie").orElseThrow();
    ask("DELETE", "/api/session", "", "Cookie", cookie.split(";", 2)[0]);
  }

  private HttpResponse<String> ask(String method, String path, String body, String... headers) {
    return trial.ask(method, path, body, headers);
  }

  private String tag(String path) {
    return trial.tag(path);
  }
}
