package strickle.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import strickle.book.Book;
import strickle.plan.Effort;
import strickle.plan.Plan;
import strickle.plan.PlanRequest;
import strickle.plan.Planning;
import strickle.plan.Totals;
import strickle.plan.audit.Audit;
import strickle.plan.whatif.Answer;
import strickle.plan.whatif.BatchLimit;
import strickle.plan.whatif.Change;
import strickle.plan.whatif.ChangeText;
import strickle.plan.whatif.Ideas;
import strickle.plan.whatif.MorePlaces;
import strickle.plan.whatif.Together;
import strickle.plan.whatif.Tried;
import strickle.plan.whatif.WhatIf;

/** Tries changes on the plans of generated books. */
class GeneratedWhatIfTest {

  private static Plan plan(Book book, long schedules, long seed) {
    PlanRequest request =
        new PlanRequest(Generator.start(book), Effort.ofSchedules(schedules), seed);
    return Planning.of(book, request, progress -> {}).run();
  }

  private static void tryAll(int castings, long seed) {
    Book book = Generator.book(castings, seed);
    Plan plan = plan(book, 40, seed);
    List<Change> ideas = Ideas.of(book, plan);
    String name = castings + " castings, seed " + seed + ": ";
    assertTrue(!ideas.isEmpty() && ideas.size() <= 20, name + ideas);
    Optional<Effort> effort = Optional.of(Effort.ofSchedules(60L * ideas.size()));
    Answer answer = WhatIf.of(book, plan, ideas, effort, seed, done -> {}).run();
    assertEquals(List.of(), Audit.of(book, answer.alone()), name);
    Totals alone = answer.alone().totals();
    assertTrue(Tried.BY_HELP.compare(alone, plan.totals()) <= 0, name + "worse by planning");
    Totals last = null;
    for (Tried tried : answer.tried()) {
      String what = name + tried.change().text();
      assertEquals(List.of(), Audit.of(tried.book(), tried.plan()), what);
      assertEquals(tried.change(), written(tried.change()), what);
      Totals totals = tried.plan().totals();
      assertTrue(last == null || Tried.BY_HELP.compare(last, totals) <= 0, what + " out of order");
      last = totals;
      boolean harmless = Audit.of(tried.book(), answer.alone()).isEmpty();
      assertTrue(!harmless || Tried.BY_HELP.compare(totals, alone) <= 0, what + " harms");
    }
  }

  /** The change as it is read back; several together are written one behind the other. */
  private static Change written(Change change) {
    List<Change> parts = new ArrayList<>();
    for (String part : change.text().split(" ", -1)) {
      parts.add(ChangeText.read(part));
    }
    return parts.size() == 1 ? parts.get(0) : new Together(parts);
  }

  @Test
  void everyPlanPassesTheAuditOfItsBookAndNoneIsWorseThanDoingNothing() {
    for (int i = 0; i < 25; i++) {
      tryAll(6 + 2 * i, 7000 + i);
    }
  }

  /** Half an hour that the reasons of a late order ask for is tried, and told first. */
  @Test
  void whatTheReasonsNameIsTried() {
    Book book = Generator.book(30, 4);
    Plan plan = plan(book, 5000, 0);
    String said = "hours for Alva between Thu 4 Mar 06:00 and 06:30 would bring it forward";
    assertTrue(
        plan.orders().stream()
            .flatMap(order -> order.because().stream())
            .anyMatch(reason -> reason.startsWith(said)));
    Change named = ChangeText.read("hours:alva:2027-03-04T06:00-06:30");
    List<Change> ideas = Ideas.of(book, plan);
    assertTrue(ideas.contains(named), ideas.toString());
    Optional<Effort> effort = Optional.of(Effort.ofSchedules(200L * ideas.size()));
    Tried first = WhatIf.of(book, plan, ideas, effort, 0, done -> {}).run().tried().get(0);
    assertEquals(named, first.change());
    assertEquals(0, first.cost().amount().orElseThrow().compareTo(new BigDecimal("13.50")));
  }

  @Test
  void changesTogetherAreLeftOutWhereOneOfThemDoesItAlone() {
    Book book = Generator.book(30, 4);
    Plan plan = plan(book, 300, 0);
    Change alone = new BatchLimit(100_000);
    Change idle = new MorePlaces(book.stations().get(0).id(), 1);
    Change both = Together.of(alone, idle);
    List<Change> changes = List.of(alone, idle, both);
    Answer answer =
        WhatIf.of(book, plan, changes, Optional.of(Effort.ofSchedules(40)), 0, done -> {}).run();
    assertEquals(3, answer.tried().size());
    List<Change> left = answer.withoutNeedless().tried().stream().map(Tried::change).toList();
    assertFalse(left.contains(both), left.toString());
    assertTrue(left.contains(alone), left.toString());
  }

  @Test
  @Tag("long")
  void aHundredCastingsAsWell() {
    for (int i = 0; i < 3; i++) {
      tryAll(100, 7100 + i);
    }
  }

  @Test
  void theAnswerIsTheSameEveryTime() {
    Book book = Generator.book(20, 7200);
    Plan plan = plan(book, 20, 0);
    List<Change> ideas = Ideas.of(book, plan);
    Optional<Effort> effort = Optional.of(Effort.ofSchedules(2000));
    Answer first = WhatIf.of(book, plan, ideas, effort, 3, done -> {}).run();
    assertEquals(first, WhatIf.of(book, plan, ideas, effort, 3, done -> {}).run());
  }
}
