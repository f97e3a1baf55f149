package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.plan.Studios.MONDAY;
import static strickle.plan.Studios.TUESDAY;
import static strickle.plan.Studios.at;
import static strickle.plan.Studios.order;
import static strickle.plan.Studios.tiles;
import static strickle.plan.Told.poured;

import java.util.List;
import org.junit.jupiter.api.Test;
import strickle.book.Book;
import strickle.plan.audit.Audit;
import strickle.plan.replan.Happening;
import strickle.plan.replan.ReplanRequest;
import strickle.plan.replan.Replanned;
import strickle.plan.replan.Thawed;

/** What is about to begin gives way as little as it can; all can be followed by head. */
class PushedReplansTest {

  /** L1 poured at 9:00 and out at 13:27, L2 poured at 13:33 into the same tray. */
  private static Book book(String due) {
    return tiles(order("A", 2, due));
  }

  private static Replanned replanned(Book book, String now, String until, Happening... happened) {
    ReplanRequest request =
        new ReplanRequest(at(now), at(until), List.of(happened), Effort.ofSchedules(100), 0);
    Replanned replanned = Replanning.of(book, Planned.of(book), request).run();
    assertEquals(List.of(), Audit.of(book, replanned.plan()));
    return replanned;
  }

  @Test
  void aTaskThatTakesLongerPushesThoseBehindItInTheirOrder() {
    Book book = book("2027-04-30T12:00");
    Replanned now =
        replanned(
            book,
            MONDAY + "11:00",
            TUESDAY + "00:00",
            poured("L1", "ana", MONDAY + "09:10", MONDAY + "10:00"));
    // The set begins at 9:52, and the demould and the next pour are 25 minutes later for it.
    assertEquals(
        List.of(
            "L1/pour ana 04-05T09:10 10:00",
            "L1-1/demould ana 04-05T13:52 13:58",
            "L2/pour ana 04-05T13:58 14:33",
            "L2-1/demould ana 04-06T09:00 09:06"),
        Planned.tasks(now.plan()));
    assertEquals(
        List.of("L1-1/demould", "L2/pour"), now.thawed().stream().map(Thawed::task).toList());
    assertEquals(
        "the wait before it is not over by then", now.thawed().get(0).reason(), "" + now.thawed());
    String second = now.thawed().get(1).reason();
    assertTrue(second.endsWith(" is not free until Mon 13:58"), second);
  }

  @Test
  void whatWasToHaveBegunIsPouredNowAndNothingElseChangesPlaces() {
    Book book = book("2027-04-30T12:00");
    Replanned now = replanned(book, MONDAY + "09:20", TUESDAY + "00:00");
    assertEquals(
        List.of(
            "L1/pour ana 04-05T09:20 09:55",
            "L1-1/demould ana 04-05T13:47 13:53",
            "L2/pour ana 04-05T13:53 14:28",
            "L2-1/demould ana 04-06T09:00 09:06"),
        Planned.tasks(now.plan()));
    assertEquals(3, now.moved());
  }

  @Test
  void frozenTasksMakeNothingLaterThanItHasToBe() {
    Book book = book(TUESDAY + "10:00");
    for (String until : List.of(MONDAY + "12:00", TUESDAY + "00:00", TUESDAY + "12:00")) {
      Replanned now = replanned(book, MONDAY + "12:00", until);
      Replanned free = replanned(book, MONDAY + "12:00", MONDAY + "12:00");
      assertEquals(
          free.plan().totals().weightedLateHours(), now.plan().totals().weightedLateHours());
    }
  }

  @Test
  void aLateOrderIsToldWhatBoundItAndWhatWouldFreeIt() {
    Book book = book(MONDAY + "20:00");
    Happening late = poured("L1", "ana", MONDAY + "11:30", MONDAY + "12:05");
    Replanned now = replanned(book, MONDAY + "14:00", MONDAY + "14:00", late);
    List<String> because = now.plan().orders().get(0).because();
    // The second is poured after the first is out, and out itself on Tuesday.
    assertTrue(because.get(0).contains("after A is due"), because.toString());
    assertTrue(
        because.stream().anyMatch(line -> line.contains("when it was laid out anew")),
        "" + because);
    assertTrue(because.stream().noneMatch(line -> line.contains("no plan was found")));
    String last = because.get(because.size() - 1);
    assertTrue(last.contains("would free it") || last.contains("would help"), because.toString());
  }
}
