package strickle.plan.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static strickle.plan.SamplePlan.at;
import static strickle.plan.audit.Reading.BOOK;
import static strickle.plan.audit.Reading.assertBreaks;
import static strickle.plan.audit.Reading.assertValid;
import static strickle.plan.audit.Reading.sample;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.plan.PlanWait;
import strickle.plan.Wait;

/** What the plan lists and sums up beside the ten rules. */
class WaitsAndTotalsRuleTest {

  @Test
  void aWaitIsListedFromItsBeginning() {
    assertBreaks(0, BOOK, firstWait(w -> Altered.of(w, "from", w.from().plusMinutes(1))));
  }

  @Test
  void aWaitIsListedToTheFirstWholeMinuteAfterItsEnd() {
    assertBreaks(0, BOOK, firstWait(w -> Altered.of(w, "to", w.to().plusMinutes(1))));
    assertBreaks(0, BOOK, firstWait(w -> Altered.of(w, "to", w.to().minusMinutes(1))));
  }

  @Test
  void aWaitIsListedUnderItsKind() {
    assertBreaks(0, BOOK, firstWait(w -> Altered.of(w, "kind", PlanWait.CURE)));
  }

  @Test
  void everyWaitIsListed() {
    for (int i = 0; i < 16; i++) {
      List<Wait> waits = new ArrayList<>(sample().plan().waits());
      String run = waits.remove(i).run();
      assertBreaks(0, "run " + run, BOOK, sample().with("waits", waits));
    }
  }

  @Test
  void noWaitIsListedTwice() {
    List<Wait> waits = sample().plan().waits();
    PlanDraft draft = sample().with("waits", PlanDraft.plus(waits, waits.get(3)));
    assertBreaks(0, "run L1-1", BOOK, draft);
  }

  @Test
  void onlyRunsOfThePlanWait() {
    List<Wait> waits = sample().plan().waits();
    Wait unknown = Altered.of(waits.get(0), "run", "L9-1");
    PlanDraft draft = sample().with("waits", PlanDraft.plus(waits, unknown));
    assertBreaks(0, "run L9-1", BOOK, draft);
  }

  @Test
  void aWaitOfNoLengthMayBeListed() {
    Wait rest = new Wait("L1-1", PlanWait.REST, at("04-06T09:08"), at("04-06T09:08"));
    List<Wait> waits = PlanDraft.plus(sample().plan().waits(), rest);
    assertValid(BOOK, sample().with("waits", waits));
  }

  @Test
  void lotsAreCounted() {
    assertBreaks(0, "totals", BOOK, sample().total("lots", 5));
  }

  @Test
  void attendedMinutesAreThoseOfAllTasks() {
    // 4 x (31 + 8 + 8 + 9 + 9).
    assertBreaks(0, "totals", BOOK, sample().total("attendedMinutes", 259L));
  }

  @Test
  void lateOrdersAreCounted() {
    assertBreaks(0, "totals", BOOK, sample().total("lateOrders", 1));
  }

  @Test
  void theLastRunToBeReadyIsNamed() {
    assertBreaks(0, "totals", BOOK, sample().total("lastReady", at("04-20T13:17")));
  }

  @Test
  void withoutRunsTheLastIsReadyAtTheStart() {
    Book book = Books.piece("onHand", 4);
    PlanDraft nothing = sample().with("lots", List.of()).with("tasks", List.of()).settled();
    assertValid(book, nothing);
    assertBreaks(0, "totals", book, nothing.total("lastReady", at("04-05T00:01")));
  }

  @Test
  void aLateHourCountsAsSoonAsItHasStarted() {
    assertLateHours("2027-04-20T13:17", "3");
    assertLateHours("2027-04-20T12:18", "3");
    assertLateHours("2027-04-20T12:17", "6");
  }

  @Test
  void lateHoursAreWeighedExactly() {
    Book book =
        BookWith.orders(
            BOOK,
            Altered.of(
                Books.order("due", at("04-20T12:17").toLocalDateTime()).order("O-104"),
                "weight",
                new BigDecimal("0.1")));
    PlanDraft late = sample().settled(Follow.SAMPLE.withDue("2027-04-20T12:17"));
    assertValid(book, late.total("weightedLateHours", new BigDecimal("0.20")));
    assertBreaks(
        0, "totals", book, late.total("weightedLateHours", new BigDecimal("0.2000000001")));
  }

  /** Ready on 20 April at 13:18, weight 3. */
  private static void assertLateHours(String due, String hours) {
    Book book = Books.order("due", LocalDateTime.parse(due));
    PlanDraft late = sample().settled(Follow.SAMPLE.withDue(due));
    late.total("weightedLateHours", new BigDecimal(hours));
    assertValid(book, late);
    assertEquals(1, late.plan().totals().lateOrders());
    BigDecimal more = new BigDecimal(hours).add(BigDecimal.ONE);
    assertBreaks(0, "totals", book, late.total("weightedLateHours", more));
  }

  private static PlanDraft firstWait(UnaryOperator<Wait> change) {
    List<Wait> waits = new ArrayList<>(sample().plan().waits());
    waits.set(0, change.apply(waits.get(0)));
    return sample().with("waits", waits);
  }
}
