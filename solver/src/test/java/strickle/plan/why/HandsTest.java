package strickle.plan.why;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import strickle.shop.Calendar;

/** Open from 60 to 120 and from 180 to 240. */
class HandsTest {

  private static final Calendar HOURS = Calendar.of(new int[] {60, 180}, new int[] {120, 240});

  private static Hands hands(Placed... tasks) {
    Course course = Runs.course(List.of(tasks));
    List<Errand> errands = List.of(tasks).stream().map(t -> new Errand(course, 0, t)).toList();
    return new Hands("ana", HOURS, errands);
  }

  private static Optional<Placed> placed(int start, int end, int minutes) {
    return Optional.of(new Placed("ana", start, end, minutes));
  }

  @Test
  void aTaskWaitsForOpening() {
    assertEquals(placed(60, 90, 30), hands().earliest(0, 0, 30, true));
  }

  @Test
  void aTaskThatMayBeBrokenOffGoesOnAfterClosing() {
    assertEquals(placed(100, 190, 30), hands().earliest(100, 0, 30, false));
  }

  @Test
  void aTaskThatMayNotBeBrokenOffWaitsForTheNextWindow() {
    assertEquals(placed(180, 210, 30), hands().earliest(100, 0, 30, true));
  }

  @Test
  void aTaskGoesRoundWhatThePersonDoesAlready() {
    Hands busy = hands(new Placed("ana", 70, 100, 30), new Placed("ana", 110, 185, 15));
    assertEquals(placed(60, 70, 10), busy.earliest(0, 0, 10, false));
    assertEquals(placed(185, 205, 20), busy.earliest(0, 0, 20, false));
  }

  @Test
  void aTaskEndsNoSoonerThanAsked() {
    assertEquals(placed(85, 115, 30), hands().earliest(0, 115, 30, false));
    assertEquals(placed(91, 181, 30), hands().earliest(0, 150, 30, false));
  }

  @Test
  void hoursThatAreUsedUpHaveNoPlace() {
    assertEquals(Optional.empty(), hands().earliest(0, 0, 121, false));
    assertEquals(Optional.empty(), hands().earliest(220, 0, 30, false));
  }

  @Test
  void closingAndOpeningAreFoundFromAnyMinute() {
    assertEquals(60, hands().opens(0));
    assertEquals(75, hands().opens(75));
    assertEquals(Usage.NEVER, hands().opens(240));
    assertEquals(120, hands().closes(75));
    assertEquals(120, hands().closed(150));
    assertEquals(-1, hands().closed(60));
  }

  @Test
  void aTaskThatLiesOnBothSidesOfAClosingIsBrokenOffThere() {
    Hands busy = hands(new Placed("ana", 110, 185, 15));
    assertTrue(busy.breaksOff(150));
    assertFalse(busy.breaksOff(30));
  }
}
