package strickle.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.plan.FormHold;
import strickle.plan.Lot;
import strickle.plan.OrderOutcome;
import strickle.plan.Plan;
import strickle.plan.PlanWait;
import strickle.plan.Ready;
import strickle.plan.Run;
import strickle.plan.Spell;
import strickle.plan.Task;
import strickle.plan.TaskKind;
import strickle.plan.Totals;
import strickle.plan.Wait;
import strickle.plan.Weighed;

class PlanFileTest {

  /** A plan as its file has it. */
  static final String JSON =
      """
      {
        "format": "strickle-plan/1",
        "book": "a small studio",
        "from": "2027-04-05T00:00-05:00",
        "seed": 0,
        "lots": [
          {
            "id": "L1",
            "mix": "slate",
            "runs": [
              {
                "id": "L1-1",
                "piece": "planter-slate",
                "castings": 1,
                "forms": [{"form": "tub-a", "units": [1]}, {"form": "tub-b", "units": [1]}],
                "ballastGramsEach": 7872
              },
              {
                "id": "L1-2",
                "piece": "tray",
                "castings": 2,
                "forms": [{"form": "tray", "units": [2, 3]}]
              }
            ],
            "weighOut": [
              {"material": "white-blend", "grams": 1937.3},
              {"material": "iron-black", "grams": 58.1},
              {"material": "water", "grams": 499}
            ],
            "wetGrams": 2494.4
          }
        ],
        "tasks": [
          {
            "id": "L1/pour",
            "kind": "pour",
            "lot": "L1",
            "person": "ana",
            "spells": [{"start": "2027-04-05T09:00-05:00", "end": "2027-04-05T09:31-05:00"}]
          },
          {
            "id": "L1-1/demould",
            "kind": "demould",
            "run": "L1-1",
            "person": "ana",
            "spells": [
              {"start": "2027-04-06T11:56-05:00", "end": "2027-04-06T12:00-05:00"},
              {"start": "2027-04-06T13:00-05:00", "end": "2027-04-06T13:04-05:00"}
            ]
          },
          {
            "id": "L1-1/step-1",
            "kind": "step",
            "run": "L1-1",
            "step": 1,
            "person": "ana",
            "spells": [{"start": "2027-04-06T13:04-05:00", "end": "2027-04-06T13:12-05:00"}]
          }
        ],
        "waits": [
          {
            "run": "L1-1",
            "kind": "set",
            "from": "2027-04-05T09:23-05:00",
            "to": "2027-04-06T07:02-05:00"
          }
        ],
        "ready": [{"run": "L1-1", "at": "2027-04-07T13:12-05:00"}],
        "orders": [
          {
            "order": "O-104",
            "ready": "2027-04-07T18:12+00:00",
            "lateMinutes": 0,
            "because": ["the tubs are in use", "nobody works on Wednesday"]
          }
        ],
        "totals": {
          "weightedLateHours": 1.5,
          "lateOrders": 0,
          "attendedMinutes": 47,
          "lots": 1,
          "lastReady": "2027-04-07T13:12-05:00"
        }
      }
      """;

  @Test
  void aPlanIsWrittenAsItsFormatSays() {
    assertEquals(JSON, PlanFile.write(plan("1.50")));
  }

  @Test
  void aPlanWrittenIsReadBackEqual() {
    Plan plan = plan("1.5");
    assertEquals(plan, PlanFile.parse(PlanFile.write(plan)));
    assertEquals(plan, PlanFile.parse("\uFEFF" + JSON));
  }

  @Test
  void weightedLateHoursHaveNeitherExponentNorTrailingZeros() {
    assertTrue(PlanFile.write(plan("100.00")).contains("\"weightedLateHours\": 100,"));
    assertTrue(PlanFile.write(plan("1E+3")).contains("\"weightedLateHours\": 1000,"));
    assertTrue(PlanFile.write(plan("0.00")).contains("\"weightedLateHours\": 0,"));
  }

  @Test
  void greenwichIsReadInBothWaysAndWrittenAsAnOffset() {
    Plan plan = PlanFile.parse(JSON.replace("T18:12+00:00", "T18:12Z"));
    assertEquals(plan("1.5"), plan);
    assertEquals(JSON, PlanFile.write(plan));
  }

  @Test
  void timesWithSecondsAreNeverWritten() {
    Ready ready = new Ready("L1-1", OffsetDateTime.parse("2027-04-07T13:12:30-05:00"));
    assertThrows(IllegalArgumentException.class, () -> Message.write(ready));
  }

  @Test
  void tasksOfARunThatNoLotHasAreFaults() {
    String json =
        JSON.replace(
            "\"kind\": \"demould\",\n      \"run\": \"L1-1\"",
            "\"kind\": \"demould\",\n      \"run\": \"L9-9\"");
    assertEquals(
        List.of(
            "$.tasks[1].run: found \"L9-9\";"
                + " right would be the id of a run of one of the plan's lots"),
        faults(json));
  }

  @Test
  void poursNeedTheirLot() {
    assertEquals(
        List.of("$.tasks[0].lot: found nothing; right would be a text in double quotes"),
        faults(JSON.replace("      \"lot\": \"L1\",\n", "")));
  }

  @Test
  void faultsOfAPlanAreAllToldWithTheirPaths() {
    String json =
        JSON.replace("\"seed\": 0", "\"seed\": 0.5")
            .replace("\"castings\": 2", "\"castings\": 0")
            .replace("[2, 3]", "[2, \"3\"]")
            .replace("2027-04-05T09:23-05:00", "2027-04-05T09:23")
            .replace("\"kind\": \"set\"", "\"kind\": \"sit\"")
            .replace("\"lastReady\"", "\"lastRedy\"");
    assertEquals(
        List.of(
            "$.seed",
            "$.lots[0].runs[1].forms[0].units[1]",
            "$.waits[0].kind",
            "$.waits[0].from",
            "$.totals.lastRedy",
            "$.totals.lastReady"),
        faults(json).stream().map(fault -> fault.substring(0, fault.indexOf(':'))).toList());
  }

  @Test
  void constructorsOfAPlanHaveTheLastWord() {
    assertEquals(
        List.of("$.lots[0].runs[1].castings: found 0; right would be a whole number, 1 or more"),
        faults(JSON.replace("\"castings\": 2", "\"castings\": 0")));
  }

  @Test
  void aBookIsNoPlan() {
    assertEquals(
        List.of(
            "$.format: found \"strickle-book/1\"; right would be a plan,"
                + " beginning with {\"format\": \"strickle-plan/1\", …"),
        faults(ExampleBook.json()));
  }

  @Test
  void emptyFilesAreToldHowToBegin() {
    assertEquals(
        List.of(
            "$: found an empty file; right would be a plan,"
                + " beginning with {\"format\": \"strickle-plan/1\", …"),
        faults(""));
  }

  private static List<String> faults(String json) {
    return assertThrows(Faulty.class, () -> PlanFile.parse(json)).faults().stream()
        .map(Fault::toString)
        .toList();
  }

  private static Plan plan(String weightedLateHours) {
    return new Plan(
        "a small studio",
        at("05T00:00"),
        0,
        List.of(lot()),
        List.of(
            task("L1/pour", TaskKind.POUR, "", 0, spell("05T09:00", "05T09:31")),
            task(
                "L1-1/demould",
                TaskKind.DEMOULD,
                "L1-1",
                0,
                spell("06T11:56", "06T12:00"),
                spell("06T13:00", "06T13:04")),
            task("L1-1/step-1", TaskKind.STEP, "L1-1", 1, spell("06T13:04", "06T13:12"))),
        List.of(new Wait("L1-1", PlanWait.SET, at("05T09:23"), at("06T07:02"))),
        List.of(new Ready("L1-1", at("07T13:12"))),
        List.of(
            new OrderOutcome(
                "O-104",
                OffsetDateTime.parse("2027-04-07T18:12Z"),
                0,
                List.of("the tubs are in use", "nobody works on Wednesday"))),
        new Totals(new BigDecimal(weightedLateHours), 0, 47, 1, at("07T13:12")));
  }

  private static Lot lot() {
    return new Lot(
        "L1",
        "slate",
        List.of(
            new Run(
                "L1-1",
                "planter-slate",
                1,
                List.of(new FormHold("tub-a", List.of(1)), new FormHold("tub-b", List.of(1))),
                OptionalLong.of(7872)),
            new Run(
                "L1-2",
                "tray",
                2,
                List.of(new FormHold("tray", List.of(2, 3))),
                OptionalLong.empty())),
        List.of(
            new Weighed("white-blend", 1937.3),
            new Weighed("iron-black", 58.1),
            new Weighed("water", 499)),
        2494.4);
  }

  private static Task task(String id, TaskKind kind, String run, int step, Spell... spells) {
    return new Task(
        id,
        kind,
        "L1",
        Optional.of(run).filter(name -> !name.isEmpty()),
        step == 0 ? OptionalInt.empty() : OptionalInt.of(step),
        "ana",
        List.of(spells));
  }

  private static Spell spell(String start, String end) {
    return new Spell(at(start), at(end));
  }

  private static OffsetDateTime at(String dayAndTime) {
    return OffsetDateTime.parse("2027-04-" + dayAndTime + "-05:00");
  }
}
