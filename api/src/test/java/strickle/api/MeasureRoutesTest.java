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

/** The bench over HTTP: the same figures as on the command line, and every fault in its field. */
class MeasureRoutesTest {

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

  // The figures are those of the command line's tests; Archimedes: 2.115 g/ml x 2600 ml = 5499 g.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "volume|{'shape': {'solid': 'box', 'lengthMm': 200, 'widthMm': 150, 'heightMm': 25}}"
            + "|'volumeMl': 750",
        "volume|{'outer': {'solid': 'cylinder', 'radiusMm': 60, 'heightMm': 90}, 'inner':"
            + " {'solid': 'cylinder', 'radiusMm': 50, 'heightMm': 80}}|'wallMm': 10",
        "volume|{'pouredGrams': 2494, 'densityKgPerM3': 2494}|'volumeMl': 1000",
        "volume|{'waterGrams': 1180, 'waterC': 18}|'from': 'water'",
        "ballast|{'displacedMl': 2600, 'massGrams': 140, 'densityKgPerM3': 2115}"
            + "|'displacedGrams': 5499",
        "ballast|{'depthMm': 200, 'wallMm': 300, 'densityKgPerM3': 2250}|'wallNewtons'",
        "ballast|{'core': {'solid': 'cylinder', 'radiusMm': 50, 'heightMm': 80},"
            + " 'densityKgPerM3': 2250, 'sealed': true}|'ballastGrams': 0",
        "curing|{'hours': 16, 'roomsC': [20]}|'referenceHours': 16",
        "curing|{'ageDays': 10, 'cement': 'n'}|'en1992'",
        "room|{'airC': 22, 'humidityPercent': 78}|'dewPointC': 17.98",
        "coat|{'areaM2': 1.2, 'coats': 2, 'solidsPercent': 40, 'dryFilmMm': 0.025}|'litres': 0.15",
        "coat|{'areaM2': 2, 'uptakeGramsPerM2': 75, 'densityKgPerM3': 1000}|'ml': 150",
        "coat|{'areaM2': 0.05, 'leafMm': 80}|'sheets': 8",
        "lift|{'massKg': 25}|'limitKg': 8.8",
      })
  void whatIsAskedIsAnswered(String path, String body, String part) {
    var answer = web.send("POST", "/api/" + path, body.replace('\'', '"'));
    assertEquals(200, answer.statusCode(), answer.body());
    assertTrue(answer.body().contains(part.replace('\'', '"')), answer.body());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "volume|{}|$.shape",
        "volume|{'waterGrams': 5, 'waterC': 90}|$.waterC",
        "volume|{'waterGrams': 5, 'pouredGrams': 90}|$.densityKgPerM3",
        "volume|{'mesh': 'none.stl'}|$.mesh",
        "volume|{'shape': {'solid': 'ball'}}|$.shape",
        "volume|{'outer': {'solid': 'cylinder', 'radiusMm': 60, 'heightMm': 90}}|$.inner",
        "volume|{'outer': {'solid': 'cylinder', 'radiusMm': 60, 'heightMm': 90}, 'inner':"
            + " {'solid': 'cylinder', 'radiusMm': 70, 'heightMm': 80}}|$.inner",
        "volume|{'outer': {'solid': 'cylinder', 'radiusMm': 60, 'heightMm': 90}, 'leastWallMm':"
            + " 11, 'inner': {'solid': 'cylinder', 'radiusMm': 50, 'heightMm': 80}}|$.inner",
        "ballast|{'densityKgPerM3': 2115}|$.displacedMl",
        "ballast|{'displacedMl': 1, 'densityKgPerM3': 2115, 'safetyFactor': 0.5}|$.safetyFactor",
        "ballast|{'displacedMl': 1, 'densityKgPerM3': 2115, 'wallMm': 5}|$.depthMm",
        "ballast|{'core': {'solid': 'torus', 'ringRadiusMm': 50, 'tubeRadiusMm': 8},"
            + " 'densityKgPerM3': 2250, 'sealed': true}|$.core",
        "curing|{}|$.hours",
        "curing|{'hours': 16, 'roomsC': [20, 99]}|$.roomsC[1]",
        "curing|{'hours': 16, 'activationKj': 40, 'datumC': -10}|$.activationKj",
        "curing|{'records': [{'casting': 'a', 'stretches': [{'hours': 3, 'temperatureC': 9}]}]}"
            + "|$.records",
        "room|{'airC': 70, 'humidityPercent': 78}|$.airC",
        "room|{'airC': 20, 'humidityPercent': 0}|$.humidityPercent",
        "coat|{'areaM2': 1}|$.solidsPercent",
        "coat|{'areaM2': 1, 'solidsPercent': 40}|$.dryFilmMm",
        "coat|{'solidsPercent': 40, 'dryFilmMm': 0.025}|$.areaM2",
        "coat|{'areaM2': 1, 'leafMm': 80, 'overlapMm': 80}|$.overlapMm",
        "lift|{'massKg': -1}|$.massKg",
        "drying-fit|{'weighings': [{'grams': 5}]}|$.weighings[0].at",
        "drying-fit|{'weighings': [{'days': 0, 'grams': 5}]}|$.weighings",
        "drying|{'id': '', 'name': 'a', 'weighings': []}|$.id",
        "drying|{'id': '\\u0000', 'name': 'a', 'weighings': []}|$.id",
        "drying|{'id': 'a\\ud800', 'name': 'a', 'weighings': []}|$.id",
        "drying|{'id': 'a/b', 'name': 'a', 'weighings': []}|$.id",
        "drying|{'id': 'aaaaaaaaaabbbbbbbbbbccccccccccddddddddddeeeeeeeeeeffffffffffggggg',"
            + " 'name': 'a', 'weighings': []}|$.id",
        "drying|{'id': 'a', 'name': ' ', 'weighings': []}|$.name",
        "drying|{'id': 'a', 'name': 'a', 'weighings':"
            + " [{'at': '2027-04-05T09:00', 'grams': -5}]}|$.weighings[0].grams",
        "drying|{'id': 'a', 'name': 'a', 'weighings':"
            + " [{'at': '2027-04-05T09:00', 'grams': 0}]}|$.weighings[0].grams",
      })
  void whatIsWrongIsToldWithItsField(String path, String body, String field) {
    var answer = web.send("POST", "/api/" + path, body.replace('\'', '"'));
    assertEquals(422, answer.statusCode(), answer.body());
    assertTrue(answer.body().contains("\"path\": \"" + field), answer.body());
  }

  @Test
  void daysAreElapsedDaysAcrossAClockChange() {
    // Halifax puts its clocks on at 2 in the night to 14 March 2027: that day has 23 hours.
    String log =
        "{\"weighings\": [{\"at\": \"2027-03-12T09:00\", \"grams\": 2306.2},"
            + " {\"at\": \"2027-03-13T09:00\", \"grams\": 2287.4},"
            + " {\"at\": \"2027-03-14T09:00\", \"grams\": 2272.6},"
            + " {\"at\": \"2027-03-16T09:00\", \"grams\": 2252.9},"
            + " {\"at\": \"2027-03-19T09:00\", \"grams\": 2236.5},"
            + " {\"at\": \"2027-03-21T09:00\", \"grams\": 2231}]}";
    String fit = web.send("POST", "/api/drying-fit", log).body();
    assertTrue(fit.contains("\"days\": 8.958333333"), fit);
    assertTrue(fit.contains("\"limitAt\""), fit);
  }

  @Test
  void aMeshThatIsNotClosedIsRefusedWithItsOpenEdges() {
    var whole = web.send("POST", "/api/volume/mesh", MeshRoutes.EXAMPLE);
    assertTrue(whole.body().contains("\"volumeMl\": 4.5"), whole.body());
    String open = MeshRoutes.EXAMPLE.replaceFirst("(?m)^facet .*\\n", "");
    var refused = web.send("POST", "/api/volume/mesh", open);
    assertEquals(422, refused.statusCode());
    assertTrue(refused.body().contains("open edges: 3"), refused.body());
    assertEquals(
        400, web.send("POST", "/api/volume/mesh?unit=mile", MeshRoutes.EXAMPLE).statusCode());
  }

  @Test
  void theBooksCoresHaveTheirBallast() {
    assertTrue(web.get("/api/ballast").body().contains("lantern-tall-basalt"));
  }
}
