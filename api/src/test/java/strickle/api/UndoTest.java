package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.store.Database;
import strickle.store.Postgres;

/** Whatever many commands have done is undone by as many undos, with a restart between them. */
class UndoTest {

  private static final int SOME = 100;
  private static final int MANY = 500;
  private static final List<String> LISTS = List.of("stations", "channels", "drying");

  private final Random random = new Random(7);
  private final TreeMap<String, Integer> done = new TreeMap<>();

  @TempDir Path folder;

  @Test
  @Tag("slow")
  void afterAHundredCommandsARestartAndAsManyUndosAFileHoldsTheFirstStudio() {
    holds(SOME, () -> Database.inFolder(folder));
  }

  @Test
  @Tag("slow")
  void afterAHundredCommandsARestartAndAsManyUndosAServerHoldsTheFirstStudio() {
    String url = Postgres.freshDatabase();
    holds(SOME, () -> Database.postgresql(url));
  }

  @Test
  @Tag("long")
  void afterFiveHundredCommandsARestartAndAsManyUndosAFileHoldsTheFirstStudio() {
    holds(MANY, () -> Database.inFolder(folder));
  }

  @Test
  @Tag("long")
  void afterFiveHundredCommandsARestartAndAsManyUndosAServerHoldsTheFirstStudio() {
    String url = Postgres.freshDatabase();
    holds(MANY, () -> Database.postgresql(url));
  }

  private void holds(int commands, Supplier<Database> opened) {
    String first;
    try (Web web = Web.on(opened.get())) {
      web.send("POST", "/api/studios", "{\"name\": \"Ash Lane\", \"begin\": \"demo\"}");
      first = hash(web);
      String file = web.get("/api/export").body();
      for (int changes = 0; changes < commands; changes += command(web, file) ? 1 : 0) {
        assertTrue(changes >= 0);
      }
      assertNotEquals(first, hash(web));
    }
    try (Web web = Web.on(opened.get())) {
      for (int i = 0; i < commands; i++) {
        assertEquals(200, undo(web), "undo " + i);
      }
      assertEquals(409, undo(web));
      assertEquals(first, hash(web));
    }
    System.out.println(commands + " commands " + done + ", as many undos, the first export's hash");
  }

  private static int undo(Web web) {
    return web.send("POST", "/api/undo", "", "If-Match", "*").statusCode();
  }

  /** One command; whether it changed anything. */
  private boolean command(Web web, String file) {
    String before = tag(web);
    String list = LISTS.get(random.nextInt(LISTS.size()));
    String id = "c" + random.nextInt(30);
    String place = "/api/" + list + "/" + id;
    String body = body(list, id, 1 + random.nextInt(40));
    String what =
        switch (random.nextInt(20)) {
          case 0 -> told(web, "POST", "/api/progress", away());
          case 1 -> told(web, "PUT", "/api/studio", studio(web));
          case 2 -> random.nextInt(10) == 0 ? told(web, "PUT", "/api/export", file) : "";
          case 3, 4, 5, 6 -> told(web, "DELETE", place, "");
          case 7, 8, 9, 10, 11, 12 -> told(web, "PUT", place, body);
          default -> told(web, "POST", "/api/" + list, body);
        };
    boolean changed = !before.equals(tag(web));
    if (changed) {
      done.merge(what, 1, Integer::sum);
    }
    return changed;
  }

  private static String told(Web web, String method, String path, String body) {
    int status = web.send(method, path, body, "If-Match", "*").statusCode();
    assertTrue(status < 500, method + " " + path + " was answered " + status);
    return method + " " + path.replaceAll("/c[0-9]+$", "");
  }

  private static String body(String list, String id, int number) {
    String start = "{\"id\": \"" + id + "\", \"name\": \"n" + number + "\"";
    return switch (list) {
      case "stations" -> start + ", \"places\": " + number + "}";
      case "channels" -> start + ", \"fixedFee\": " + number + "}";
      default -> start + ", \"weighings\": [{\"at\": \"2027-04-05T09:00\", \"grams\": 512}]}";
    };
  }

  private String away() {
    int day = 10 + random.nextInt(18);
    return "{\"kind\": \"away\", \"person\": \"maren\", \"from\": \"2027-04-"
        + day
        + "T11:00\", \"to\": \"2027-04-"
        + day
        + "T12:00\"}";
  }

  private String studio(Web web) {
    String wage = "\"wagePerHour\": " + (10 + random.nextInt(30));
    return web.get("/api/studio").body().replaceFirst("\"wagePerHour\": [0-9.]+", wage);
  }

  private static String tag(Web web) {
    return web.get("/api/journal?limit=1").body();
  }

  private static String hash(Web web) {
    return Etag.sha256(web.get("/api/export").body());
  }
}
