package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Batches over HTTP: of a mix of the book, of one that is not saved, and of one mixed once. */
class BatchRoutesTest {

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

  private static String batch(String body) {
    var answer = web.send("POST", "/api/batch", body.replace('\'', '"'));
    assertEquals(200, answer.statusCode(), answer.body());
    return answer.body();
  }

  @Test
  void aMixThatIsNotSavedWeighsAsTheSameOneInTheBook() {
    String fillings = "'fillings': [{'mould': 'doorstop', 'castings': 2}]}";
    String saved = batch("{'mix': 'brick', " + fillings);
    String mix = web.get("/api/mixes/brick").body().strip();
    assertEquals(saved, batch("{'recipe': " + mix + ", " + fillings));
    assertTrue(saved.contains("\"onHand\"") && saved.contains("\"bags\""), saved);
  }

  @Test
  void aBatchMixedOnceFillsAsMuchAsItDid() {
    // 1000 g of cement and 400 g of water filled 700 ml: 2 g/ml, so 350 ml take 700 g.
    String past =
        batch(
            "{'past': {'dry': [{'material': 'white-cement', 'grams': 1000}], 'pigment': [],"
                + " 'waterGrams': 400, 'filledMl': 700, 'leftGrams': 0},"
                + " 'fillings': [{'volumeMl': 350, 'castings': 1}]}");
    assertTrue(past.contains("\"gramsEach\": 700"), past);
  }

  @Test
  void whatIsLeftOverIsOfferedToMouldsThatAreFreeAndToThoseThatStandBy() {
    String left =
        batch(
            "{'mix': 'brick', 'fillings': [{'mould': 'doorstop', 'castings': 1}],"
                + " 'roundUpGrams': 5000, 'spare': [{'name': 'cup', 'volumeMl': 60}]}");
    assertTrue(left.contains("{\"mould\": \"cup\", \"castings\":"), left);
    assertTrue(left.contains("\"leftGrams\""), left);
    String none =
        batch(
            "{'mix': 'brick', 'fillings': [{'mould': 'doorstop', 'castings': 1}],"
                + " 'spare': [{'name': 'cup', 'volumeMl': 60}]}");
    assertTrue(none.contains("\"leftover\": []"), none);
    assertTrue(none.contains("nothing is left over for cup"), none);
  }

  @Test
  void whatIsOnHandAndInABagCanBeOtherThanInTheBook() {
    String mix = web.get("/api/mixes/brick").body();
    String cement = mix.replaceFirst("(?s).*?\"material\": \"([^\"]+)\".*", "$1");
    String fillings = "'fillings': [{'mould': 'doorstop', 'castings': 1}]";
    String one = "[{'material': '" + cement + "', 'grams': 1}]";
    String little =
        batch("{'mix': 'brick', 'have': " + one + ", 'bags': " + one + ", " + fillings + "}");
    String nothing = "{\"castings\": 0, \"limitedBy\": \"" + cement + "\"}";
    assertTrue(little.contains("\"onHand\": " + nothing), little);
    assertTrue(little.contains("\"bags\": [\n        " + nothing), little);
    assertNotEquals(little, batch("{'mix': 'brick', " + fillings + "}"));
  }

  @Test
  void theCommandAndTheServiceGiveTheSameAnswer() throws Exception {
    Path file = folder.resolve("book.json");
    Files.writeString(file, web.get("/api/book").body());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Process command =
        new ProcessBuilder(
                List.of(
                    FastStart.java(),
                    "-cp",
                    System.getProperty("java.class.path"),
                    "strickle.cli.Main",
                    "batch",
                    file.toString(),
                    "--mix=brick",
                    "--mould=doorstop=2",
                    "--round-up-grams=5000",
                    "--spare=cup=60ml",
                    "--json"))
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    command.getInputStream().transferTo(out);
    assertEquals(0, command.waitFor());
    String asked =
        "{'mix': 'brick', 'fillings': [{'mould': 'doorstop', 'castings': 2}],"
            + " 'roundUpGrams': 5000, 'spare': [{'name': 'cup', 'volumeMl': 60}]}";
    assertEquals(out.toString(StandardCharsets.UTF_8), batch(asked));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{'fillings': [{'volumeMl': 5, 'castings': 1}]}|$.mix",
        "{'mix': 'tar', 'fillings': [{'volumeMl': 5, 'castings': 1}]}|$.mix",
        "{'mix': 'brick', 'fillings': []}|$.fillings",
        "{'mix': 'brick', 'fillings': [{'castings': 1}]}|$.fillings[0].mould",
        "{'mix': 'brick', 'fillings': [{'mould': 'none', 'castings': 1}]}|$.fillings[0].mould",
        "{'mix': 'brick', 'fillings': [{'volumeMl': 5, 'castings': 0}]}|$.fillings[0].castings",
        "{'mix': 'brick', 'fillings': [{'volumeMl': 9999999, 'castings': 9999}]}|$.fillings",
        "{'mix': 'brick', 'scaleStepGrams': 0, 'fillings': [{'volumeMl': 5, 'castings': 1}]}"
            + "|$.scaleStepGrams",
        "{'mix': 'brick', 'scaleStepGrams': 90, 'fillings': [{'volumeMl': 5, 'castings': 1}]}"
            + "|$.scaleStepGrams",
        "{'mix': 'brick', 'have': [{'material': 'tar', 'grams': 1}],"
            + " 'fillings': [{'volumeMl': 5, 'castings': 1}]}|$.have[0].material",
        "{'mix': 'brick', 'bags': [{'material': 'white-cement', 'grams': 0}],"
            + " 'fillings': [{'volumeMl': 5, 'castings': 1}]}|$.bags[0].grams",
        "{'mix': 'brick', 'spare': [{'name': 'cup', 'volumeMl': 0}],"
            + " 'fillings': [{'volumeMl': 5, 'castings': 1}]}|$.spare[0].volumeMl",
      })
  void whatIsWrongIsToldWithItsField(String body, String field) {
    var answer = web.send("POST", "/api/batch", body.replace('\'', '"'));
    assertEquals(422, answer.statusCode(), answer.body());
    assertTrue(answer.body().contains("\"path\": \"" + field), answer.body());
  }
}
