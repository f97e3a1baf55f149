package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static strickle.plan.SamplePlan.at;
import static strickle.plan.SamplePlan.spell;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import strickle.book.Altered;
import strickle.book.Fault;
import strickle.book.Faulty;

/** What a record of a plan refuses by itself, and what it leaves to the audit. */
class PlanRecordsTest {

  private static final Plan PLAN = SamplePlan.example();
  private static final Lot LOT = PLAN.lots().get(0);
  private static final Run RUN = LOT.runs().get(0);
  private static final Task POUR = PLAN.tasks().get(0);
  private static final Task DEMOULD = PLAN.tasks().get(1);
  private static final Task STEP = PLAN.tasks().get(2);
  private static final Task DONE = Altered.of(POUR, "done", true);
  private static final History HISTORY =
      new History(
          at("04-05T12:00"),
          List.of(new History.Away("ana", at("04-05T09:00"), at("04-05T10:00"))),
          List.of(new History.Broken("tub-a", List.of(1), at("04-05T09:00"))),
          List.of(new History.Exceeded("L1-1/demould", 1)));
  private static final Wait WAIT = PLAN.waits().get(0);

  /** A record, a component, a value it refuses, and the path of the fault. */
  record Refusal(Record record, String component, Object value, String path) {

    static Refusal of(Record record, String component, Object value) {
      return new Refusal(record, component, value, "." + component);
    }
  }

  static Stream<Refusal> refusals() {
    FormHold hold = RUN.forms().get(0);
    return Stream.of(
        Refusal.of(PLAN, "book", null),
        Refusal.of(PLAN, "from", at("04-05T00:00").withYear(1969)),
        Refusal.of(PLAN, "totals", null),
        Refusal.of(LOT, "id", " "),
        Refusal.of(LOT, "mix", null),
        Refusal.of(LOT, "wetGrams", -0.1),
        Refusal.of(LOT, "wetGrams", Double.NaN),
        Refusal.of(LOT, "wetGrams", Double.POSITIVE_INFINITY),
        Refusal.of(LOT.weighOut().get(0), "material", ""),
        Refusal.of(LOT.weighOut().get(0), "grams", -1.0),
        Refusal.of(RUN, "id", ""),
        Refusal.of(RUN, "piece", ""),
        Refusal.of(RUN, "castings", 0),
        Refusal.of(RUN, "ballastGramsEach", OptionalLong.of(-1)),
        Refusal.of(RUN, "ballastGramsEach", null),
        Refusal.of(hold, "form", ""),
        new Refusal(hold, "units", List.of(1, 0), ".units[1]"),
        Refusal.of(POUR, "id", ""),
        Refusal.of(POUR, "lot", ""),
        Refusal.of(POUR, "person", ""),
        Refusal.of(POUR, "kind", null),
        Refusal.of(POUR, "spells", List.of()),
        Refusal.of(POUR, "spells", null),
        Refusal.of(POUR, "run", Optional.of("L1-1")),
        Refusal.of(DEMOULD, "run", Optional.empty()),
        Refusal.of(DEMOULD, "run", Optional.of("")),
        Refusal.of(DEMOULD, "step", OptionalInt.of(1)),
        Refusal.of(STEP, "step", OptionalInt.empty()),
        Refusal.of(STEP, "step", OptionalInt.of(0)),
        Refusal.of(POUR.spells().get(0), "end", at("04-05T08:59")),
        Refusal.of(POUR.spells().get(0), "start", null),
        Refusal.of(POUR.spells().get(0), "end", OffsetDateTime.MAX),
        Refusal.of(WAIT, "run", ""),
        Refusal.of(WAIT, "kind", null),
        Refusal.of(WAIT, "to", at("04-05T09:22")),
        Refusal.of(PLAN.ready().get(0), "run", ""),
        Refusal.of(PLAN.ready().get(0), "at", null),
        Refusal.of(PLAN.orders().get(0), "order", ""),
        Refusal.of(PLAN.orders().get(0), "lateMinutes", -1L),
        Refusal.of(PLAN.orders().get(0), "ready", OffsetDateTime.MIN),
        Refusal.of(PLAN.totals(), "weightedLateHours", new BigDecimal("-0.1")),
        Refusal.of(PLAN.totals(), "lateOrders", -1),
        Refusal.of(PLAN.totals(), "attendedMinutes", -1L),
        Refusal.of(PLAN.totals(), "lots", -1),
        Refusal.of(PLAN.totals(), "lastReady", null),
        Refusal.of(RUN, "scrapped", -1),
        Refusal.of(DONE, "begun", true),
        Refusal.of(PLAN, "history", null),
        Refusal.of(HISTORY, "now", null),
        Refusal.of(HISTORY, "away", null),
        Refusal.of(HISTORY, "broken", null),
        Refusal.of(HISTORY, "exceeded", null),
        Refusal.of(HISTORY.away().get(0), "person", " "),
        Refusal.of(HISTORY.away().get(0), "to", at("04-05T08:59")),
        Refusal.of(HISTORY.broken().get(0), "form", ""),
        Refusal.of(HISTORY.broken().get(0), "units", List.of()),
        new Refusal(HISTORY.broken().get(0), "units", List.of(1, 0), ".units[1]"),
        Refusal.of(HISTORY.broken().get(0), "from", null),
        Refusal.of(HISTORY.exceeded().get(0), "task", ""),
        Refusal.of(HISTORY.exceeded().get(0), "minutes", 0L));
  }

  @ParameterizedTest
  @MethodSource("refusals")
  void whatCannotBeIsRefusedWithItsPath(Refusal refusal) {
    Faulty faulty =
        assertThrows(
            Faulty.class, () -> Altered.of(refusal.record(), refusal.component(), refusal.value()));
    assertEquals(List.of(refusal.path()), faulty.faults().stream().map(Fault::path).toList());
  }

  @Test
  void allFaultsAreToldAtOnce() {
    Faulty faulty =
        assertThrows(Faulty.class, () -> new Run("", "", 0, List.of(), OptionalLong.of(-1)));
    assertEquals(
        List.of(".id", ".piece", ".castings", ".ballastGramsEach"),
        faulty.faults().stream().map(Fault::path).toList());
  }

  @Test
  void aFaultSaysWhatWasFoundAndWhatWouldBeRight() {
    Faulty faulty = assertThrows(Faulty.class, () -> new Weighed("water", -2.5));
    assertEquals(
        new Fault(".grams", "-2.5", "a number of grams, 0 or more"), faulty.faults().get(0));
  }

  @Test
  void listsAreCopied() {
    List<Spell> spells = new ArrayList<>(List.of(spell("04-05T09:00", 31)));
    Task task = Altered.of(POUR, "spells", spells);
    spells.clear();
    assertEquals(1, task.spells().size());
    assertThrows(UnsupportedOperationException.class, () -> task.spells().clear());
  }

  @Test
  void anItemThatIsMissingIsNamedByItsPlace() {
    List<String> because = Arrays.asList("the tub", null);
    OrderOutcome onTime = PLAN.orders().get(0);
    Faulty faulty = assertThrows(Faulty.class, () -> Altered.of(onTime, "because", because));
    assertEquals(".because[1]", faulty.faults().get(0).path());
  }

  @Test
  void aSpellOfNoMinutesIsLeftToTheAudit() {
    assertEquals(0, spell("04-05T09:00", 0).minutes());
  }

  @Test
  void aTaskLastsFromItsFirstSpellToItsLastHoweverTheyStand() {
    Task task = SamplePlan.step("L1", "L1-1", 1, spell("04-06T13:00", 4), spell("04-06T11:56", 4));
    assertEquals(at("04-06T11:56"), task.start());
    assertEquals(at("04-06T13:04"), task.end());
    assertEquals(8, task.minutes());
  }

  @Test
  void aSpellOverAClockChangeHasItsElapsedMinutes() {
    assertEquals(120, new Spell(at("03-14T01:00"), at("03-14T04:00")).minutes());
  }
}
