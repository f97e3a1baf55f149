package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import strickle.demo.Demo;
import strickle.demo.Size;
import strickle.json.BookParts;
import strickle.store.By;
import strickle.store.Database;
import strickle.store.Entries;
import strickle.store.Kept;
import strickle.store.KeptPlan;
import strickle.store.PlanAsked;
import strickle.store.Postgres;
import strickle.store.StudioStore;
import strickle.store.Studios;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Two studios in one database: who has opened one cannot reach the other by any route. */
@Tag("slow")
class StudiosApartTest {

  private static final String MARK = "zz-other";
  private static final String ID = "zz-id";
  private static final String PASSWORD = "grey dust on the sill";

  @Test
  void noRouteLeadsFromOneStudioToTheOther() {
    Database database = Database.postgresql(Postgres.freshDatabase());
    Studios studios = new Studios(database, Clock.systemUTC());
    String hash = Password.hash(PASSWORD);
    StudioRoutes.createEmpty(studios, "First", hash);
    StudioStore other =
        studios.create(MARK, Optional.of(hash), BookParts.of(Demo.book(Size.SMALL)));
    other.change(new By(MARK, MARK), StudiosApartTest::marked);
    String snapshot = other.takeSnapshot(MARK).id();
    String plan = asked(other);
    Kept before = other.now();
    int asked = 0;
    try (Web web = Web.of(database, Clock.systemUTC(), Listening.here(0))) {
      String session = session(web);
      until(() -> other.plans().find(plan).orElseThrow().isOver());
      for (Asked one : everything(web, session, List.of(ID, snapshot, plan, "1", "2"))) {
        HttpResponse<String> answer =
            web.send(
                one.method(), one.path(), one.body(), "Cookie", session, "If-Match", one.match());
        assertFalse(answer.body().contains(MARK), one + " gave " + answer.body());
        assertTrue(answer.statusCode() < 500, one + " gave " + answer.body());
        asked++;
      }
      assertTrue(asked > 150, asked + " requests");
      assertEquals(before.revision(), other.now().revision());
      assertEquals(before.entries(), other.now().entries());
      assertEquals(KeptPlan.State.DONE, other.plans().find(plan).orElseThrow().state());
      System.out.println(asked + " requests with the other studio's ids, none reached it");
      assertEquals(1, other.snapshots().size() - dailyOnes(other));
    }
  }

  // Laid out as soon as the service runs; nobody of the first studio may stop or remove it.
  private static String asked(StudioStore studio) {
    PlanAsked asked =
        new PlanAsked(
            Demo.start(),
            OptionalLong.empty(),
            OptionalLong.of(20),
            1,
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty());
    return studio.plans().ask(MARK, Optional.empty(), asked, studio.now(), Optional.empty());
  }

  private static Entries marked(Kept now) {
    String rack = "{\"id\":\"zz-id\",\"name\":\"zz-other\",\"places\":4}";
    return now.entries().with("stations", ID, rack);
  }

  private static void until(BooleanSupplier over) {
    while (!over.getAsBoolean()) {
      Thread.onSpinWait();
    }
  }

  private static long dailyOnes(StudioStore studio) {
    return studio.snapshots().stream().filter(kept -> !kept.why().equals(MARK)).count();
  }

  private static String session(Web web) {
    String body = "{\"studio\": \"First\", \"password\": \"" + PASSWORD + "\"}";
    HttpResponse<String> opened = web.send("POST", "/api/session", body);
    return opened.headers().firstValue("Set-Cookie").orElseThrow().split(";", 2)[0];
  }

  private record Asked(String method, String path, String body, String match) {}

  // Every operation with the ids of the other studio, and its tags.
  private static List<Asked> everything(Web web, String session, List<String> ids) {
    String document = web.get("/api/openapi.json", "Cookie", session).body();
    JsonNode contract = new ObjectMapper().readTree(document);
    List<Asked> all = new ArrayList<>();
    for (Map.Entry<String, JsonNode> path : contract.get("paths").properties()) {
      for (Map.Entry<String, JsonNode> method : path.getValue().properties()) {
        String name = method.getKey().toUpperCase(Locale.ROOT);
        if (path.getKey().equals("/api/session") && !name.equals("GET")) {
          continue; // closing one's own session would end the test
        }
        for (String id : ids) {
          String real = path.getKey().replaceAll("\\{[A-Za-z]+\\}", id);
          String example = example(method.getValue()).replaceAll("\"id\": \"[^\"]*\"", idOf(id));
          for (String match : List.of("*", "\"r2\"")) {
            all.add(new Asked(name, real, name.equals("GET") ? "" : example, match));
          }
        }
      }
    }
    return all;
  }

  private static String idOf(String id) {
    return "\"id\": \"" + (id.equals(ID) ? "mine" : id) + '"';
  }

  private static String example(JsonNode operation) {
    JsonNode example =
        operation.path("requestBody").path("content").path("application/json").path("example");
    return example.isMissingNode() ? "" : example.toString();
  }
}
