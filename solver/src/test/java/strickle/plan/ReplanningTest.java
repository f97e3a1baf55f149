package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.plan.Studios.MONDAY;
import static strickle.plan.Studios.TUESDAY;
import static strickle.plan.Studios.at;
import static strickle.plan.Studios.form;
import static strickle.plan.Studios.order;
import static strickle.plan.Studios.pin;
import static strickle.plan.Studios.tiles;
import static strickle.plan.Studios.weekdays;
import static strickle.plan.Told.away;
import static strickle.plan.Told.broken;
import static strickle.plan.Told.demoulded;
import static strickle.plan.Told.poured;
import static strickle.plan.Told.scrapped;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Draft;
import strickle.book.Fault;
import strickle.book.Faults;
import strickle.plan.audit.Audit;
import strickle.plan.replan.Happening;
import strickle.plan.replan.Move;
import strickle.plan.replan.ReplanRequest;
import strickle.plan.replan.Replanned;
import strickle.plan.replan.Thawed;

/** Plans under way, laid out anew; all can be followed by head. */
class ReplanningTest {

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
  void thePlanIsWhatTheTestsTakeItFor() {
    assertEquals(
        List.of(
            "L1/pour ana 04-05T09:00 09:35",
            "L1-1/demould ana 04-05T13:27 13:33",
            "L2/pour ana 04-05T13:33 14:08",
            "L2-1/demould ana 04-06T09:00 09:06"),
        Planned.tasks(PLAN));
  }

  @Test
  void whatHappenedStaysAndTheRestWaitsForIt() {
    Replanned now =
        replanned(MONDAY + "11:00", poured("L1", "ana", MONDAY + "09:10", MONDAY + "10:00"));
    // The set begins at 9:52.
    assertEquals(
        List.of(
            "L1/pour ana 04-05T09:10 10:00",
            "L1-1/demould ana 04-05T13:52 13:58",
            "L2/pour ana 04-05T13:58 14:33",
            "L2-1/demould ana 04-06T09:00 09:06"),
        tasks(now));
    assertEquals(
        List.of(Move.Change.HAPPENED, Move.Change.MOVED, Move.Change.MOVED, Move.Change.UNCHANGED),
        now.moves().stream().map(Move::change).toList());
    assertEquals(2, now.moved());
  }

  @Test
  void whatIsNotToldHasNotHappened() {
    Book one = tiles(order("A", 1, FAR));
    Replanned now = replanned(one, Planned.of(one), MONDAY + "11:00", MONDAY + "11:00");
    assertEquals("L1/pour ana 04-05T11:00 11:35", tasks(now).get(0));
    assertEquals("L1-1/demould ana 04-05T15:27 15:33", tasks(now).get(1));
  }

  @Test
  void somebodyWhoIsStillAtItGoesOnAsLongAsItTakes() {
    Replanned now = replanned(MONDAY + "09:20", poured("L1", "ana", MONDAY + "09:05", ""));
    assertEquals("L1/pour ana 04-05T09:05 09:40", tasks(now).get(0));
    assertTrue(now.plan().tasks().get(0).begun());
    Replanned late = replanned(MONDAY + "10:00", poured("L1", "ana", MONDAY + "09:05", ""));
    assertEquals("L1/pour ana 04-05T09:05 10:01", tasks(late).get(0));
  }

  @Test
  void whatReallyHappenedNeedNotBeWithinTheHours() {
    Replanned now =
        replanned(MONDAY + "10:00", poured("L1", "ana", MONDAY + "06:00", MONDAY + "10:00"));
    assertEquals("L1/pour ana 04-05T06:00 10:00", tasks(now).get(0));
    assertEquals("L1-1/demould ana 04-05T13:52 13:58", tasks(now).get(1));
  }

  @Test
  void lostPiecesAreCastAgainAndNeedNoMoreThanTheirDemould() {
    Replanned now =
        replanned(
            MONDAY + "11:00",
            poured("L1", "ana", MONDAY + "09:00", MONDAY + "09:35"),
            scrapped("L1-1", 1));
    assertEquals(3, now.plan().lots().size());
    assertEquals(List.of("L2-1", "L3-1"), now.plan().ready().stream().map(Ready::run).toList());
    assertEquals("L1-1/demould ana 04-05T13:27 13:33", tasks(now).get(1));
  }

  @Test
  void whoIsAwayDoesNothingUntilTheyAreBack() {
    Replanned now =
        replanned(
            MONDAY + "11:00",
            poured("L1", "ana", MONDAY + "09:00", MONDAY + "09:35"),
            away("ana", MONDAY + "13:00", TUESDAY + "10:00"));
    assertEquals("L1-1/demould ana 04-06T10:00 10:06", tasks(now).get(1));
    Replanned again = replanned(BOOK, now.plan(), MONDAY + "12:00", MONDAY + "12:00");
    assertEquals(0, again.moved());
  }

  @Test
  void aMostWaitThatCannotBeKeptAnyMoreIsToldAndNotRefused() {
    Book book = Studios.mould(BOOK, "setAtMostHours", OptionalDouble.of(6));
    Plan plan = Planned.of(book);
    Replanned now =
        replanned(
            book,
            plan,
            MONDAY + "11:00",
            MONDAY + "11:00",
            poured("L1", "ana", MONDAY + "09:00", MONDAY + "09:35"),
            away("ana", MONDAY + "12:00", TUESDAY + "09:00"));
    // The set began at 9:27, and 6 hours were over at 15:27.
    long over = (24 * 60 + 9 * 60) - (15 * 60 + 27);
    assertEquals(
        List.of(new History.Exceeded("L1-1/demould", over)),
        now.plan().history().orElseThrow().exceeded());
  }

  @Test
  void aBrokenFormIsPouredIntoNoMore() {
    Book two = BookWith.forms(tiles(order("A", 3, FAR)), form("tray", 2));
    Plan plan = Planned.of(two);
    Replanned now =
        replanned(
            two, plan, MONDAY + "08:00", MONDAY + "08:00", broken("tray", 1, MONDAY + "08:00"));
    assertEquals(3, now.plan().lots().size());
    assertEquals(
        List.of(List.of(2)),
        now.plan().history().orElseThrow().broken().stream().map(History.Broken::units).toList());
  }

  @Test
  void whatCannotBeMadeAnyMoreIsRefused() {
    Fault fault =
        Faults.only(() -> replanned(MONDAY + "08:00", broken("tray", 1, MONDAY + "08:00")));
    assertEquals("$.forms[0].count", fault.path());
    assertTrue(fault.found().startsWith("none whole, as 1 of form \"tray\" broke"), fault.found());
    assertTrue(fault.found().contains("2 x deep planter, slate"), fault.found());
    assertTrue(fault.found().endsWith("for A"), fault.found());
    assertTrue(fault.right().contains("\"mended\""), fault.right());
  }

  @Test
  void whatIsAboutToBeginStaysEvenIfItCouldBeSooner() {
    Book pair = Draft.of(BOOK).people(weekdays("ana"), weekdays("ben")).book();
    Replanned now =
        replanned(
            pair,
            Planned.of(pair),
            MONDAY + "11:00",
            TUESDAY + "00:00",
            poured("L1", "ana", MONDAY + "08:00", MONDAY + "08:35"));
    assertEquals("L1-1/demould ana 04-05T13:27 13:33", tasks(now).get(1));
    assertEquals(List.of(), now.thawed());
  }

  @Test
  void whatCannotStayIsToldWithTheReason() {
    Replanned now =
        replanned(
            BOOK,
            PLAN,
            MONDAY + "11:00",
            TUESDAY + "00:00",
            poured("L1", "ana", MONDAY + "09:00", MONDAY + "09:35"),
            away("ana", MONDAY + "13:00", TUESDAY + "09:00"));
    assertEquals(
        List.of(
            new Thawed("L1-1/demould", "ana is not there for it then"),
            new Thawed("L2/pour", "ana is not there for it then")),
        now.thawed());
  }

  @Test
  void aPinToComeIsKept() {
    Book pinned = BookWith.pins(BOOK, pin(1, TUESDAY + "11:00"));
    Replanned now =
        replanned(
            pinned,
            PLAN,
            MONDAY + "11:00",
            MONDAY + "11:00",
            poured("L1", "ana", MONDAY + "09:00", MONDAY + "09:35"));
    assertTrue(tasks(now).contains("L3/pour ana 04-06T11:00 11:35"), tasks(now).toString());
  }

  @Test
  void aPinThatCannotBeKeptAnyMoreIsRefused() {
    Book pinned = BookWith.pins(BOOK, pin(1, MONDAY + "14:00"));
    Fault fault =
        Faults.only(
            () ->
                replanned(
                    pinned,
                    PLAN,
                    MONDAY + "12:00",
                    MONDAY + "12:00",
                    poured("L1", "ana", MONDAY + "11:00", MONDAY + "11:35")));
    assertEquals("$.pins[0].start", fault.path());
  }

  @Test
  void ordersMayHaveComeSince() {
    Book more = BookWith.orders(BOOK, order("A", 2, FAR), order("B", 1, FAR));
    Replanned now = replanned(more, PLAN, MONDAY + "08:00", MONDAY + "08:00");
    assertEquals(Planned.tasks(PLAN), tasks(now).subList(0, 4));
    assertEquals(3, now.plan().lots().size());
  }

  @Test
  void anOrderThatGetsLaterIsNamed() {
    Book due = tiles(order("A", 1, MONDAY + "14:00"));
    Replanned now =
        replanned(
            due,
            Planned.of(due),
            MONDAY + "12:00",
            MONDAY + "12:00",
            poured("L1", "ana", MONDAY + "10:00", MONDAY + "10:35"));
    assertEquals(60, now.orders().get(0).minutes());
    assertEquals(33, now.orders().get(0).lateAfter());
    assertEquals(0, now.orders().get(0).lateBefore());
  }

  @Test
  void whatIsKnownToBeDoneMayBeToldAgain() {
    Happening poured = poured("L1", "ana", MONDAY + "09:00", MONDAY + "09:35");
    Plan now = replanned(MONDAY + "11:00", poured).plan();
    Happening out = demoulded("L1-1", "ana", MONDAY + "13:27", MONDAY + "13:35");
    Replanned later = replanned(BOOK, now, MONDAY + "14:00", MONDAY + "14:00", poured, out);
    assertEquals("L1-1/demould ana 04-05T13:27 13:35", tasks(later).get(1));
  }
}
