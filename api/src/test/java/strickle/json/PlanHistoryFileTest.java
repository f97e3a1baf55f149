package strickle.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.plan.History;
import strickle.plan.Plan;
import strickle.plan.Task;

class PlanHistoryFileTest {

  private static final String JSON =
      """
      {
        "format": "strickle-plan/1", "book": "a small studio", "from": "2027-04-05T00:00-05:00",
        "seed": 0,
        "lots": [
          {"id": "L1", "mix": "slate", "weighOut": [], "wetGrams": 10,
           "runs": [{"id": "L1-1", "piece": "tray", "castings": 2, "forms": [], "scrapped": 1}]}
        ],
        "tasks": [
          {"id": "L1/pour", "kind": "pour", "lot": "L1", "person": "ana", "done": true,
           "spells": [{"start": "2027-04-05T09:00-05:00", "end": "2027-04-05T09:31-05:00"}]},
          {"id": "L1-1/demould", "kind": "demould", "run": "L1-1", "person": "ana", "begun": true,
           "spells": [{"start": "2027-04-06T11:50-05:00", "end": "2027-04-06T12:10-05:00"}]}
        ],
        "waits": [], "ready": [], "orders": [],
        "totals": {"weightedLateHours": 0, "lateOrders": 0, "attendedMinutes": 51, "lots": 1,
                   "lastReady": "2027-04-06T12:10-05:00"},
        "history": {
          "now": "2027-04-06T12:00-05:00",
          "away": [{"person": "ana", "from": "2027-04-07T09:00-05:00",
                    "to": "2027-04-08T00:00-05:00"}],
          "broken": [{"form": "tray", "units": [2], "from": "2027-04-06T09:00-05:00"}],
          "exceeded": [{"task": "L1-1/demould", "minutes": 20}]
        }
      }
      """;

  @Test
  void whatHasHappenedIsRead() {
    Plan plan = PlanFile.parse(JSON);
    assertEquals(List.of(true, false), plan.tasks().stream().map(Task::done).toList());
    assertEquals(List.of(false, true), plan.tasks().stream().map(Task::begun).toList());
    assertEquals(1, plan.lots().get(0).runs().get(0).scrapped());
    History history =
        new History(
            at("06T12:00"),
            List.of(new History.Away("ana", at("07T09:00"), at("08T00:00"))),
            List.of(new History.Broken("tray", List.of(2), at("06T09:00"))),
            List.of(new History.Exceeded("L1-1/demould", 20)));
    assertEquals(Optional.of(history), plan.history());
  }

  @Test
  void whatIsWrittenIsReadAgain() {
    Plan plan = PlanFile.parse(JSON);
    assertEquals(plan, PlanFile.parse(PlanFile.write(plan)));
  }

  @Test
  void aPlanInWhichNothingHasHappenedSaysNothingOfIt() {
    String fresh =
        JSON.replace("\"done\": true,", "")
            .replace("\"begun\": true,", "")
            .replace(", \"scrapped\": 1", "")
            .replaceAll("(?s),\\s*\"history\": .*\\]\\s*}\\s*}", "}");
    String written = PlanFile.write(PlanFile.parse(fresh));
    for (String word : List.of("done", "begun", "scrapped", "history")) {
      assertFalse(written.contains(word), written);
    }
    assertTrue(PlanFile.parse(fresh).history().isEmpty());
  }

  @Test
  void whatIsWrongWithAHistoryIsToldWithItsPath() {
    String wrong =
        JSON.replace("\"units\": [2]", "\"units\": []")
            .replace("\"minutes\": 20", "\"minutes\": 0");
    Faulty faulty = assertThrows(Faulty.class, () -> PlanFile.parse(wrong));
    assertEquals(
        List.of("$.history.broken[0].units", "$.history.exceeded[0].minutes"),
        faulty.faults().stream().map(Fault::path).toList());
  }

  private static OffsetDateTime at(String dayAndTime) {
    return OffsetDateTime.parse("2027-04-" + dayAndTime + "-05:00");
  }
}
