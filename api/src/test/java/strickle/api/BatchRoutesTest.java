package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
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
      })
  void whatIsWrongIsToldWithItsField(String body, String field) {
    var answer = web.send("POST", "/api/batch", body.replace('\'', '"'));
    assertEquals(422, answer.statusCode(), answer.body());
    assertTrue(answer.body().contains("\"path\": \"" + field), answer.body());
  }
}
