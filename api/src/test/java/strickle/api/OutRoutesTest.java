package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What goes out of the studio, over HTTP. */
class OutRoutesTest {

  private static final String QUICK = "{\"from\": \"2027-03-01T00:00\", \"schedules\": 20}";
  private static final String HEAD = "order,for,due,piece,quantity\r\n";
  private static final String GOOD = "Z-1,a neighbour,2027-05-15T12:00,doorstop-brick,2\r\n";
  private static final String BAD = "Z-2,a florist,2027-05-15T12:00,doorstop-blue,2\r\n";

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

  private void planned() {
    String id = web.planned(QUICK);
    web.send("POST", "/api/plans/" + id + "/accept", "", "If-Match", "*");
  }

  @Test
  void paperIsOfThePlanInUseAndIsKnownWithoutBeingDrawnAgain() {
    assertEquals(404, web.get("/api/day-sheets.pdf").statusCode());
    planned();
    HttpResponse<String> sheets = web.get("/api/day-sheets.pdf?day=2027-03-01");
    assertEquals(200, sheets.statusCode(), sheets.body());
    assertTrue(sheets.body().startsWith("%PDF-"), "a PDF");
    assertEquals("application/pdf", sheets.headers().firstValue("Content-Type").orElseThrow());
    String tag = tag(sheets);
    String same = "/api/day-sheets.pdf?day=2027-03-01";
    assertEquals(304, web.get(same, "If-None-Match", tag).statusCode());
    assertNotEquals(tag, tag(web.get(same + "&paper=letter")));
    assertEquals(400, web.get(same + "&paper=legal").statusCode());
    assertEquals(400, web.get("/api/day-sheets.pdf?person=nobody").statusCode());
  }

  @Test
  void theDaysSayWhoDoesWhatAndWhatToWeigh() {
    planned();
    String day = web.get("/api/days?day=2027-03-01").body();
    for (String part :
        List.of("\"scaleStepGrams\": 0.1", "\"weighOut\"", "\"cautions\"", "\"people\"")) {
      assertTrue(day.contains(part), part + " in " + day);
    }
    assertTrue(web.get("/api/days?day=2026-01-01").body().contains("\"people\": []"));
    assertTrue(!web.get("/api/days?person=tobias").body().contains("\"maren\""), "one person");
  }

  @Test
  void ordersComeFromATableWholeOrNotAtAll() {
    String before = web.get("/api/book").body();
    assertEquals(428, web.send("POST", "/api/orders.csv", HEAD + GOOD).statusCode());
    HttpResponse<String> bad = orders("", HEAD + GOOD + BAD);
    assertEquals(422, bad.statusCode());
    assertTrue(bad.body().contains("orders line 3, piece"), bad.body());
    assertEquals(before, web.get("/api/book").body());
    HttpResponse<String> kept = orders("?keepGood=true", HEAD + GOOD + BAD);
    assertEquals(200, kept.statusCode(), kept.body());
    assertTrue(kept.body().contains("\"added\": 1"), kept.body());
    assertTrue(kept.body().contains("\"leftOut\": [\"Z-2\"]"), kept.body());
    assertTrue(kept.body().contains("orders line 3, piece"), kept.body());
    assertEquals(200, web.get("/api/orders/Z-1").statusCode());
    assertEquals(404, web.get("/api/orders/Z-2").statusCode());
    String table = web.get("/api/orders.csv").body();
    assertTrue(orders("", table).body().contains("\"added\": 0"), "what goes out comes in again");
    assertEquals(400, orders("?keepGood=perhaps", table).statusCode());
  }

  private HttpResponse<String> orders(String query, String csv) {
    return web.send("POST", "/api/orders.csv" + query, csv, "If-Match", tag(web.get("/api/book")));
  }

  @Test
  void aTextThatLooksLikeAFormulaIsNone() {
    orders("", HEAD + GOOD.replace("a neighbour", "'=1+1"));
    assertTrue(web.get("/api/orders/Z-1").body().contains("\"=1+1\""));
    assertTrue(web.get("/api/orders.csv").body().contains("'=1+1"));
  }

  @Test
  void aCalendarAddressNeedsNoSessionAndEndsWithTheNext() {
    planned();
    assertEquals("{}\n", web.get("/api/calendar-address").body());
    String first = address();
    HttpResponse<String> calendar = web.get(first);
    assertEquals(200, calendar.statusCode(), calendar.body());
    assertTrue(calendar.body().startsWith("BEGIN:VCALENDAR\r\n"), calendar.body());
    assertEquals(
        304, web.get(first, "If-None-Match", tag(calendar)).statusCode(), "nothing has changed");
    String second = address();
    assertEquals(404, web.get(first).statusCode());
    assertEquals(200, web.get(second + "?person=maren").statusCode());
    assertEquals(204, web.send("DELETE", "/api/calendar-address", "").statusCode());
    assertEquals(404, web.get(second).statusCode());
  }

  private String address() {
    HttpResponse<String> made = web.send("POST", "/api/calendar-address", "");
    assertEquals(201, made.statusCode(), made.body());
    String place = made.headers().firstValue("Location").orElseThrow();
    assertTrue(made.body().contains("http://localhost:" + web.port() + place), made.body());
    return place;
  }

  @Test
  void aMeshIsKeptForAMouldAndNotTakenFromIt() {
    String mesh = MeshRoutes.EXAMPLE;
    assertEquals(422, web.send("PUT", "/api/meshes/corner.stl", "solid nothing").statusCode());
    assertEquals(422, web.send("PUT", "/api/meshes/corner.txt", mesh).statusCode());
    HttpResponse<String> kept = web.send("PUT", "/api/meshes/corner.stl", mesh);
    assertEquals(201, kept.statusCode(), kept.body());
    assertEquals(428, web.send("PUT", "/api/meshes/corner.stl", mesh).statusCode());
    assertEquals(mesh, web.get("/api/meshes/corner.stl").body());
    String volume = web.send("POST", "/api/volume", "{\"mesh\": \"corner.stl\"}").body();
    assertTrue(volume.contains("\"volumeMl\": 4.5"), volume); // a sixth of 30 mm cubed
    String mould = web.get("/api/moulds/doorstop").body();
    String meshed =
        mould.replaceFirst("\"(volumeMl|shape)\": [^\\n]*", "\"mesh\": \"corner.stl\",");
    String tag = tag(web.get("/api/moulds/doorstop"));
    HttpResponse<String> taken = web.send("PUT", "/api/moulds/doorstop", meshed, "If-Match", tag);
    assertEquals(200, taken.statusCode(), taken.body() + meshed);
    HttpResponse<String> gone =
        web.send("DELETE", "/api/meshes/corner.stl", "", "If-Match", tag(kept));
    assertEquals(422, gone.statusCode(), gone.body());
    assertTrue(gone.body().contains(".mesh"), gone.body());
    String file = web.get("/api/export").body();
    assertTrue(file.contains("corner.stl"), "the whole studio holds it");
  }

  private static String tag(HttpResponse<String> response) {
    return response.headers().firstValue("ETag").orElseThrow();
  }
}
