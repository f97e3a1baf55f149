package strickle.plan.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.plan.SamplePlan.spell;
import static strickle.plan.audit.Reading.BOOK;
import static strickle.plan.audit.Reading.assertBreaks;
import static strickle.plan.audit.Reading.assertValid;
import static strickle.plan.audit.Reading.sample;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Person;
import strickle.book.SampleBook;
import strickle.book.SpecialDay;
import strickle.book.Window;
import strickle.plan.Spell;

/** Rule 4. */
class HoursRuleTest {

  private static final String SAND = "L1-1/step-1";

  @Test
  void aTaskIsDoneBySomebodyTheBookKnows() {
    assertBreaks(4, "task L1-1/step-3", BOOK, sample().person("L1-1/step-3", "zoe"));
  }

  @Test
  void nobodyWorksOnADayOff() {
    // Ben works on weekdays; lot 3 gets its second coat on a Saturday.
    assertBreaks(4, "task L3-1/step-3", Books.withBen(), sample().person("L3-1/step-3", "ben"));
  }

  @Test
  void nobodyWorksThroughTheBreak() {
    assertBreaks(4, "task " + SAND, BOOK, sand(spell("04-06T11:56", 8)));
  }

  @Test
  void aPourIsOverWhenThePersonLeaves() {
    // Ana leaves at 13:00 on a Saturday.
    assertValid(BOOK, sample().spells("L4/pour", spell("04-10T12:29", 31)).settled());
    PlanDraft draft = sample().spells("L4/pour", spell("04-10T12:30", 31));
    assertBreaks(4, "task L4/pour", BOOK, draft.settled());
  }

  @Test
  void nobodyWorksBeforeOpening() {
    assertBreaks(
        4, "task L4-1/demould", BOOK, sample().spells("L4-1/demould", spell("04-12T08:59", 8)));
  }

  @Test
  void aDateWithHoursOfItsOwnDoesNotHaveThoseOfItsWeekday() {
    Book away = anaExcept("2027-04-17");
    assertBreaks(4, "task L3-1/step-3", away, sample());
  }

  @Test
  void aDateWithHoursOfItsOwnHasThem() {
    PlanDraft evening = sample().spells("L2-1/demould", spell("04-07T18:00", 8)).settled();
    assertValid(anaExcept("2027-04-07", new Window(18 * 60, 19 * 60)), evening);
    assertBreaks(4, "task L2-1/demould", BOOK, evening);
  }

  @Test
  void aTaskMayBreakOffAtClosingAndGoOnAtOpening() {
    assertValid(BOOK, sand(spell("04-06T11:56", 4), spell("04-06T13:00", 4)));
  }

  @Test
  void aTaskMayGoOnAfterDaysOff() {
    // From Tuesday's closing to Friday's opening: Wednesday is free, Thursday is taken off. There
    // is less time left to cure: 60 h / 0.908733 are 3961.56 minutes.
    PlanDraft draft =
        sample()
            .spells("L2-1/demould", spell("04-09T09:04", 8))
            .spells("L3/pour", spell("04-09T09:12", 31))
            .spells("L2-1/step-1", spell("04-09T09:43", 8))
            .spells(SAND, spell("04-06T16:56", 4), spell("04-09T09:00", 4));
    assertValid(Books.curesFor(60), draft.settled(Follow.SAMPLE.withCure(3962)));
  }

  @Test
  void aTaskDoesNotBreakOffWhileTheWindowIsOpen() {
    assertBreaks(4, "task " + SAND, BOOK, sand(spell("04-06T11:55", 4), spell("04-06T13:00", 4)));
  }

  @Test
  void aTaskThatBrokeOffGoesOnWhenTheNextWindowOpens() {
    assertBreaks(4, "task " + SAND, BOOK, sand(spell("04-06T11:56", 4), spell("04-06T13:01", 4)));
  }

  @Test
  void aTaskThatBrokeOffDoesNotLeaveOutAWindow() {
    PlanDraft draft =
        sample().spells("L4-1/step-3", spell("04-19T16:56", 4), spell("04-22T09:00", 5));
    assertBreaks(4, "task L4-1/step-3", BOOK, draft.settled());
  }

  @Test
  void whoIsNeverBackDoesNotGoOn() {
    // Jo is there on one afternoon only.
    SpecialDay once =
        new SpecialDay(LocalDate.parse("2027-04-19"), List.of(new Window(13 * 60, 13 * 60 + 14)));
    Book book =
        BookWith.people(BOOK, SampleBook.ana(), new Person("jo", "Jo", Map.of(), List.of(once)));
    PlanDraft draft =
        sample()
            .spells("L4-1/step-3", spell("04-19T13:09", 5), spell("04-20T13:09", 4))
            .person("L4-1/step-3", "jo");
    assertBreaks(4, book, draft.settled());
    assertTrue(Audit.of(book, draft.plan()).toString().contains("opens never"));
  }

  @Test
  void theSpellsOfATaskStandInOrder() {
    assertBreaks(4, BOOK, sand(spell("04-06T13:00", 4), spell("04-06T11:56", 4)));
  }

  @Test
  void aSpellHasAtLeastAMinute() {
    assertBreaks(4, BOOK, sand(spell("04-06T11:52", 8), spell("04-06T13:00", 0)));
  }

  @Test
  void nobodyDoesTwoTasksAtOnce() {
    // Lot 3 is poured from 9:08 to 9:39.
    PlanDraft draft = sample().spells("L2-1/step-1", spell("04-09T09:38", 8));
    assertBreaks(4, "person ana", BOOK, draft.settled());
  }

  @Test
  void twoPeopleDoTwoTasksAtOnce() {
    PlanDraft draft =
        sample().spells("L2-1/step-1", spell("04-09T09:38", 8)).person("L2-1/step-1", "ben");
    assertValid(Books.withBen(), draft.settled());
  }

  @Test
  void aLongTaskIsNotForgottenOverAShortOneWithinIt() {
    // Two steps within the pour of lot 3, from 9:08 to 9:39, but neither within the other.
    PlanDraft draft =
        sample()
            .spells("L2-1/step-1", spell("04-09T09:10", 8))
            .spells(SAND, spell("04-09T09:20", 8));
    List<Finding> findings = Audit.of(BOOK, draft.plan());
    assertEquals(2, findings.stream().filter(finding -> finding.rule() == 4).count());
  }

  @Test
  void theSpellsOfOneTaskDoNotOverlap() {
    assertBreaks(4, BOOK, sand(spell("04-06T09:39", 4), spell("04-06T09:41", 4)));
  }

  private static PlanDraft sand(Spell... spells) {
    return sample().spells(SAND, spells).settled();
  }

  private static Book anaExcept(String date, Window... hours) {
    List<SpecialDay> exceptions =
        PlanDraft.plus(
            SampleBook.ana().exceptions(), new SpecialDay(LocalDate.parse(date), List.of(hours)));
    return BookWith.people(BOOK, Altered.of(SampleBook.ana(), "exceptions", exceptions));
  }
}
