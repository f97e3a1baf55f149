package strickle.plan.why;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import strickle.book.Book;
import strickle.book.Climate;
import strickle.book.SampleBook;
import strickle.plan.Cover;
import strickle.shop.Calendar;

class ReliefTest {

  private static final Thing TUB = Thing.form("tub-a");
  private static final Thing RACK = Thing.station("rack");
  private static final Calendar HOURS = Calendar.of(new int[] {60, 180}, new int[] {120, 240});

  private final Book book = SampleBook.example();

  private Floor floor(Course... courses) {
    Moments moments =
        new Moments(
            MomentsTest.at("2027-04-05T00:00").atZone(book.studio().timeZone()).toOffsetDateTime(),
            book.studio().timeZone());
    return Floor.of(book, Cover.AVERAGE, moments, Map.of("ana", HOURS), List.of(courses));
  }

  @Test
  void moreOfTheSameIsPutTogether() {
    Relief one = new Relief.More(Map.of(TUB, 1));
    Relief more = new Relief.More(Map.of(TUB, 2, RACK, 3));
    assertTrue(one.isLike(more));
    assertEquals(Optional.of(new Relief.More(Map.of(TUB, 3, RACK, 3))), one.join(more));
    assertEquals(Optional.empty(), one.join(new Relief.More(Map.of(RACK, 1))));
    assertEquals(Optional.empty(), one.join(new Relief.Warmth()));
  }

  @Test
  void moreUnitsAreThereOnTheNewFloor() {
    Floor more = new Relief.More(Map.of(TUB, 2)).on(floor()).orElseThrow();
    assertEquals(3, more.usage(TUB).count());
    assertEquals(24, more.usage(RACK).count());
  }

  @Test
  void hoursAreAddedToThePersonsOwn() {
    Floor longer = new Relief.Hours("ana", 130, 150).on(floor()).orElseThrow();
    assertEquals(130, longer.hands("ana").opens(120));
    assertEquals(180, longer.hands("ana").opens(150));
  }

  @Test
  void hoursThatThePersonHasAlreadyAreNoRelief() {
    assertEquals(Optional.empty(), new Relief.Hours("ana", 110, 130).on(floor()));
  }

  /** With the break open, the task would have to go on in it, and no longer be where it is. */
  @Test
  void hoursInTheBreakOfATaskAreNoRelief() {
    Course broken = Runs.course(List.of(new Placed("ana", 110, 190, 20)));
    assertEquals(Optional.empty(), new Relief.Hours("ana", 130, 150).on(floor(broken)));
  }

  @Test
  void aHelperMayDoWhatOnlyOneMay() {
    Floor helped = new Relief.Helper("the pour", 10, 50).on(floor()).orElseThrow();
    Stage sealing = Chain.of(book, SampleBook.planterSlate(), 1).stages().get(3);
    assertEquals(List.of("ana"), sealing.by());
    assertEquals(
        List.of("ana", "helper-10"), helped.whoMay(sealing).stream().map(Hands::person).toList());
  }

  @Test
  void warmthLeavesWarmTimesAsTheyAre() {
    LocalDateTime from = LocalDateTime.parse("2027-04-05T00:00");
    Climate cool = new Climate(from, 14, OptionalDouble.empty());
    Climate warm = new Climate(from.plusDays(1), 25, OptionalDouble.empty());
    assertTrue(Relief.Warmth.isCool(cool));
    assertFalse(Relief.Warmth.isCool(warm));
    assertEquals(
        List.of(new Climate(from, 20, OptionalDouble.empty()), warm),
        Relief.Warmth.of(List.of(cool, warm)));
  }
}
