package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class WhoTest {

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
  void aNameInAnyLettersIsInTheJournal() {
    assertEquals("Maren Holt", noted("Maren Holt"));
    assertEquals("Mařenka 五 🏺", noted("Ma%C5%99enka%20%E4%BA%94%20%F0%9F%8F%BA"));
    assertEquals("100 % Ana", noted("100 %25 Ana"));
    assertEquals("x".repeat(80), noted("x".repeat(80)));
    assertEquals("the studio", noted(" "));
  }

  @Test
  void whatIsNoNameIsToldAndNothingIsChanged() {
    String before = web.get("/api/book").body();
    for (String wrong : new String[] {"50%", "%4", "%zz", "%C5", "%00", "a%0Ab", "x".repeat(81)}) {
      HttpResponse<String> refused = make("s", wrong);
      assertEquals(400, refused.statusCode(), wrong);
      assertTrue(refused.body().contains("\"path\": \"Strickle-Who\""), refused.body());
    }
    assertEquals(before, web.get("/api/book").body());
  }

  @Test
  void everyChangeTakesItByTheContract() {
    Set<String> without = new TreeSet<>();
    Set<String> with = new TreeSet<>();
    JsonNode contract = JsonMapper.shared().readTree(web.get("/api/openapi.json").body());
    for (JsonNode path : contract.path("paths")) {
      for (JsonNode operation : path) {
        Set<String> names = new TreeSet<>();
        operation.path("parameters").forEach(one -> names.add(one.path("name").asString()));
        boolean changes = names.contains("If-Match") || names.contains("Idempotency-Key");
        String id = operation.path("operationId").asString();
        if (names.contains("Strickle-Who")) {
          with.add(id);
        } else if (changes) {
          without.add(id);
        }
      }
    }
    assertEquals(Set.of("createSnapshot"), without, "that one is in no journal");
    assertTrue(with.contains("acceptPlan") && with.contains("putMesh"), with.toString());
    assertTrue(with.size() > 50, with.toString());
  }

  private String noted(String who) {
    HttpResponse<String> made = make("s" + who.hashCode(), who);
    assertEquals(201, made.statusCode(), made.body());
    return JsonMapper.shared()
        .readTree(web.get("/api/journal?limit=1").body())
        .path("items")
        .path(0)
        .path("who")
        .asString();
  }

  private HttpResponse<String> make(String id, String who) {
    String rack = "{\"id\": \"" + id + "\", \"name\": \"rack\", \"places\": 4}";
    return web.send("POST", "/api/stations", rack, "Strickle-Who", who);
  }
}
