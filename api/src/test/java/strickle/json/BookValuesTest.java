package strickle.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static strickle.json.ExampleBook.fault;
import static strickle.json.ExampleBook.path;

import org.junit.jupiter.api.Test;

/** Faults of values that are written in a form of their own: times, words, standards, shapes. */
class BookValuesTest {

  @Test
  void textsOfAFixedFormShowOneThatIsRight() {
    assertEquals(
        "$.studio.climate[0].from: found \"2027-04-05T00:00:00\"; right would be a local time"
            + " such as \"2027-04-05T09:00\", without seconds or offset",
        fault("\"2027-04-05T00:00\"", "\"2027-04-05T00:00:00\""));
    assertEquals(
        "$.people[0].exceptions[0].date: found \"2027-02-29\";"
            + " right would be a date such as \"2027-04-05\"",
        fault("2027-04-08", "2027-02-29"));
    assertEquals("$.fairs[0].opens", path("2027-05-01T09:00", "2027-05-01T09:00-05:00"));
    assertEquals("$.fairs[0].opens", path("2027-05-01T09:00", "+12027-05-01T09:00"));
    assertEquals("$.people[0].hours.FRI[0]", path("[\"09:00-13:00\"]", "[\"9:00-13:00\"]"));
  }

  @Test
  void wordsOfAListAreRefusedWithTheNearest() {
    assertEquals(
        "$.mixes[0].water.of: found \"dry + pigment\"; right would be \"dry+pigment\"",
        fault("dry+pigment", "dry + pigment"));
    assertEquals(
        "$.pieces[0].route[0].after.wait: found \"nap\"; right would be one of cure, dry, rest",
        fault("\"wait\": \"rest\"", "\"wait\": \"nap\""));
    assertEquals(
        "$.pieces[0].route[0].after.wait: found 0;"
            + " right would be one of \"cure\", \"dry\", \"rest\"",
        fault("\"wait\": \"rest\"", "\"wait\": 0"));
    assertEquals(
        "$.people[0].hours.SATT: found the unknown weekday \"SATT\"; right would be \"SAT\"",
        fault("\"SAT\": ", "\"SATT\": "));
    assertEquals(
        "$.people[0].hours: found []; right would be the hours by weekday,"
            + " such as {\"MON\": [\"09:00-12:00\", \"13:00-17:00\"]}",
        ExampleBook.fault(ExampleBook.json().replaceFirst("\"hours\": \\{.*\\}", "\"hours\": []")));
  }

  @Test
  void currenciesAndTimeZonesAreRefusedWithTheNearest() {
    assertEquals(
        "$.studio.currency: found \"usd\"; right would be \"USD\"", fault("\"USD\"", "\"usd\""));
    assertEquals(
        "$.studio.timeZone: found \"America/Chcago\"; right would be \"America/Chicago\"",
        fault("America/Chicago", "America/Chcago"));
    assertEquals(
        "$.studio.timeZone: found \"the middle of nowhere at all\";"
            + " right would be the name of a time zone such as \"America/Chicago\"",
        fault("America/Chicago", "the middle of nowhere at all"));
  }

  @Test
  void shapesAreRefusedWhereTheyAreWrong() {
    String of = "\"volumeMl\": 1180";
    assertEquals(
        "$.moulds[0].shape.solid: found \"cilinder\"; right would be \"cylinder\"",
        fault(of, "\"shape\": {\"solid\": \"cilinder\", \"radiusMm\": 1, \"heightMm\": 1}"));
    assertEquals(
        "$.moulds[0].shape.solid", path(of, "\"shape\": {\"radiusMm\": 1, \"heightMm\": 1}"));
    assertEquals(
        "$.moulds[0].shape[1].heightMm: found nothing; right would be a number",
        fault(
            of,
            "\"shape\": [{\"solid\": \"hemisphere\", \"radiusMm\": 9},"
                + " {\"solid\": \"cylinder\", \"radiusMm\": 1}]"));
    assertEquals(
        "$.moulds[0].shape.radiusMm",
        path(of, "\"shape\": {\"solid\": \"hemisphere\", \"radiusMm\": 0}"));
    assertEquals(
        "$.moulds[0].shape.substract: found the unknown field \"substract\";"
            + " right would be \"subtract\"",
        fault(of, "\"shape\": {\"solid\": \"hemisphere\", \"radiusMm\": 9, \"substract\": true}"));
    assertEquals(
        "$.moulds[0].shape.subtract: found 1; right would be true or false",
        fault(of, "\"shape\": {\"solid\": \"hemisphere\", \"radiusMm\": 9, \"subtract\": 1}"));
    assertEquals(
        "$.moulds[0].shape: found \"round\"; right would be a solid such as"
            + " {\"solid\": \"cylinder\", \"radiusMm\": 50, \"heightMm\": 100}",
        fault(of, "\"shape\": \"round\""));
  }
}
