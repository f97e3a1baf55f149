package strickle.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.json.ExampleBook.fault;
import static strickle.json.ExampleBook.path;

import java.util.List;
import org.junit.jupiter.api.Test;
import strickle.book.Fault;

class BookFaultsTest {

  @Test
  void unknownFieldsAreRefusedWithTheNearestKnownName() {
    assertEquals(
        "$.moulds[0].wastPercent: found the unknown field \"wastPercent\";"
            + " right would be \"wastePercent\"",
        fault("\"wastePercent\": 2", "\"wastePercent\": 2, \"wastPercent\": 2"));
  }

  @Test
  void unknownFieldsThatBeginLikeAKnownOneAreRefusedWithThatOneAndAllNames() {
    String told = fault("\"wagePerHour\": 22.0", "\"wagePerHour\": 22.0, \"wage\": 22.0");
    assertTrue(told.contains("right would be \"wagePerHour\", or one of name, "), told);
  }

  @Test
  void unknownFieldsLikeNoOtherAreRefusedWithAllNames() {
    assertEquals(
        "$.stations[0].colour: found the unknown field \"colour\";"
            + " right would be one of id, name, places",
        fault("\"places\": 24", "\"places\": 24, \"colour\": \"red\""));
  }

  @Test
  void unknownFieldsWithStrangeNamesHaveAPathThatHoldsThem() {
    assertEquals(
        "$.stations[0]['it\\'s \\u000a']: found the unknown field \"it's \\n\";"
            + " right would be one of id, name, places",
        fault("\"places\": 24", "\"places\": 24, \"it's \\n\": 1"));
  }

  @Test
  void missingRequiredFieldsAreFaults() {
    assertEquals(
        "$.moulds[0].pourMinutes: found nothing; right would be a whole number",
        fault("\"pourMinutes\": 5, ", ""));
    assertEquals(
        "$.mixes[0].water: found nothing; right would be an object { } with percent, of",
        fault("\"water\": {\"percent\": 25, \"of\": \"dry+pigment\"}, ", ""));
    assertEquals(
        "$.orders[0].due: found nothing; right would be a local time such as"
            + " \"2027-04-05T09:00\", without seconds or offset",
        fault("\"due\": \"2027-04-24T17:00\", ", ""));
    assertEquals(
        "$.moulds[0].core.safetyFactor: found nothing; right would be a number",
        fault(", \"safetyFactor\": 1.5", ""));
  }

  @Test
  void nullIsNoValueForARequiredField() {
    assertEquals(
        "$.moulds[0].cavities: found null; right would be a whole number",
        fault("\"cavities\": 1", "\"cavities\": null"));
    assertEquals(
        "$.orders[0].lines[0]: found null;"
            + " right would be an object { } with piece, quantity, price",
        fault(
            "\"lines\": [ {\"piece\": \"planter-slate\", \"quantity\": 4, \"price\": 68.0} ]",
            "\"lines\": [null]"));
  }

  @Test
  void valuesOfTheWrongKindAreShown() {
    assertEquals(
        "$.moulds[0].setHours: found \"20\"; right would be a number",
        fault("\"setHours\": 20", "\"setHours\": \"20\""));
    assertEquals(
        "$.moulds[0].cavities: found true; right would be a whole number",
        fault("\"cavities\": 1", "\"cavities\": true"));
    assertEquals(
        "$.studio.name: found 7; right would be a text in double quotes",
        fault("\"Kiln Lane Castings\"", "7"));
    assertEquals(
        "$.pieces[0].route[1].by: found \"ana\";"
            + " right would be a list [ ] whose values are each a text in double quotes",
        fault("\"by\": [\"ana\"]", "\"by\": \"ana\""));
    assertEquals(
        "$.stations[0]: found [];" + " right would be an object { } with id, name, places",
        fault("\"stations\": [ ", "\"stations\": [ [], "));
  }

  @Test
  void longValuesAreShortenedToSixtyCharacters() {
    String shown = "[\"" + "x".repeat(57) + "…";
    assertEquals(60, shown.length());
    assertEquals(
        "$.studio.name: found " + shown + "; right would be a text in double quotes",
        fault("\"Kiln Lane Castings\"", "[\"" + "x".repeat(90) + "\", 1]"));
    assertEquals(
        "$.studio.wagePerHour: found {\"a\": [1, 2, {\"b\": null}], \"c\": \"y\"};"
            + " right would be a number",
        fault("\"wagePerHour\": 22.0", "\"wagePerHour\": {\"a\":[1,2,{\"b\":null}],\"c\":\"y\"}"));
  }

  @Test
  void wholeNumbersHaveNoFraction() {
    assertEquals(
        "$.stations[0].places: found 2.5; right would be a whole number",
        fault("\"places\": 24", "\"places\": 2.5"));
  }

  @Test
  void wholeNumbersOutOfRangeAreFaults() {
    String right = "; right would be a whole number from -2147483648 to 2147483647";
    assertEquals(
        "$.stations[0].places: found 2147483648" + right,
        fault("\"places\": 24", "\"places\": 2147483648"));
    assertEquals(
        "$.stations[0].places: found 1E+999" + right, fault("\"places\": 24", "\"places\": 1e999"));
    assertEquals(
        "$.stations[0].places: found -1E+999999999" + right,
        fault("\"places\": 24", "\"places\": -1e999999999"));
  }

  @Test
  void numbersOfAbsurdSizeAreFaults() {
    assertEquals(
        "$.moulds[0].setHours: found 1E+999; right would be a number of an ordinary size",
        fault("\"setHours\": 20", "\"setHours\": 1e999"));
    String right = "; right would be a number with at most 30 digits before and after the point";
    assertEquals(
        "$.studio.wagePerHour: found 1E+999999999" + right,
        fault("\"wagePerHour\": 22.0", "\"wagePerHour\": 1e999999999"));
    assertEquals(
        "$.studio.wagePerHour: found 1E-31" + right,
        fault("\"wagePerHour\": 22.0", "\"wagePerHour\": 1e-31"));
  }

  @Test
  void exponentsBeyondAllBoundsAreRefusedWithLineAndColumn() {
    assertEquals(
        "$: found 1e99999999999 at line 5, column 20;"
            + " right would be a number of an ordinary size",
        fault("\"wagePerHour\": 22.0", "\"wagePerHour\": 1e99999999999"));
  }

  @Test
  void faultsOfARecordCarryItsPath() {
    assertEquals(
        "$.moulds[0].demouldMinutes: found 0; right would be a whole number from 1 to 100000",
        fault("\"demouldMinutes\": 8", "\"demouldMinutes\": 0"));
    assertEquals("$.orders[0].for", path("\"a garden shop\"", "\"a\\u0000b\""));
    assertEquals("$.pieces[0].route[1].after.hours", path("\"hours\": 120", "\"hours\": -1"));
    assertEquals(
        "$.people[0].hours.MON[1]",
        path(
            "[\"09:00-12:00\", \"13:00-17:00\"], \"TUE\"",
            "[\"09:00-12:00\", \"11:00-17:00\"], \"TUE\""));
  }

  @Test
  void faultsOfTheWholeBookCarryTheirPath() {
    List<Fault> faults =
        ExampleBook.faults(ExampleBook.with("\"mould\": \"planter-deep\"", "\"mould\": \"pot\""));
    assertEquals("$.pieces[0].mould", faults.get(0).path());
    assertEquals("\"pot\"", faults.get(0).found());
  }

  @Test
  void allFaultsAreToldAtOnceInTheOrderOfTheFile() {
    String json =
        ExampleBook.with("\"name\": \"Kiln Lane Castings\", ", "")
            .replace("\"MON\": [", "\"MON\": [\"9-12\", ")
            .replace("\"places\": 24", "\"places\": 2.5, \"size\": 1")
            .replace("\"demouldMinutes\": 8", "\"demouldMinutes\": -8")
            .replace("\"wait\": \"cure\"", "\"wait\": \"cures\"")
            .replace("\"leftoverValue\": 40.0", "\"leftoverValue\": \"40\"");
    assertEquals(
        List.of(
            "$.studio.name",
            "$.people[0].hours.MON[0]",
            "$.stations[0].places",
            "$.stations[0].size",
            "$.moulds[0].demouldMinutes",
            "$.pieces[0].route[1].after.wait",
            "$.pieces[0].leftoverValue"),
        ExampleBook.faults(json).stream().map(Fault::path).toList());
  }

  @Test
  void aFaultyPartDoesNotBringFaultsOfItsWhole() {
    // Without its only line the order would be refused for having none.
    assertEquals(
        "$.orders[0].lines[0].quantity: found \"4\"; right would be a whole number",
        fault("\"quantity\": 4", "\"quantity\": \"4\""));
  }

  @Test
  void moreFaultsThanAnybodyReadsAreCutOffAndThatIsTold() {
    String list = "[" + "1,".repeat(5000) + "1]";
    String json = ExampleBook.with("\"pins\": []", "\"pins\": " + list);
    List<Fault> faults = ExampleBook.faults(json);
    assertEquals(1000, faults.size());
    assertEquals("$.pins[998]", faults.get(998).path());
    assertEquals(
        "$: found 1000 faults or more; right would be these put right first",
        faults.get(999).toString());
  }

  @Test
  void fieldsThatStandTwiceAreFaultsWithPathLineAndColumn() {
    assertEquals(
        "$.studio.name: found the field \"name\" a second time at line 4, column 35;"
            + " right would be every field once",
        fault(
            "\"name\": \"Kiln Lane Castings\", ",
            "\"name\": \"Kiln Lane Castings\", \"name\": \"x\", "));
    assertEquals("$.people[0].hours.SAT", path("\"SAT\": [", "\"SAT\": [], \"SAT\": ["));
    assertEquals("$.pins", path("\"pins\":", "\"pins\": [], \"pins\":"));
  }

  @Test
  void theFormatMustBeThisOne() {
    assertEquals(
        "$.format: found nothing; right would be \"strickle-book/1\"",
        fault("\"format\": \"strickle-book/1\",", ""));
    assertEquals(
        "$.format: found \"strickle-book/2\"; right would be \"strickle-book/1\"",
        fault("strickle-book/1", "strickle-book/2"));
    assertEquals(
        "$.format: found 1; right would be \"strickle-book/1\"", fault("\"strickle-book/1\"", "1"));
  }

  @Test
  void anotherKindOfFileIsToldAsSuchAndNoMore() {
    assertEquals(
        "$.format: found \"strickle-plan/1\"; right would be a studio book,"
            + " beginning with {\"format\": \"strickle-book/1\", …",
        ExampleBook.fault("{\"format\": \"strickle-plan/1\", \"book\": \"x\", \"lots\": []}"));
  }

  @Test
  void foundValuesNeverNameThePartsOfTheProgram() {
    for (Fault fault : ExampleBook.faults("{\"format\": 3, \"studio\": [], \"pins\": {}}")) {
      assertTrue(
          !fault.toString().contains("strickle.") && !fault.toString().contains("java"),
          fault.toString());
    }
  }

  @Test
  void idsThatAreNowhereAreToldTogetherWithFaultsThatKeepTheBookFromBeingMade() {
    String json =
        ExampleBook.with("\"pourMinutes\": 5", "\"pourMinutes\": -5")
            .replace("\"mix\": \"slate\"", "\"mix\": \"slat\"")
            .replace("\"channel\": \"own-table\"", "\"channel\": \"market\"")
            .replace("\"by\": [\"ana\"]", "\"by\": [\"ana\", \"bob\"]");
    List<String> paths = ExampleBook.faults(json).stream().map(Fault::path).toList();
    assertEquals(
        List.of(
            "$.moulds[0].pourMinutes",
            "$.pieces[0].mix",
            "$.pieces[0].route[1].by[1]",
            "$.fairs[0].channel"),
        paths);
  }

  @Test
  void aPersonMayHaveSpecialDaysOnly() {
    String json = ExampleBook.json().replaceAll("\"hours\": \\{[^}]*},\\s*", "");
    assertTrue(ExampleBook.parse(json).people().get(0).hours().isEmpty());
  }
}
