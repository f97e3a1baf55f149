package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.json.JsonMapper;

class AddressesTest {

  private static final List<String> IDS =
      List.of(
          "rack-9",
          "große Ablage",
          "棚",
          "🏺",
          "a?b",
          "a#b",
          "a+b",
          "a;b=c",
          "a&b",
          "[x]",
          "\"",
          "100%");

  @Test
  void namesAreWrittenAsAnAddressHasThem() {
    assertEquals("/api/stations/rack-9", Addresses.below("/api/stations", "rack-9"));
    assertEquals("/x/gro%C3%9F%3F%25+%3B%2F", Addresses.below("/x", "groß?%+;/"));
  }

  @Test
  void whereAThingIsSaidToBeItIs(@TempDir Path folder) {
    try (Web web = Web.demo(folder)) {
      for (String id : IDS) {
        String name = JsonMapper.shared().writeValueAsString(id);
        String rack = "{\"id\": " + name + ", \"name\": \"rack\", \"places\": 4}";
        isFollowed(web, web.send("POST", "/api/stations", rack), name);
      }
      String mesh = "/api/meshes/sch%C3%BCssel%20%231.stl";
      HttpResponse<String> made = web.send("PUT", mesh, MeshRoutes.EXAMPLE);
      assertEquals(mesh, place(made));
      assertEquals(200, web.get(place(made)).statusCode());
    }
  }

  private static void isFollowed(Web web, HttpResponse<String> made, String name) {
    assertEquals(201, made.statusCode(), made.body());
    String place = place(made);
    assertTrue(place.matches("[\\x21-\\x7e]+"), place);
    assertEquals(place, URI.create(place).toString());
    HttpResponse<String> read = web.get(place);
    assertEquals(200, read.statusCode(), place + " " + read.body());
    assertTrue(read.body().contains("\"id\": " + name), read.body());
    String tag = read.headers().firstValue("ETag").orElseThrow();
    assertEquals(204, web.send("DELETE", place, "", "If-Match", tag).statusCode());
  }

  private static String place(HttpResponse<String> made) {
    return made.headers().firstValue("Location").orElseThrow();
  }
}
