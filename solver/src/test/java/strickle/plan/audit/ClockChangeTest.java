package strickle.plan.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static strickle.plan.audit.Reading.assertValid;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Draft;
import strickle.book.Mould;
import strickle.book.Order;
import strickle.book.SampleBook;
import strickle.plan.Plan;
import strickle.plan.Wait;

/**
 * The sample plan 210 days later: Chicago puts its clocks back on Sunday 7 November 2027, after the
 * pour of lot 4 and before its demould.
 */
class ClockChangeTest {

  private static final int DAYS = 210;
  private static final Follow FOLLOW = Follow.SAMPLE.withDue("2027-11-20T17:00");

  @Test
  void aPlanOverAClockChangeIsReadInElapsedHours() {
    assertValid(book(120), plan());
  }

  @Test
  void aWaitOverAClockChangeSeemsAnHourShorterOnTheClock() {
    // Lot 1 cures 7924 minutes from Tuesday 9:47: to Sunday 21:51 on a clock that was not put back.
    Plan plan = plan().plan();
    Wait cure = plan.waits().get(1);
    assertEquals("2027-11-02T09:47-05:00", cure.from().toString());
    assertEquals("2027-11-07T20:51-06:00", cure.to().toString());
  }

  @Test
  void theMostAWaitMayTakeIsCountedInElapsedHoursToo() {
    // Lot 4 sets from Saturday 10:31 to Monday 9:00: 46 h 29 min on the clock, 47 h 29 min in all.
    // Lot 2 sets for 71 h 29 min, from Tuesday to Friday.
    assertEquals(List.of("task L2-1/demould"), where(48));
    assertEquals(List.of("task L2-1/demould", "task L4-1/demould"), where(47));
  }

  @Test
  void theOffsetIsTheOneOfEachDay() {
    PlanDraft draft = plan();
    Wait cure = draft.plan().waits().get(1);
    Wait summer = Altered.of(cure, "to", cure.to().withOffsetSameInstant(cure.from().getOffset()));
    List<Wait> waits = new ArrayList<>(draft.plan().waits());
    waits.set(1, summer);
    draft.with("waits", waits);
    List<Finding> findings = Audit.of(book(120), draft.plan());
    assertEquals(List.of("a wait of run L1-1"), findings.stream().map(Finding::where).toList());
  }

  @Test
  void anotherZoneHasOtherOffsetsAndOtherHours() {
    Book elsewhere =
        BookWith.studio(
            book(120), Altered.of(book(120).studio(), "timeZone", ZoneId.of("Pacific/Chatham")));
    List<Integer> rules =
        Audit.of(elsewhere, plan().plan()).stream().map(Finding::rule).distinct().toList();
    assertEquals(List.of(0, 4), rules.stream().filter(rule -> rule == 0 || rule == 4).toList());
  }

  private static List<String> where(double setAtMostHours) {
    return Audit.of(book(setAtMostHours), plan().plan()).stream().map(Finding::where).toList();
  }

  private static PlanDraft plan() {
    return Repeated.later(DAYS).settled(FOLLOW);
  }

  private static Book book(double setAtMostHours) {
    Mould mould =
        Altered.of(SampleBook.planterDeep(), "setAtMostHours", OptionalDouble.of(setAtMostHours));
    Order order =
        Altered.of(SampleBook.gardenShop(), "due", LocalDateTime.parse("2027-11-20T17:00"));
    return Draft.of(SampleBook.example()).moulds(mould).orders(order).book();
  }
}
