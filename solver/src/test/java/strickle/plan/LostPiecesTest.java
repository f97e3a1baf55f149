package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.plan.Studios.MONDAY;
import static strickle.plan.Studios.at;
import static strickle.plan.Studios.order;
import static strickle.plan.Studios.tiles;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.plan.replan.Happening;
import strickle.plan.replan.ReplanRequest;

/** Why an order is late of which pieces are lost: what is lost serves nobody. */
class LostPiecesTest {

  private static final OffsetDateTime ELEVEN = at(MONDAY + "11:00");

  /** L1 was poured until 9:50 and is out at 13:54; then L2 is poured, and out on Tuesday. */
  private static List<String> because(Book book, Plan plan, int lost) {
    Happening poured = Told.poured("L1", "ana", MONDAY + "09:00", MONDAY + "09:50");
    List<Happening> happened = List.of(poured, Told.scrapped("L1-1", lost));
    ReplanRequest request = new ReplanRequest(ELEVEN, ELEVEN, happened, Effort.ofSchedules(50), 0);
    return Replanning.of(book, plan, request).run().plan().orders().get(0).because();
  }

  /**
   * What is lost is cast again, and taken out in 6 minutes each; a run that is lost is nobody's.
   */
  private static void assertWaitsForTheTray(List<String> because, int lost) {
    String late = lost == 1 ? "09:06, 16 h 6 min" : "09:12, 16 h 12 min";
    String first = "deep planter, slate (L2-1) is ready Tue 6 Apr " + late + " after A is due";
    assertEquals(first, because.get(0));
    String whose = lost == 1 ? "deep planter, slate, for the same order" : "deep planter, slate";
    String waits = " until Mon 5 Apr 13:54, which L1-1 (" + whose + ") holds";
    assertTrue(because.stream().anyMatch(line -> line.endsWith(waits)), because::toString);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void theChainOfWhatIsCastAgainIsTold(int lost) {
    Book book = BookWith.forms(tiles(order("A", 2, MONDAY + "17:00")), Studios.form("tray", 2));
    assertWaitsForTheTray(because(book, Planned.of(book), lost), lost);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void soItIsWithACover(int lost) {
    // At least one of two at 80 % is 0.96.
    Book book = BookWith.forms(tiles(order("A", 1, MONDAY + "17:00")), Studios.form("tray", 2));
    Book good = Studios.piece(book, "goodPercent", 80);
    PlanRequest request = new PlanRequest(Studios.FROM, Effort.ofSchedules(50), 0);
    PlanRequest sure = request.covering(OptionalDouble.of(95));
    Plan plan = Planning.of(good, sure, progress -> {}).run();
    assertWaitsForTheTray(because(good, plan, lost), lost);
  }
}
