package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strickle.json.MeshPart;

/** What a studio file has beside its book is read as strictly as if it came thing by thing. */
class ImportedStudioTest {

  private static final String AWAY =
      "{\"kind\":\"away\",\"person\":\"maren\",\"from\":\"2027-03-10T11:00\","
          + "\"to\":\"2027-03-11T00:00\"}";
  private static final String STL =
      """
      solid t
      facet normal 0 0 0
      outer loop
      vertex 0 0 0
      vertex 0 10 0
      vertex 10 0 0
      endloop
      endfacet
      facet normal 0 0 0
      outer loop
      vertex 0 0 0
      vertex 10 0 0
      vertex 0 0 10
      endloop
      endfacet
      facet normal 0 0 0
      outer loop
      vertex 0 0 0
      vertex 0 0 10
      vertex 0 10 0
      endloop
      endfacet
      facet normal 0 0 0
      outer loop
      vertex 10 0 0
      vertex 0 10 0
      vertex 0 0 10
      endloop
      endfacet
      endsolid t
      """;

  @TempDir Path folder;

  private Web web;
  private String file;

  @BeforeEach
  void start() {
    web = Web.demo(folder);
    file = web.get("/api/export").body();
    assertTrue(file.contains("\"beside\": {}"), "nothing is beside the demo studio");
  }

  @AfterEach
  void stop() {
    web.close();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{}|$.book.studio",
        "7|$.book",
        "{\"studio\":{}}|$.book.studio.name",
        "{\"stations\":[{\"id\":\"r\",\"name\":\"rack\"}]}|$.book.stations[0].places",
        "{\"pieces\":[{\"mould\":\"nowhere\"}]}|$.book.pieces[0].mould",
      })
  void whatIsWrongWithTheBookIsToldByItsPlaceInTheFile(String book, String path) {
    String whole = "{\"format\":\"strickle-studio/1\",\"book\":" + book + "}";
    HttpResponse<String> answer = web.send("PUT", "/api/export", whole, "If-Match", "*");
    assertEquals(422, answer.statusCode(), answer.body());
    assertTrue(answer.body().contains("\"path\": \"" + path + "\""), answer.body());
    assertFalse(answer.body().contains("\"path\": \"$.studio"), answer.body());
  }

  @Test
  void whatAFileHasNoFieldForIsRefusedAndNotLeftOut() {
    String mistyped = file.replace("\"beside\": {}", "\"besides\": {\"progress\": []}");
    HttpResponse<String> answer = web.send("PUT", "/api/export", mistyped, "If-Match", "*");
    assertEquals(422, answer.statusCode(), answer.body());
    assertTrue(answer.body().contains("\"path\": \"$.besides\""), answer.body());
    assertTrue(answer.body().contains("\"right\": \"\\\"beside\\\"\""), answer.body());
  }

  private HttpResponse<String> put(String beside) {
    String whole = file.replace("\"beside\": {}", "\"beside\": " + beside);
    return web.send("PUT", "/api/export", whole, "If-Match", "*");
  }

  private void refused(String beside, String path) {
    HttpResponse<String> answer = put(beside);
    assertEquals(422, answer.statusCode(), answer.body());
    assertTrue(answer.body().contains('"' + path + '"'), answer.body());
    assertEquals(file, web.get("/api/export").body());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "7|$.beside",
        "{\"notes\":[]}|$.beside",
        "{\"progress\":{\"id\":\"1\"}}|$.beside.progress",
        "{\"progress\":[{\"id\":\"1\"}]}|$.beside.progress[0]",
        "{\"progress\":[{\"id\":1,\"body\":AWAY}]}|$.beside.progress[0].id",
        "{\"progress\":[{\"id\":\" \",\"body\":AWAY}]}|$.beside.progress[0].id",
        "{\"progress\":[{\"id\":\"LONG\",\"body\":AWAY}]}|$.beside.progress[0].id",
        "{\"progress\":[{\"id\":\"1\",\"body\":AWAY},{\"id\":\"1\",\"body\":AWAY}]}"
            + "|$.beside.progress[1].id",
        "{\"progress\":[{\"id\":\"1\",\"body\":{\"kind\":\"lost\"}}]}"
            + "|$.beside.progress[0].body.kind",
        "{\"drying\":[{\"id\":\"d\",\"body\":{\"a\":1}}]}|$.beside.drying[0].body.a",
        "{\"drying\":[{\"id\":\"d\",\"body\":{\"id\":\"e\",\"name\":\"e\","
            + "\"weighings\":[]}}]}|$.beside.drying[0].body.id",
        "{\"plan-in-use\":[{\"id\":\"other\",\"body\":{}}]}|$.beside['plan-in-use'][0].id",
        "{\"plan-in-use\":[{\"id\":\"current\",\"body\":{}}]}"
            + "|$.beside['plan-in-use'][0].body.format",
        "{\"meshes\":[{\"id\":\"../bowl\",\"body\":{}}]}|$.beside.meshes[0].id",
        "{\"meshes\":[{\"id\":\"b.stl\",\"body\":{}}]}|$.beside.meshes[0].body",
        "{\"meshes\":[{\"id\":\"b.stl\",\"body\":{\"base64\":[\"?\"]}}]}"
            + "|$.beside.meshes[0].body",
      })
  void whatCannotBeReadLaterIsRefusedWithItsPlace(String beside, String path) {
    refused(beside.replace("AWAY", AWAY).replace("LONG", "x".repeat(300)), path);
  }

  @Test
  void listsOfOtherNamesAreToldWithThoseThereAre() {
    HttpResponse<String> answer = put("{\"" + "n".repeat(60) + "\":[]}");
    assertEquals(422, answer.statusCode(), answer.body());
    assertTrue(
        answer.body().contains("one of drying, meshes, plan-in-use, progress"), answer.body());
  }

  @Test
  void whatIsRightIsTaken() {
    String mesh = MeshPart.of(STL.getBytes(StandardCharsets.US_ASCII));
    HttpResponse<String> answer =
        put(
            "{\"progress\":[{\"id\":\"1\",\"body\":"
                + AWAY
                + "},{\"id\":\"2\",\"body\":"
                + AWAY.replace("maren", "theo")
                + "}],\"meshes\":[{\"id\":\"b.stl\",\"body\":"
                + mesh
                + "}],\"drying\":[{\"id\":\"planter\",\"body\":"
                + Collection.DRYING.example()
                + "}]}");
    assertEquals(200, answer.statusCode(), answer.body());
    for (String list : new String[] {"progress", "meshes", "drying"}) {
      assertEquals(200, web.get("/api/" + list).statusCode());
    }
    assertTrue(web.get("/api/meshes").body().contains("b.stl"));
  }
}
