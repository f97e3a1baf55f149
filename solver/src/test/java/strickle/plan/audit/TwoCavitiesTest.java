package strickle.plan.audit;

import static strickle.plan.SamplePlan.spell;
import static strickle.plan.audit.Reading.assertBreaks;
import static strickle.plan.audit.Reading.assertValid;

import org.junit.jupiter.api.Test;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.SampleBook;
import strickle.plan.Task;

/**
 * A mould of two cavities: a casting gives two pieces, so that ceil(3 / (2 x 0.92)) = 2 castings
 * are enough, and each run of one casting has two pieces to finish: 3 + 2 x 5 and 5 + 2 x 4
 * minutes.
 */
class TwoCavitiesTest {

  private static final Book BOOK = Books.mould("cavities", 2);

  @Test
  void aCastingGivesAsManyPiecesAsItsMouldHasCavities() {
    assertValid(BOOK, plan());
  }

  @Test
  void minutesEachAreForEveryPieceOfACasting() {
    PlanDraft asForOne = plan().spells("L2-1/step-3", spell("04-15T13:13", 9)).settled();
    assertBreaks(3, "task L2-1/step-3", BOOK, asForOne);
  }

  @Test
  void placesEachAreForEveryPieceOfACasting() {
    assertValid(places(2), plan());
    assertBreaks(6, places(1), plan());
  }

  private static Book places(int places) {
    return BookWith.stations(BOOK, Altered.of(SampleBook.rack(), "places", places));
  }

  private static PlanDraft plan() {
    PlanDraft draft = Reading.sample().withoutLot("L3").withoutLot("L4");
    draft.plan().tasks().stream()
        .filter(task -> task.lot().equals("L3") || task.lot().equals("L4"))
        .map(Task::id)
        .forEach(draft::withoutTask);
    return draft
        .spells("L1-1/step-1", spell("04-06T09:39", 13))
        .spells("L2-1/step-1", spell("04-09T09:39", 13))
        .spells("L1-1/step-2", spell("04-12T09:16", 13))
        .spells("L1-1/step-3", spell("04-12T13:29", 13))
        .spells("L2-1/step-2", spell("04-15T09:00", 13))
        .spells("L2-1/step-3", spell("04-15T13:13", 13))
        .settled();
  }
}
