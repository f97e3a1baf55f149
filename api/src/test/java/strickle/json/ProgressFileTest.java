package strickle.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.plan.replan.Happening;
import strickle.plan.replan.HappeningKind;

class ProgressFileTest {

  private static final String JSON =
      """
      {"format": "strickle-progress/1", "happened": [
        {"kind": "poured", "lot": "L1", "person": "ana",
         "start": "2027-04-05T09:00", "end": "2027-04-05T09:31"},
        {"kind": "demoulded", "run": "L1-1", "person": "ana", "start": "2027-04-06T09:00"},
        {"kind": "step", "run": "L1-1", "step": 2, "person": "ana",
         "start": "2027-04-06T09:00", "end": "2027-04-06T09:31"},
        {"kind": "scrapped", "run": "L1-1", "pieces": 2},
        {"kind": "away", "person": "ana",
         "from": "2027-04-06T09:00", "to": "2027-04-07T00:00"},
        {"kind": "broken", "form": "tub-a", "count": 1, "from": "2027-04-06T09:00"},
        {"kind": "back", "person": "ana", "from": "2027-04-06T15:00"},
        {"kind": "mended", "form": "tub-a", "count": 1, "from": "2027-04-08T09:00"}
      ]}
      """;

  private static List<String> faults(String json) {
    Faulty faulty = assertThrows(Faulty.class, () -> ProgressFile.parse(json));
    return faulty.faults().stream().map(Fault::toString).toList();
  }

  private static String one(String fields) {
    return "{\"format\": \"strickle-progress/1\", \"happened\": [{" + fields + "}]}";
  }

  @Test
  void everyKindIsRead() {
    List<Happening> happened = ProgressFile.parse(JSON);
    assertEquals(List.of(HappeningKind.values()), happened.stream().map(Happening::kind).toList());
    assertEquals("L1-1/step-2", happened.get(2).task());
  }

  @Test
  void whatIsWrittenIsReadAgain() {
    List<Happening> happened = ProgressFile.parse(JSON);
    assertEquals(happened, ProgressFile.parse(ProgressFile.write(happened)));
  }

  @Test
  void anUnknownFieldIsToldWithTheNearest() {
    assertEquals(
        List.of(
            "$.happened[0].peices: found the unknown field \"peices\"; right would be \"pieces\""),
        faults(one("\"kind\": \"scrapped\", \"run\": \"L1-1\", \"pieces\": 1, \"peices\": 1")));
  }

  @Test
  void whatIsMissingAndWhatDoesNotBelongIsToldAtOnce() {
    assertEquals(
        List.of(
            "$.happened[0].lot: found nothing; right would be one, as it is \"poured\"",
            "$.happened[0].start: found nothing; right would be one, as it is \"poured\"",
            "$.happened[0].form: found one; right would be nothing, as it is \"poured\""),
        faults(one("\"kind\": \"poured\", \"person\": \"ana\", \"form\": \"tub-a\"")));
  }

  @Test
  void timesAreInOrderAndCountsAboveNothing() {
    assertEquals(
        List.of(
            "$.happened[0].end: found 2027-04-05T09:00;"
                + " right would be a time after 2027-04-05T09:31"),
        faults(
            one(
                "\"kind\": \"poured\", \"lot\": \"L1\", \"person\": \"ana\","
                    + " \"start\": \"2027-04-05T09:31\", \"end\": \"2027-04-05T09:00\"")));
    assertEquals(
        List.of("$.happened[0].pieces: found 0; right would be a whole number, 1 or more"),
        faults(one("\"kind\": \"scrapped\", \"run\": \"L1-1\", \"pieces\": 0")));
  }

  @Test
  void anotherFileIsRefused() {
    assertEquals(
        List.of(
            "$.format: found \"strickle-plan/1\"; right would be what has happened,"
                + " beginning with {\"format\": \"strickle-progress/1\", …"),
        faults("{\"format\": \"strickle-plan/1\"}"));
  }
}
