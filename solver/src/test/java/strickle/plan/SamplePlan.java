package strickle.plan;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;

/**
 * A plan for the example book, laid out by hand, for the tests of every package: four lots of one
 * casting, as there is one of each tub, all done by Ana in her hours.
 *
 * <p>At 18 °C an hour is worth exp(13.65 − 4000/291) = 0.908733 hours at 20 °C, so the set of 20
 * hours takes 1320.52 minutes, over at minute 1321, and the cure of 120 hours 7923.12, over at
 * 7924.
 */
public final class SamplePlan {

  private static final ZoneId ZONE = ZoneId.of("America/Chicago");

  private SamplePlan() {}

  /** The whole plan; every order on time. */
  public static Plan example() {
    return new Plan(
        "Kiln Lane Castings",
        at("04-05T00:00"),
        0,
        List.of(lot("L1"), lot("L2"), lot("L3"), lot("L4")),
        tasks(),
        waits(),
        List.of(
            new Ready("L1-1", at("04-13T13:34")),
            new Ready("L2-1", at("04-16T13:18")),
            new Ready("L3-1", at("04-18T10:09")),
            new Ready("L4-1", at("04-20T13:18"))),
        List.of(new OrderOutcome("O-104", at("04-20T13:18"), 0, List.of())),
        new Totals(BigDecimal.ZERO, 0, 260, 4, at("04-20T13:18")));
  }

  /** A lot of one casting: 1180 ml at 2072.35 kg/m³ and 2 % waste are 2494.28 g. */
  private static Lot lot(String id) {
    List<FormHold> forms =
        List.of(new FormHold("tub-a", List.of(1)), new FormHold("tub-b", List.of(1)));
    Run run = new Run(id + "-1", "planter-slate", 1, forms, OptionalLong.of(7872));
    List<Weighed> weighOut =
        List.of(
            new Weighed("white-blend", 1937.3),
            new Weighed("iron-black", 58.1),
            new Weighed("water", 498.9));
    return new Lot(id, "slate", List.of(run), weighOut, 2494.3);
  }

  private static List<Task> tasks() {
    List<Task> tasks = new ArrayList<>();
    tasks.addAll(
        ofLot("L1", "04-05T09:00", "04-06T09:00", "04-06T09:39", "04-12T09:16", "04-12T13:25"));
    tasks.addAll(
        ofLot("L2", "04-06T09:08", "04-09T09:00", "04-09T09:39", "04-15T09:00", "04-15T13:09"));
    tasks.addAll(
        ofLot("L3", "04-09T09:08", "04-10T10:00", "04-10T10:39", "04-16T09:00", "04-17T10:00"));
    tasks.addAll(
        ofLot("L4", "04-10T10:08", "04-12T09:00", "04-12T09:08", "04-19T09:00", "04-19T13:09"));
    return tasks;
  }

  /** Pour 6 + 12 + 5 + 8 minutes, demould 8, steps 3 + 5, 5 + 4 and 5 + 4. */
  private static List<Task> ofLot(
      String lot, String pour, String demould, String sand, String seal, String sealAgain) {
    String run = lot + "-1";
    return List.of(
        pour(lot, spell(pour, 31)),
        demould(lot, run, spell(demould, 8)),
        step(lot, run, 1, spell(sand, 8)),
        step(lot, run, 2, spell(seal, 9)),
        step(lot, run, 3, spell(sealAgain, 9)));
  }

  private static List<Wait> waits() {
    List<Wait> waits = new ArrayList<>();
    waits.addAll(ofRun("L1-1", "04-05T09:23", "04-06T09:47", "04-12T09:25", "04-12T13:34"));
    waits.addAll(ofRun("L2-1", "04-06T09:31", "04-09T09:47", "04-15T09:09", "04-15T13:18"));
    waits.addAll(ofRun("L3-1", "04-09T09:31", "04-10T10:47", "04-16T09:09", "04-17T10:09"));
    waits.addAll(ofRun("L4-1", "04-10T10:31", "04-12T09:16", "04-19T09:09", "04-19T13:18"));
    return waits;
  }

  private static List<Wait> ofRun(
      String run, String set, String cure, String dry, String finalDry) {
    return List.of(
        wait(run, PlanWait.SET, set, 1321),
        wait(run, PlanWait.CURE, cure, 7924),
        wait(run, PlanWait.DRY, dry, 240),
        wait(run, PlanWait.DRY, finalDry, 1440));
  }

  private static Wait wait(String run, PlanWait kind, String from, int minutes) {
    Spell spell = spell(from, minutes);
    return new Wait(run, kind, spell.start(), spell.end());
  }

  /** A pour by Ana. */
  public static Task pour(String lot, Spell... spells) {
    return new Task(
        lot + "/pour",
        TaskKind.POUR,
        lot,
        Optional.empty(),
        OptionalInt.empty(),
        "ana",
        List.of(spells));
  }

  /** A demould by Ana. */
  public static Task demould(String lot, String run, Spell... spells) {
    return new Task(
        run + "/demould",
        TaskKind.DEMOULD,
        lot,
        Optional.of(run),
        OptionalInt.empty(),
        "ana",
        List.of(spells));
  }

  /** A step by Ana, numbered from 1. */
  public static Task step(String lot, String run, int number, Spell... spells) {
    return new Task(
        run + "/step-" + number,
        TaskKind.STEP,
        lot,
        Optional.of(run),
        OptionalInt.of(number),
        "ana",
        List.of(spells));
  }

  /** A spell of so many elapsed minutes from a local time such as {@code 04-05T09:00}. */
  public static Spell spell(String start, long minutes) {
    OffsetDateTime end = at(start).plusMinutes(minutes);
    return new Spell(at(start), end.atZoneSameInstant(ZONE).toOffsetDateTime());
  }

  /** A moment of 2027 in Chicago; {@code local} is month, day and time: {@code 04-05T09:00}. */
  public static OffsetDateTime at(String local) {
    return LocalDateTime.parse("2027-" + local).atZone(ZONE).toOffsetDateTime();
  }
}
