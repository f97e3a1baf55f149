package strickle.plan.audit;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.plan.SamplePlan.pour;
import static strickle.plan.SamplePlan.spell;
import static strickle.plan.audit.Reading.BOOK;
import static strickle.plan.audit.Reading.assertBreaks;
import static strickle.plan.audit.Reading.assertValid;
import static strickle.plan.audit.Reading.rulesBroken;
import static strickle.plan.audit.Reading.sample;

import java.time.DayOfWeek;
import java.util.List;
import org.junit.jupiter.api.Test;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Mix;
import strickle.book.SampleBook;
import strickle.plan.Lot;
import strickle.plan.Weighed;

/** Rule 1. */
class PourRuleTest {

  @Test
  void aPourIsNotCutIntoSpells() {
    assertBreaks(
        1,
        "task L1/pour",
        BOOK,
        sample().spells("L1/pour", spell("04-05T09:00", 15), spell("04-05T09:15", 16)));
  }

  @Test
  void aPourIsNotSpreadOverTheLunchBreakEither() {
    assertBreaks(
        1,
        "task L3/pour",
        BookWith.people(
            BOOK,
            SampleBook.person(
                "ana",
                List.of(SampleBook.hours(9, 12), SampleBook.hours(13, 17)),
                DayOfWeek.values())),
        sample()
            .spells("L3/pour", spell("04-09T11:45", 15), spell("04-09T13:00", 16))
            .spells("L3-1/demould", spell("04-10T11:12", 8))
            .spells("L3-1/step-1", spell("04-10T11:20", 8))
            .spells("L4/pour", spell("04-10T11:28", 31))
            .spells("L4-1/demould", spell("04-12T10:00", 8))
            .spells("L4-1/step-1", spell("04-12T10:08", 8))
            .settled());
  }

  @Test
  void aPourTakesNoFewerMinutesThanItsParts() {
    assertBreaks(
        1, "task L1/pour", BOOK, sample().spells("L1/pour", spell("04-05T09:00", 30)).settled());
  }

  @Test
  void aPourTakesNoMoreMinutesThanItsParts() {
    assertBreaks(
        1, "task L1/pour", BOOK, sample().spells("L1/pour", spell("04-05T09:00", 32)).settled());
  }

  @Test
  void theMouldsAreFilledWhileTheMixWorks() {
    assertValid(Books.mix("workingMinutes", 5), sample());
    assertBreaks(1, Books.mix("workingMinutes", 4), sample());
  }

  @Test
  void aLotIsNoHeavierThanTheStudioCanMix() {
    assertValid(Books.studio("batchLimitGrams", 2494.3), sample());
    assertBreaks(1, Books.studio("batchLimitGrams", 2494.2), sample());
  }

  @Test
  void aRunIsOfTheMixOfItsLot() {
    Book book = BookWith.mixes(BOOK, SampleBook.slate(), chalk());
    assertBreaks(1, "run L1-1", book, sample().lot("L1", lot -> Altered.of(lot, "mix", "chalk")));
  }

  @Test
  void aLotIsOfAMixTheBookKnows() {
    assertTrue(
        rulesBroken(BOOK, sample().lot("L1", lot -> Altered.of(lot, "mix", "none")).plan())
            .contains(1));
  }

  @Test
  void aRunIsOfAPieceTheBookKnows() {
    assertTrue(
        rulesBroken(BOOK, sample().run("L1", run -> Altered.of(run, "piece", "none")).plan())
            .contains(1));
  }

  @Test
  void aLotHasOneRunOfAPieceAtMost() {
    PlanDraft twoRuns = TwoAtOnce.asTwoRuns();
    assertBreaks(1, "lot L1", Books.withTwoTubs(), twoRuns);
  }

  @Test
  void twoCastingsOfOneRunShareALot() {
    assertValid(Books.withTwoTubs(), TwoAtOnce.asOneRun());
  }

  @Test
  void eachCastingAddsItsPreparingAndItsPouring() {
    // Two castings: 2 x 6 + 12 + 2 x 5 + 8 = 42 minutes.
    assertBreaks(
        1,
        "task L1/pour",
        Books.withTwoTubs(),
        TwoAtOnce.asOneRun().spells("L1/pour", spell("04-05T09:00", 31)).settled());
  }

  @Test
  void fillingTwoMouldsTakesTwiceAsMuchOfTheWorkingTime() {
    Book tenMinutes = BookWith.mixes(Books.withTwoTubs(), worksFor(10));
    assertValid(tenMinutes, TwoAtOnce.asOneRun());
    Book nineMinutes = BookWith.mixes(Books.withTwoTubs(), worksFor(9));
    assertBreaks(1, "lot L1", nineMinutes, TwoAtOnce.asOneRun());
  }

  @Test
  void everyLotIsPoured() {
    assertBreaks(1, "lot L1", BOOK, sample().withoutTask("L1/pour").settled());
  }

  @Test
  void noLotIsPouredTwice() {
    PlanDraft draft =
        sample().plusTask(Altered.of(pour("L1", spell("04-05T10:00", 31)), "id", "again"));
    assertBreaks(1, "lot L1", BOOK, draft.settled());
  }

  @Test
  void onlyLotsOfThePlanArePoured() {
    PlanDraft draft = sample().plusTask(pour("L9", spell("04-05T10:00", 31)));
    assertBreaks(1, "task L9/pour", BOOK, draft.settled());
  }

  @Test
  void aLotIsForSomething() {
    List<Weighed> nothing =
        List.of(
            new Weighed("white-blend", 0), new Weighed("iron-black", 0), new Weighed("water", 0));
    PlanDraft draft =
        sample()
            .plusLot(new Lot("L5", "slate", List.of(), nothing, 0))
            .plusTask(pour("L5", spell("04-05T10:00", 20)));
    assertBreaks(1, "lot L5", BOOK, draft.settled());
  }

  private static Mix chalk() {
    return Altered.of(SampleBook.slate(), "id", "chalk");
  }

  private static Mix worksFor(int minutes) {
    return Altered.of(SampleBook.slate(), "workingMinutes", minutes);
  }
}
