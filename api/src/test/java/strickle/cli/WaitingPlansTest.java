package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.json.BookFile;
import strickle.json.PlanFile;
import strickle.plan.EarlyUse;
import strickle.plan.Plan;

/** Plans that wait for materials say so, and what is made of them goes on waiting. */
class WaitingPlansTest {

  /** Ordered on Monday 5 April, oil that takes ten days is there on Thursday 15. */
  private static final LocalDate THERE = LocalDate.parse("2027-04-15");

  private static final OffsetDateTime ORDERED = OffsetDateTime.parse("2027-04-05T00:00-05:00");

  @TempDir Path folder;
  private Path book;
  private Path week;

  @BeforeEach
  void planWithLittleOil() {
    planned(Shell.example("\"onHand\": 300, \"leadDays\": 2", "\"onHand\": 5, \"leadDays\": 10"));
  }

  private void planned(String json) {
    book = Shell.file(folder, "book.json", json);
    week = folder.resolve("week.json");
    Shell.run(
            "plan",
            book,
            "--from",
            "2027-04-05",
            "--schedules",
            "50",
            "--wait-for-materials",
            "--out",
            week)
        .done();
  }

  private static void assertWaits(Path book, Plan plan) {
    assertEquals(Optional.of(ORDERED), plan.orderingFrom());
    assertEquals(Set.of(), EarlyUse.of(BookFile.read(book), plan, ORDERED));
    plan.tasks()
        .forEach(task -> assertFalse(task.start().toLocalDate().isBefore(THERE), task.id()));
  }

  @Test
  void theFileAndTheTextSayThatThePlanWaits() {
    Plan plan = PlanFile.read(week);
    assertWaits(book, plan);
    assertEquals(plan, PlanFile.parse(PlanFile.write(plan)));
    String out =
        Shell.run(
                "plan",
                book,
                "--from",
                "2027-04-05",
                "--schedules",
                "5",
                "--wait-for-materials",
                "--now",
                "2027-04-03")
            .done()
            .out();
    String text = out.replaceAll("\\s+", " ");
    assertTrue(text.contains("can be there, ordered from Sat 3 Apr 2027 00:00 on"), out);
    String without =
        Shell.run("plan", book, "--from", "2027-04-05", "--schedules", "5").done().out();
    assertFalse(without.contains("ordered from"), without);
  }

  @Test
  void aPlanThatDoesNotWaitSaysNothingOfIt() {
    Path other = folder.resolve("other.json");
    Shell.run("plan", book, "--from", "2027-04-05", "--schedules", "5", "--out", other).done();
    assertFalse(PlanFile.write(PlanFile.read(other)).contains("orderingFrom"));
  }

  @Test
  void theShoppingListOrdersWhenThePlanDoes() {
    Path early = folder.resolve("early.json");
    Shell.run(
            "plan",
            book,
            "--from",
            "2027-04-05",
            "--schedules",
            "5",
            "--wait-for-materials",
            "--now",
            "2027-03-25",
            "--out",
            early)
        .done();
    String list = Shell.run("shopping", book, "--plan", early).done().out();
    assertTrue(list.contains("ordering from Thu 25 Mar 2027 00:00 on"), list);
    assertFalse(list.contains("Begins before"), list);
  }

  @Test
  void aChangeIsTriedOnAPlanThatGoesOnWaiting() {
    Path changed = folder.resolve("changed.json");
    Path changedBook = folder.resolve("changed-book.json");
    Shell.run(
            "what-if",
            book,
            "--plan",
            week,
            "--try",
            "form:tub-a+1",
            "--try",
            "form:tub-b+1",
            "--schedules",
            "200",
            "--out",
            changed,
            "--book-out",
            changedBook)
        .done();
    assertWaits(changedBook, PlanFile.read(changed));
  }

  @Test
  void aPlanLaidOutAnewGoesOnWaiting() {
    Path rest = folder.resolve("rest.json");
    Shell.run(
            "replan",
            book,
            "--plan",
            week,
            "--now",
            "2027-04-07T10:00",
            "--frozen-hours",
            "0",
            "--schedules",
            "100",
            "--out",
            rest)
        .done();
    assertWaits(book, PlanFile.read(rest));
  }

  @Test
  void aPromiseOnAPlanThatWaitsGoesOnWaiting() {
    Path promised = folder.resolve("promised.json");
    Path promisedBook = folder.resolve("promised-book.json");
    promise(promised, promisedBook);
    assertWaits(promisedBook, PlanFile.read(promised));
  }

  /** Four castings take 7749 g, of which 8000 are there; what two more take comes on 25 April. */
  @Test
  void whatAPromiseIsShortOfIsWaitedForAsWell() {
    planned(
        Shell.example("\"onHand\": 14000, \"leadDays\": 3", "\"onHand\": 8000, \"leadDays\": 20"));
    Path promised = folder.resolve("promised.json");
    Path promisedBook = folder.resolve("promised-book.json");
    promise(promised, promisedBook);
    Plan plan = PlanFile.read(promised);
    assertEquals(Set.of(), EarlyUse.of(BookFile.read(promisedBook), plan, ORDERED));
    List<LocalDate> pours =
        plan.tasks().stream()
            .filter(task -> task.id().endsWith("/pour"))
            .map(task -> task.start().toLocalDate())
            .toList();
    assertTrue(
        pours.stream().anyMatch(day -> !day.isBefore(LocalDate.parse("2027-04-25"))),
        pours.toString());
  }

  private void promise(Path plan, Path planned) {
    Shell.run(
            "promise",
            book,
            "--plan",
            week,
            "--piece",
            "planter-slate",
            "--quantity",
            "2",
            "--schedules",
            "100",
            "--out",
            plan,
            "--book-out",
            planned)
        .done();
  }
}
