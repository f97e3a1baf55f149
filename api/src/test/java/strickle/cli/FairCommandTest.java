package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.book.Book;
import strickle.book.Order;
import strickle.json.BookFile;
import strickle.json.PlanFile;
import strickle.plan.EarlyUse;
import strickle.plan.Plan;
import strickle.plan.audit.Audit;

class FairCommandTest {

  @TempDir Path folder;
  private Path book;

  @BeforeEach
  void writeTheExample() {
    book = Shell.file(folder, "book.json", Shell.example());
  }

  private Shell.Result fair(Object... more) {
    Object[] first = {"fair", book, "--fair", "spring-fair", "--schedules", "100"};
    Object[] all = new Object[first.length + more.length];
    System.arraycopy(first, 0, all, 0, first.length);
    System.arraycopy(more, 0, all, first.length, more.length);
    return Shell.run(all);
  }

  @Test
  void theTextSaysWhatToBringAndThatItIsReady() {
    String out = fair().done().out();
    assertTrue(
        out.startsWith("spring fair: what to bring when it opens Sat 1 May 2027 09:00"), out);
    assertTrue(out.contains("  deep planter, slate      8      0      8     64.00"), out);
    assertTrue(out.contains("one more set of forms, deep planter"), out);
    assertTrue(out.contains("The plan has it ready "), out);
    assertTrue(out.contains("All other orders are on time."), out);
    out.lines().forEach(line -> assertTrue(line.length() <= 100, line));
  }

  @Test
  void theSameQuestionHasTheSameAnswer() {
    assertEquals(fair("--json").done().out(), fair("--json").done().out());
    assertTrue(fair("--json").done().out().contains("\"format\": \"strickle-fair/1\""));
  }

  @Test
  void theBookWrittenHasTheBuildAsOrdersAndThePlanIsOfIt() {
    Path written = folder.resolve("new.json");
    Path week = folder.resolve("week.json");
    fair("--write", written, "--plan-out", week).done();
    Book after = BookFile.read(written);
    Order order = after.orders().get(1);
    assertEquals("spring-fair-planter-slate", order.id());
    assertEquals(8, order.lines().get(0).quantity());
    assertEquals(after.fair("spring-fair").opens(), order.due());
    Plan plan = PlanFile.read(week);
    assertEquals(List.of(), Audit.of(after, plan));
    assertEquals(0, plan.totals().lateOrders());
    // Asked again, the orders written give way and the answer is the same.
    Shell.Result again =
        Shell.run("fair", written, "--fair", "spring-fair", "--schedules", "100").done();
    assertEquals(fair().done().out(), again.out());
  }

  /** The blend lasts for seven castings of twelve, and more of it is there long before the rest. */
  @Test
  void aStockThatLastsUntilTheRestHasComeIsUsedMeanwhile() {
    Path written = folder.resolve("new.json");
    Path week = folder.resolve("week.json");
    String out = fair("--write", written, "--plan-out", week).done().out();
    Plan plan = PlanFile.read(week);
    assertEquals("2027-04-05", plan.tasks().get(0).start().toLocalDate().toString());
    assertEquals(plan.from(), plan.orderingFrom().orElseThrow());
    assertEquals(Set.of(), EarlyUse.of(BookFile.read(written), plan, plan.from()));
    assertTrue(out.contains("nothing begins before they can"), out);
  }

  @Test
  void nothingOfABuildBeginsBeforeItsMaterialsCanBeThere() {
    String json =
        Shell.example("\"onHand\": 300, \"leadDays\": 2", "\"onHand\": 5, \"leadDays\": 10");
    book = Shell.file(folder, "book.json", json);
    Path week = folder.resolve("week.json");
    String out = fair("--plan-out", week).done().out();
    Plan plan = PlanFile.read(week);
    LocalDate first = plan.tasks().get(0).start().toLocalDate();
    assertEquals(LocalDate.parse("2027-04-15"), first, out);
    assertTrue(out.contains("Worth bringing if nothing limited it: 11 x deep planter"), out);
    // Ordered ten days before, all of it can begin at once.
    fair("--plan-out", week, "--now", "2027-03-26").done();
    LocalDate sooner = PlanFile.read(week).tasks().get(0).start().toLocalDate();
    assertEquals(LocalDate.parse("2027-04-05"), sooner);
    assertEquals(List.of("--now"), fair("--now", "soon").paths());
  }

  @Test
  void theAnswerHasTheBuildAsOrders() {
    String json = fair("--json").done().out();
    assertTrue(json.contains("\"order" + "s\": ["), json);
    assertTrue(json.contains("\"id\": \"spring-fair-planter-slate\""), json);
  }

  @Test
  void whatCannotBeReadyIsNotBrought() {
    String out = fair("--from", "2027-04-22").done().out();
    assertTrue(out.contains("Nothing is brought."), out);
    assertTrue(out.contains("earned on average  -140.00"), out);
  }

  @Test
  void aBuildThatAPlanIsLateWithIsMadeSmallerUntilItIsReady() {
    Path week = folder.resolve("week.json");
    String json =
        Shell.run(
                "fair",
                "demo",
                "--fair",
                "breakwater",
                "--from",
                "2027-03-15",
                "--schedules",
                "60",
                "--json",
                "--plan-out",
                week)
            .done()
            .out();
    assertTrue(!json.contains("\"tightened\": []"), json);
    assertTrue(json.contains("\"because\": ["), json);
    Plan plan = PlanFile.read(week);
    OffsetDateTime opens = OffsetDateTime.parse("2027-03-27T10:00-03:00");
    plan.orders().stream()
        .filter(order -> order.order().startsWith("breakwater-"))
        .forEach(order -> assertTrue(!order.ready().isAfter(opens), order.toString()));
  }

  @Test
  void aBudgetIsKeptInWholePacks() {
    // 12 castings need 23.2 kg of white blend, of which 14 are there: a bag costs 31.
    assertTrue(fair("--budget", "0").done().out().contains("packs to buy       0.00 of the 0.00"));
    String rich = fair("--budget", "500").done().out();
    assertTrue(rich.contains("  deep planter, slate      8      0      8"), rich);
    String poor = fair("--budget", "30").done().out();
    assertTrue(!poor.contains("  deep planter, slate      8      0      8"), poor);
  }

  @Test
  void theOldBookIsNeverOverwrittenUnasked() {
    Shell.Result result = fair("--write", book);
    assertEquals(2, result.code());
    assertTrue(result.err().startsWith("--write: found the book itself"), result.err());
    assertEquals(Shell.example(), text(book));
    fair("--write", book, "--force").done();
    assertEquals(2, BookFile.read(book).orders().size());
  }

  @Test
  void everythingWrongIsToldAtOnce() {
    Shell.Result options = fair("--budget", "-1", "--seed", "x");
    assertEquals(List.of("--budget", "--seed"), options.paths());
    Shell.Result late = Shell.run("fair", book, "--fair", "sprig-fair", "--from", "2027-06-01");
    assertEquals(List.of("--fair"), late.paths());
    assertTrue(late.err().contains("did you mean \"spring-fair\"?"), late.err());
    assertEquals(List.of("--from"), fair("--from", "2027-06-01").paths());
  }

  @Test
  void aPieceWorthMoreUnsoldThanSoldIsRefusedWithItsPlace() {
    String json = Shell.example("\"leftoverValue\": 40.0", "\"leftoverValue\": 62.0");
    Path other = Shell.file(folder, "other.json", json);
    Shell.Result result = Shell.run("fair", other, "--fair", "spring-fair");
    assertEquals(2, result.code());
    assertEquals(List.of("$.fairs[0].demand[0].price"), result.paths());
    assertTrue(result.err().contains("leaves 61.844"), result.err());
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
