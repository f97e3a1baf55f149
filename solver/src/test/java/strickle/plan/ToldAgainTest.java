package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.plan.Studios.MONDAY;
import static strickle.plan.Studios.TUESDAY;
import static strickle.plan.Studios.at;
import static strickle.plan.Studios.form;
import static strickle.plan.Studios.order;
import static strickle.plan.Studios.tiles;
import static strickle.plan.Told.away;
import static strickle.plan.Told.back;
import static strickle.plan.Told.broken;
import static strickle.plan.Told.mended;
import static strickle.plan.Told.poured;

import java.util.List;
import org.junit.jupiter.api.Test;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Fault;
import strickle.book.Faults;
import strickle.plan.audit.Audit;
import strickle.plan.replan.Happening;
import strickle.plan.replan.ReplanRequest;
import strickle.plan.replan.Replanned;
import strickle.plan.replan.Thawed;

/** What changes again after it has been told, and what is said of it; all followed by head. */
class ToldAgainTest {

  private static final String FAR = "2027-04-30T12:00";

  /** Two tiles and one tray: L1 poured at 9:00 and out at 13:27, L2 poured at 13:33. */
  private static final Book BOOK = tiles(order("A", 2, FAR));

  private static final Plan PLAN = Planned.of(BOOK);

  private static Replanned replanned(
      Book book, Plan plan, String now, String until, Happening... happened) {
    ReplanRequest request =
        new ReplanRequest(at(now), at(until), List.of(happened), Effort.ofSchedules(50), 0);
    Replanned replanned = Replanning.of(book, plan, request).run();
    assertEquals(List.of(), Audit.of(book, replanned.plan()));
    return replanned;
  }

  private static Replanned replanned(String now, Happening... happened) {
    return replanned(BOOK, PLAN, now, now, happened);
  }

  private static List<String> tasks(Replanned replanned) {
    return Planned.tasks(replanned.plan());
  }

  @Test
  void whatIsBrokenForAWhileIsPouredIntoWhenItIsWholeAgain() {
    Happening broken = broken("tray", 1, MONDAY + "08:00", TUESDAY + "10:00");
    Replanned now = replanned(MONDAY + "08:00", broken);
    assertTrue(tasks(now).get(0).endsWith("/pour ana 04-06T10:00 10:35"), "" + tasks(now));
    Replanned again = replanned(BOOK, now.plan(), MONDAY + "09:00", MONDAY + "09:00", broken);
    assertEquals(0, again.moved());
  }

  @Test
  void aBreakageIsTakenBackWhenItIsMended() {
    Book two = BookWith.forms(tiles(order("A", 3, MONDAY + "20:00")), form("tray", 2));
    Plan plan = Planned.of(two);
    String eight = MONDAY + "08:00";
    Happening broken = broken("tray", 2, eight, TUESDAY + "10:00");
    Plan first = replanned(two, plan, eight, eight, broken).plan();
    assertTrue(Planned.tasks(first).get(0).contains("/pour ana 04-06T10:00"), "" + first.tasks());
    Happening mended = mended("tray", 1, MONDAY + "11:00");
    Replanned now = replanned(two, first, MONDAY + "10:00", MONDAY + "10:00", broken, mended);
    assertTrue(tasks(now).get(0).endsWith("/pour ana 04-05T11:00 11:35"), "" + tasks(now));
    List<History.Broken> left = now.plan().history().orElseThrow().broken();
    assertEquals(2, left.size());
    assertEquals(
        List.of(at(MONDAY + "11:00"), at(TUESDAY + "10:00")),
        left.stream().flatMap(one -> one.to().stream()).toList());
  }

  @Test
  void moreThanIsBrokenCannotBeMended() {
    Happening mended = mended("tray", 1, MONDAY + "08:00");
    Fault fault = Faults.only(() -> replanned(MONDAY + "08:00", mended));
    assertEquals("$.happened[0].count", fault.path());
  }

  @Test
  void anAbsenceIsTakenBackWhenSomebodyIsBack() {
    Book late = tiles(order("A", 1, MONDAY + "13:00"));
    String eleven = MONDAY + "11:00";
    String noon = MONDAY + "12:00";
    Happening poured = poured("L1", "ana", MONDAY + "09:00", MONDAY + "09:35");
    Happening away = away("ana", MONDAY + "13:00", TUESDAY + "10:00");
    Plan first = replanned(late, Planned.of(late), eleven, eleven, poured, away).plan();
    assertEquals("L1-1/demould ana 04-06T10:00 10:06", Planned.tasks(first).get(1));
    Replanned now = replanned(late, first, noon, noon, back("ana", MONDAY + "14:00"));
    assertEquals("L1-1/demould ana 04-05T14:00 14:06", tasks(now).get(1));
    Replanned never = replanned(late, first, noon, noon, back("ana", MONDAY + "13:00"));
    assertEquals("L1-1/demould ana 04-05T13:27 13:33", tasks(never).get(1));
    assertEquals(List.of(), never.plan().history().orElseThrow().away());
  }

  @Test
  void whoWasNotAwayIsNotBack() {
    Fault fault = Faults.only(() -> replanned(MONDAY + "08:00", back("ana", MONDAY + "09:00")));
    assertEquals("$.happened[0].from", fault.path());
  }

  @Test
  void whatWasToHaveBegunIsSaidToBeOverdueWhateverElseIsInItsWay() {
    // Ben does the second half of what was planned, and is away by now; that is not what kept L1.
    Replanned now =
        replanned(
            BOOK,
            PLAN,
            MONDAY + "12:00",
            TUESDAY + "00:00",
            away("ana", MONDAY + "08:00", TUESDAY + "09:00"));
    assertEquals(
        new Thawed("L1/pour", "it has not been reported to have begun by now"),
        now.thawed().get(0));
    assertEquals(new Thawed("L1-1/demould", "the task before it has moved"), now.thawed().get(1));
  }

  @Test
  void ordersThatAreNewToThePlanOrGoneAreNamed() {
    Book other = BookWith.orders(BOOK, order("B", 1, FAR), order("C", 1, MONDAY + "08:30"));
    Replanned now = replanned(other, PLAN, MONDAY + "08:00", MONDAY + "08:00");
    assertEquals(List.of("B", "C"), now.newOrders().stream().map(OrderOutcome::order).toList());
    assertTrue(now.newOrders().get(1).lateMinutes() > 0);
    assertEquals(List.of("A"), now.goneOrders());
    assertEquals(List.of(), now.orders());
  }

  @Test
  void anOrderWithAnotherDueFeelsIt() {
    Book sooner = BookWith.orders(BOOK, order("A", 2, MONDAY + "12:00"));
    Replanned now = replanned(sooner, PLAN, MONDAY + "08:00", MONDAY + "08:00");
    assertEquals(0, now.orders().get(0).minutes());
    assertTrue(now.orders().get(0).lateAfter() > now.orders().get(0).lateBefore());
  }
}
