package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What would come of a thing, told before it is saved. */
class CheckRoutesTest {

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

  private String check(String path, String body) {
    String before = web.get("/api/export").body();
    var answer = web.send("POST", "/api/check/" + path, body);
    assertEquals(200, answer.statusCode(), answer.body());
    assertEquals(before, web.get("/api/export").body(), "nothing is changed");
    return answer.body();
  }

  @Test
  void whatIsThereIsGood() {
    String piece = web.get("/api/pieces/lantern-tall-basalt").body();
    String found = check("pieces?id=lantern-tall-basalt", piece);
    assertTrue(found.contains("\"good\": true"), found);
    assertTrue(found.contains("\"hindrances\": []"), found);
  }

  @Test
  void faultsLieInTheThingThatWasSent() {
    String piece = web.get("/api/pieces/lantern-tall-basalt").body();
    String found =
        check(
            "pieces?id=lantern-tall-basalt",
            piece.replace("\"minutesEach\": 7", "\"minutesEach\": -7"));
    assertTrue(found.contains("\"good\": false"), found);
    assertTrue(found.contains("\"$.route[0].minutesEach\""), found);
    String nowhere =
        check(
            "pieces?id=lantern-tall-basalt",
            piece.replace("\"mix\": \"basalt\"", "\"mix\": \"tar\""));
    assertTrue(nowhere.contains("\"$.mix\""), nowhere);
  }

  @Test
  void aNewThingMayNotHaveAnIdThatIsThere() {
    String rack = "{\"id\": \"rack\", \"name\": \"another\", \"places\": 3}";
    assertTrue(check("stations", rack).contains("\"$.id\""), "there is a rack");
    assertTrue(check("stations?id=rack", rack).contains("\"good\": true"), "in its place");
    String other = rack.replace("\"rack\"", "\"rack-9\"");
    assertTrue(check("stations", other).contains("\"good\": true"), "a new one");
    assertTrue(check("stations?id=rack", other).contains("\"$.id\""), "not by another name");
    assertEquals(404, web.send("POST", "/api/check/stations?id=none", rack).statusCode());
  }

  @Test
  void adviceOnARouteIsTold() {
    String piece =
        "{\"id\": \"new\", \"name\": \"a new one\", \"mould\": \"doorstop\", \"mix\": \"brick\","
            + " \"route\": [{\"step\": \"first seal coat\", \"minutesEach\": 4},"
            + " {\"step\": \"frobnicate\", \"minutesEach\": 1}]}";
    String found = check("pieces", piece);
    assertTrue(found.contains("\"path\": \"$.route[0]\""), found);
    assertTrue(found.contains("\"notJudged\": [\"frobnicate\"]"), found);
  }

  @Test
  void whatCouldNeverBeMadeIsAHindrance() {
    String mould = web.get("/api/moulds/doorstop").body();
    String found =
        check(
            "moulds?id=doorstop",
            mould.replaceFirst("\"pourMinutes\": [0-9]+", "\"pourMinutes\": 90"));
    assertTrue(found.contains("\"good\": true"), found);
    assertTrue(found.contains("$.pieces["), found);
  }

  @Test
  void aWholeBookAndTheStudiosOwnDataAreCheckedToo() {
    assertTrue(check("book", web.get("/api/book").body()).contains("\"good\": true"));
    String studio = web.get("/api/studio").body();
    assertTrue(check("studio", studio).contains("\"good\": true"));
    String poor = studio.replaceFirst("\"wagePerHour\": [0-9.]+", "\"wagePerHour\": -1");
    assertTrue(check("studio", poor).contains("\"$.wagePerHour\""), check("studio", poor));
  }

  @Test
  void theBookIsPlannedOnceToBeSure() {
    var found = web.get("/api/check?from=2027-03-01T00:00");
    assertEquals(200, found.statusCode(), found.body());
    assertTrue(found.body().contains("\"canBePlanned\": true"), found.body());
    assertEquals(400, web.get("/api/check?from=tomorrow").statusCode());
    assertEquals(422, web.get("/api/check?cover=120").statusCode());
  }
}
