package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.book.Book;
import strickle.json.BookFile;
import strickle.json.Noted;
import strickle.json.PlanFile;
import strickle.plan.Lot;
import strickle.plan.Plan;
import strickle.plan.Task;
import strickle.supply.Purchase;
import strickle.supply.Shopping;
import strickle.supply.ShoppingList;
import strickle.supply.TooEarly;

/** The order of 4 planters less 1 in stock takes 4 castings; figures recomputed by hand. */
class ShoppingCommandTest {

  @TempDir Path folder;
  private Path file;
  private Path week;

  @BeforeEach
  void planTheExample() {
    planned(Shell.example());
  }

  private void planned(String json) {
    file = Shell.file(folder, "book.json", json);
    week = folder.resolve("week.json");
    Shell.run("plan", file, "--from", "2027-04-05", "--schedules", "50", "--out", week).done();
  }

  private ShoppingList list(String now) {
    return Shopping.of(BookFile.read(file), PlanFile.read(week), OffsetDateTime.parse(now));
  }

  private Purchase of(ShoppingList list, String material) {
    return list.materials().stream()
        .filter(one -> one.material().equals(material))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void whatIsUsedIsWhatTheLotsTheStepsAndTheBoxesTake() {
    ShoppingList list = list("2027-04-01T00:00-05:00");
    double blend = 0;
    for (Lot lot : PlanFile.read(week).lots()) {
      blend += lot.weighOut().get(0).grams();
    }
    assertEquals(blend, of(list, "white-blend").needed().doubleValue(), 0.06);
    // 6 g of oil for each of 4 castings; 18 + 12 ml of sealer for each of 4 pieces; 4 boxes.
    assertEquals(24, of(list, "release-oil").needed().doubleValue());
    assertEquals(120, of(list, "sealer").needed().doubleValue());
    assertEquals(4, of(list, "box-m").needed().doubleValue());
    assertEquals(0, list.cost().signum());
  }

  @Test
  void wholePacksAreBoughtByTheLeadDaysBeforeTheStockIsTooLittle() {
    planned(Shell.example("\"onHand\": 500, \"leadDays\": 4", "\"onHand\": 100, \"leadDays\": 4"));
    ShoppingList list = list("2027-04-01T00:00-05:00");
    Purchase sealer = list.materials().get(0);
    assertEquals("sealer", sealer.material());
    assertEquals(1, sealer.packs());
    assertEquals(29, sealer.cost().doubleValue());
    assertEquals(100 + 946 - 120, sealer.left().doubleValue());
    // Of 100 ml the step that brings the sum of its draws above that is the first one short.
    Plan plan = PlanFile.read(week);
    double sum = 0;
    OffsetDateTime shortAt = null;
    for (Task task : steps(plan)) {
      sum += task.step().getAsInt() == 2 ? 18 : 12;
      shortAt = sum > 100 && shortAt == null ? task.start() : shortAt;
    }
    assertEquals(shortAt, sealer.runsOut().orElseThrow());
    assertEquals(
        shortAt.toLocalDate().minusDays(4), sealer.orderBy().orElseThrow(), sealer.toString());
    assertEquals(LocalDate.parse("2027-04-05"), sealer.arrives());
    assertEquals(List.of(), list.tooEarly());
  }

  /** Steps that use sealer, in the order of time. */
  private static List<Task> steps(Plan plan) {
    return plan.tasks().stream()
        .filter(task -> task.step().orElse(0) >= 2)
        .sorted(Comparator.comparing(task -> task.start().toInstant()))
        .toList();
  }

  @Test
  void whatBeginsBeforeItsMaterialCanBeThereIsTold() {
    planned(Shell.example("\"onHand\": 300, \"leadDays\": 2", "\"onHand\": 5, \"leadDays\": 30"));
    ShoppingList list = list("2027-04-05T00:00-05:00");
    List<TooEarly> early = list.tooEarly();
    Book book = BookFile.read(file);
    long pours = PlanFile.read(week).lots().size();
    assertEquals(pours, early.size(), early.toString());
    assertEquals("release-oil", early.get(0).material());
    assertEquals(1, early.get(0).missing().doubleValue(), book.studio().name());
    String text = Shell.run("shopping", file, "--plan", week).done().out();
    assertTrue(text.contains("Begins before its material can be there"), text);
    assertTrue(
        text.replaceAll("\\s+", " ").contains("which can be there Wed 5 May 2027 at the earliest"),
        text);
    // Ordered a month before, it is there.
    String before = Shell.run("shopping", file, "--plan", week, "--now", "2027-03-01").done().out();
    assertTrue(!before.contains("Begins before"), before);
  }

  @Test
  void aPlanThatWaitsBeginsNothingBeforeItsMaterialIsThere() {
    String json =
        Shell.example("\"onHand\": 300, \"leadDays\": 2", "\"onHand\": 5, \"leadDays\": 10");
    Path waiting = Shell.file(folder, "waiting.json", json);
    Path later = folder.resolve("later.json");
    Object[] plan = {
      "plan",
      waiting,
      "--from",
      "2027-04-05",
      "--schedules",
      "50",
      "--wait-for-materials",
      "--out",
      later
    };
    String out = Shell.run(plan).done().out();
    Plan found = PlanFile.read(later);
    LocalDate first = found.tasks().get(0).start().toLocalDate();
    assertEquals(LocalDate.parse("2027-04-15"), first, out);
    String list = Shell.run("shopping", waiting, "--plan", later).done().out();
    assertTrue(!list.contains("Begins before"), list);
  }

  @Test
  void aLateOrderThatWaitedForMaterialsSaysSo() {
    String json =
        Shell.example("\"onHand\": 500, \"leadDays\": 4", "\"onHand\": 0, \"leadDays\": 40");
    Path waiting = Shell.file(folder, "waiting.json", json);
    String out =
        Shell.run(
                "plan",
                waiting,
                "--from",
                "2027-04-05",
                "--schedules",
                "50",
                "--wait-for-materials",
                "--now",
                "2027-04-03")
            .done()
            .out();
    String text = out.replaceAll("\\s+", " ");
    assertTrue(text.contains("can be there: water-based sealer 2027-05-13"), out);
    assertTrue(!text.contains("first seal coat 2027-05-12"), out);
  }

  @Test
  void aPinnedPourThatCannotWaitIsRefused() {
    String json =
        Shell.example("\"onHand\": 300, \"leadDays\": 2", "\"onHand\": 5, \"leadDays\": 10")
            .replace(
                "\"pins\": []",
                "\"pins\": [{\"kind\": \"pour\", \"piece\": \"planter-slate\", \"castings\": 1,"
                    + " \"start\": \"2027-04-06T09:00\", \"person\": \"ana\"}]");
    Path pinned = Shell.file(folder, "pinned.json", json);
    Shell.Result result =
        Shell.run(
            "plan", pinned, "--from", "2027-04-05", "--schedules", "5", "--wait-for-materials");
    assertEquals(List.of("$.pins[0].start"), result.paths(), result.err());
    assertEquals(List.of("--now"), Shell.run("plan", pinned, "--now", "2027-04-05").paths());
  }

  @Test
  void ofAPlanUnderWayWhatBeganBeforeTheCountIsNotTakenAgain() {
    Plan plan = PlanFile.read(week);
    Task pour = plan.tasks().get(0);
    String now = pour.end().toLocalDateTime().plusHours(1).toString();
    Path underWay = folder.resolve("under-way.json");
    Path noted = Shell.file(folder, "noted.json", progress(pour));
    Shell.run(
            "replan",
            file,
            "--plan",
            week,
            "--progress",
            noted,
            "--now",
            now,
            "--schedules",
            "5",
            "--out",
            underWay)
        .done();
    ShoppingList before = listed(underWay);
    double oil = of(before, "release-oil").needed().doubleValue();
    assertEquals(24, oil, "the stock as it was before the plan began");
    assertTrue(of(before, "release-oil").runsOut().isEmpty());
    Shell.Result counted =
        Shell.run("shopping", file, "--plan", underWay, "--counted", now, "--json").done();
    int poured = castings(plan, pour);
    assertTrue(
        counted
            .out()
            .replaceAll("\\s+", "")
            .contains("\"release-oil\",\"needed\":" + (24 - 6 * poured)),
        counted.out());
    assertEquals(
        List.of("--counted"),
        Shell.run("shopping", file, "--plan", underWay, "--counted", "soon").paths());
  }

  private ShoppingList listed(Path plan) {
    return Shopping.of(
        BookFile.read(file), PlanFile.read(plan), OffsetDateTime.parse("2027-04-05T00:00-05:00"));
  }

  private static String progress(Task pour) {
    return "{\"format\": \"strickle-progress/1\", \"happened\": [" + Noted.poured(pour) + "]}";
  }

  private static int castings(Plan plan, Task pour) {
    return plan.lots().stream()
        .filter(lot -> lot.id().equals(pour.lot()))
        .flatMap(lot -> lot.runs().stream())
        .mapToInt(run -> run.castings())
        .sum();
  }

  @Test
  void aStockThatIsEnoughNeedsNothing() {
    String text = Shell.run("shopping", file, "--plan", week).done().out();
    assertTrue(text.contains("Nothing: the stock is enough."), text);
    text.lines().forEach(line -> assertTrue(line.length() <= 100, line));
    String json = Shell.run("shopping", file, "--plan", week, "--json").done().out();
    assertTrue(json.contains("\"format\": \"strickle-shopping/1\""), json);
  }

  @Test
  void aPlanOfAnotherBookAndAWrongDateAreRefused() {
    assertEquals(
        List.of("--now"), Shell.run("shopping", file, "--plan", week, "--now", "x").paths());
    Path other =
        Shell.file(folder, "other.json", Shell.example("\"setHours\": 20", "\"setHours\": 40"));
    assertEquals(2, Shell.run("shopping", other, "--plan", week).code());
  }
}
