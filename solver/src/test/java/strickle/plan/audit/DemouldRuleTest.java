package strickle.plan.audit;

import static strickle.plan.SamplePlan.demould;
import static strickle.plan.SamplePlan.spell;
import static strickle.plan.audit.Reading.BOOK;
import static strickle.plan.audit.Reading.assertBreaks;
import static strickle.plan.audit.Reading.assertValid;
import static strickle.plan.audit.Reading.sample;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.BookWith;

/** Rule 2. */
class DemouldRuleTest {

  @Test
  void aDemouldTakesItsMinutes() {
    assertBreaks(
        2,
        "task L1-1/demould",
        BOOK,
        sample().spells("L1-1/demould", spell("04-06T09:00", 7)).settled());
  }

  @Test
  void aDemouldTakesItsMinutesForEachCasting() {
    PlanDraft draft = TwoAtOnce.asOneRun().spells("L1-1/demould", spell("04-06T09:00", 8));
    assertBreaks(2, "task L1-1/demould", Books.withTwoTubs(), draft.settled());
  }

  @Test
  void aDemouldMayStartTheMinuteTheSetIsOver() {
    // Washing up begins at 10:59, and 1321 minutes after that it is Tuesday 9:00.
    assertValid(BOOK, sample().spells("L1/pour", spell("04-05T10:36", 31)).settled());
  }

  @Test
  void aDemouldDoesNotStartAMinuteBeforeTheSetIsOver() {
    assertBreaks(
        2,
        "task L1-1/demould",
        BOOK,
        sample().spells("L1/pour", spell("04-05T10:37", 31)).settled());
  }

  @Test
  void aColdRoomMakesTheSetLonger() {
    // 22 h at 20 °C. Without a climate they are over on Tuesday at 7:23; at 18 °C they take
    // 22 / 0.908733 h = 1452.57 minutes, and are over at 9:36.
    Book warm =
        BookWith.studio(Books.mould("setHours", 22.0), Books.studio("climate", List.of()).studio());
    assertValid(warm, sample().settled(Follow.SAMPLE.withSet(1320).withCure(7200)));
    Book cold = Books.mould("setHours", 22.0);
    assertBreaks(2, "task L1-1/demould", cold, sample().settled(Follow.SAMPLE.withSet(1453)));
  }

  @Test
  void aCastingDoesNotStayInTheMouldTooLong() {
    // Lot 2 sets from Tuesday 9:31 and leaves the mould on Friday at 9:00, 71 h 29 min later.
    assertValid(Books.mould("setAtMostHours", OptionalDouble.of(71.5)), sample());
    assertValid(Books.mould("setAtMostHours", OptionalDouble.of(71 + 29 / 60.0)), sample());
    Book book = Books.mould("setAtMostHours", OptionalDouble.of(71.48));
    assertBreaks(2, "task L2-1/demould", book, sample());
  }

  @Test
  void aMouldWithoutALimitMayWait() {
    assertValid(Books.mould("setAtMostHours", OptionalDouble.empty()), sample());
  }

  @Test
  void everyRunIsDemoulded() {
    assertBreaks(2, "run L4-1", BOOK, sample().withoutTask("L4-1/demould").settled());
  }

  @Test
  void noRunIsDemouldedTwice() {
    PlanDraft draft =
        sample()
            .plusTask(Altered.of(demould("L1", "L1-1", spell("04-06T10:00", 8)), "id", "again"));
    assertBreaks(2, "run L1-1", BOOK, draft.settled());
  }

  @Test
  void onlyRunsOfThePlanAreDemoulded() {
    PlanDraft draft = sample().plusTask(demould("L1", "L9-1", spell("04-06T10:00", 8)));
    assertBreaks(2, "task L9-1/demould", BOOK, draft.settled());
  }
}
