package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.store.Database;
import strickle.store.StoreHash;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What holds for all operations of the contract alike: tags, keys and pages. */
class EveryChangeIsGuardedTest {

  /** They end something that is not read before, or that nobody can have written over since. */
  private static final Set<String> NEED_NO_TAG =
      Set.of("removePlan", "removeSnapshot", "closeSession", "removeCalendarAddress");

  /** There is one studio at most, and each address is a new secret. */
  private static final Set<String> NEED_NO_KEY = Set.of("createStudio", "createCalendarAddress");

  private static final String QUICK = "{\"from\": \"2027-03-01T00:00\", \"schedules\": 1}";

  private static final String PIN =
      "{\"kind\": \"pour\", \"piece\": \"doorstop-brick\", \"castings\": 1,"
          + " \"person\": \"maren\", \"start\": \"2027-03-02T19:00\"}";

  private record Op(String name, String method, String path, JsonNode node) {

    private boolean takes(String parameter) {
      for (JsonNode one : node.path("parameters")) {
        if (one.path("name").asString().equals(parameter)) {
          return true;
        }
      }
      return false;
    }

    private boolean needs(String parameter) {
      for (JsonNode one : node.path("parameters")) {
        if (one.path("name").asString().equals(parameter) && one.path("required").asBoolean()) {
          return true;
        }
      }
      return false;
    }

    private boolean creates() {
      return (method.equals("POST") && node.at("/responses/201").isObject())
          || node.at("/responses/202/headers/Location").isObject();
    }
  }

  @TempDir static Path folder;

  private static final List<Op> OPERATIONS = new ArrayList<>();

  /** One thing of each list, by its path. */
  private static final Map<String, String> THERE = new TreeMap<>();

  private static Web web;
  private static StoreHash hash;

  @BeforeAll
  static void start() {
    Database database = Database.inFolder(folder);
    hash = new StoreHash(database);
    web = Web.on(database);
    web.send("POST", "/api/studios", "{\"name\": \"Ash Lane\", \"begin\": \"demo\"}");
    for (int i = 0; i < 3; i++) {
      String plan = web.planned(QUICK.replace("1}", (i + 1) + "}"));
      THERE.put("/api/plans/{id}", "/api/plans/" + plan);
      web.send("POST", "/api/snapshots", "{\"why\": \"look " + i + "\"}");
      kept("/api/progress/{id}", Collection.PROGRESS.example());
      kept("/api/drying/{id}", Collection.DRYING.example().replace("planter", "planter-" + i));
    }
    kept("/api/pins/{id}", PIN);
    web.send("PUT", "/api/meshes/corner.stl", MeshRoutes.EXAMPLE);
    THERE.put("/api/meshes/{file}", "/api/meshes/corner.stl");
    JsonNode contract = JsonMapper.shared().readTree(web.get("/api/openapi.json").body());
    contract
        .path("paths")
        .properties()
        .forEach(path -> path.getValue().properties().forEach(one -> add(path.getKey(), one)));
  }

  private static void kept(String template, String body) {
    HttpResponse<String> made =
        web.send("POST", template.substring(0, template.lastIndexOf('/')), body);
    assertEquals(201, made.statusCode(), made.body());
    THERE.put(template, made.headers().firstValue("Location").orElseThrow());
  }

  private static void add(String path, Map.Entry<String, JsonNode> method) {
    String name = method.getValue().path("operationId").asString();
    String verb = method.getKey().toUpperCase(Locale.ROOT);
    OPERATIONS.add(new Op(name, verb, path, method.getValue()));
  }

  @AfterAll
  static void stop() {
    web.close();
  }

  @Test
  void whateverPutsOrRemovesTakesATagAndWhateverCreatesTakesAKey() {
    Set<String> withoutTag = new TreeSet<>();
    Set<String> withoutKey = new TreeSet<>();
    for (Op op : OPERATIONS) {
      if (!op.takes("If-Match") && (op.method().equals("PUT") || op.method().equals("DELETE"))) {
        withoutTag.add(op.name());
      }
      if (op.creates() && !op.takes("Idempotency-Key")) {
        withoutKey.add(op.name());
      }
    }
    assertEquals(NEED_NO_TAG, withoutTag);
    assertEquals(NEED_NO_KEY, withoutKey);
  }

  @Test
  void withoutATagItIs428AndWithAnOldOne412AndNeitherChangesAnything() {
    String before = hash.now();
    List<String> wrong = new ArrayList<>();
    int asked = 0;
    for (Op op : OPERATIONS) {
      if (op.needs("If-Match")) {
        String place = place(op);
        String body = body(op, place);
        asked++;
        String without = op.name() + " without a tag: ";
        check(wrong, without, 428, web.send(op.method(), place, body));
        String old = op.name() + " with an old tag: ";
        check(wrong, old, 412, web.send(op.method(), place, body, "If-Match", "\"old\""));
      }
    }
    assertEquals(List.of(), wrong);
    assertEquals(before, hash.now());
    System.out.println(asked + " operations that change something refused without a tag");
    assertTrue(asked > 30, asked + " operations");
  }

  private static void check(
      List<String> wrong, String what, int status, HttpResponse<String> answer) {
    String media = answer.headers().firstValue("Content-Type").orElse("nothing");
    if (answer.statusCode() != status || !media.startsWith(Problem.MEDIA_TYPE)) {
      wrong.add(what + answer.statusCode() + " " + media + " " + answer.body());
    }
  }

  private static String place(Op op) {
    if (!op.path().contains("{")) {
      return op.path();
    }
    int end = op.path().indexOf('}') + 1;
    String template = op.path().substring(0, end);
    String list = template.substring(0, template.lastIndexOf('/'));
    String known = THERE.getOrDefault(template, list + "/" + firstId(list));
    return known + op.path().substring(end);
  }

  private static String firstId(String list) {
    JsonNode first = JsonMapper.shared().readTree(web.get(list + "?limit=1").body());
    return first.path("items").path(0).path("id").asString("1");
  }

  private static String body(Op op, String place) {
    JsonNode content = op.node().path("requestBody").path("content");
    if (content.isMissingNode()) {
      return "";
    }
    if (op.method().equals("PUT")) {
      return web.get(place).body();
    }
    JsonNode example = content.iterator().next().path("example");
    return example.isString() ? example.asString() : example.toString();
  }

  @Test
  void everyListComesInPagesThatTogetherAreTheWhole() {
    int walked = 0;
    for (Op op : OPERATIONS) {
      if (op.takes("limit") && op.takes("after")) {
        assertEquals(items(op.path() + "?limit=200"), pages(op.path()), op.name());
        walked++;
      }
    }
    assertTrue(walked > 12, walked + " lists");
  }

  private static List<JsonNode> items(String path) {
    JsonNode list = JsonMapper.shared().readTree(web.get(path).body());
    assertTrue(list.path("next").isMissingNode(), path + " is not whole");
    return list.path("items").valueStream().toList();
  }

  private static List<JsonNode> pages(String path) {
    List<JsonNode> all = new ArrayList<>();
    String after = "";
    do {
      JsonNode page = JsonMapper.shared().readTree(web.get(path + "?limit=1" + after).body());
      assertTrue(page.path("items").size() <= 1, path + " " + page);
      page.path("items").forEach(all::add);
      after = page.has("next") ? "&after=" + page.path("next").asString() : "";
    } while (!after.isEmpty());
    return all;
  }
}
