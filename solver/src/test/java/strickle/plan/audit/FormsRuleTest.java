package strickle.plan.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static strickle.plan.SamplePlan.spell;
import static strickle.plan.audit.Reading.BOOK;
import static strickle.plan.audit.Reading.assertBreaks;
import static strickle.plan.audit.Reading.assertValid;
import static strickle.plan.audit.Reading.sample;

import java.util.List;
import org.junit.jupiter.api.Test;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.FormUse;
import strickle.book.SampleBook;
import strickle.plan.FormHold;

/** Rule 5. */
class FormsRuleTest {

  private static final FormHold TUB_A = new FormHold("tub-a", List.of(1));
  private static final FormHold TUB_B = new FormHold("tub-b", List.of(1));

  @Test
  void aUnitIsHeldUntilTheDemouldIsOver() {
    // Lot 1 leaves the tubs on Tuesday from 9:00 to 9:08; Ben pours lot 2 meanwhile.
    PlanDraft draft =
        sample().person("L2/pour", "ben").spells("L2/pour", spell("04-06T09:07", 31)).settled();
    assertBreaks(5, Books.withBen(), draft);
    assertValid(Books.withTwoTubs(Books.withBen()), secondUnit(draft));
  }

  @Test
  void aUnitIsHeldFromTheStartOfThePour() {
    // Ben takes lot 2 out on Friday only when the pour of lot 3 has begun.
    PlanDraft draft =
        sample()
            .person("L2-1/demould", "ben")
            .spells("L2-1/demould", spell("04-09T09:38", 8))
            .spells("L2-1/step-1", spell("04-09T09:46", 8));
    assertBreaks(5, Books.withBen(), draft.settled());
  }

  @Test
  void bothUnitsOfANestAreLookedAt() {
    PlanDraft draft =
        sample().person("L2/pour", "ben").spells("L2/pour", spell("04-06T09:07", 31)).settled();
    List<String> where =
        Audit.of(Books.withBen(), draft.plan()).stream().map(Finding::where).toList();
    assertEquals(List.of("form tub-a unit 1", "form tub-b unit 1"), where);
  }

  @Test
  void thereAreNoMoreUnitsThanTheBookHas() {
    assertBreaks(5, "run L1-1", BOOK, holding(new FormHold("tub-a", List.of(2)), TUB_B));
  }

  @Test
  void everyFormOfTheMouldIsHeld() {
    assertBreaks(5, "run L1-1", BOOK, holding(TUB_A));
  }

  @Test
  void noFormIsHeldThatTheMouldDoesNotNeed() {
    assertBreaks(5, BOOK, holding(TUB_A, TUB_B, new FormHold("tub-c", List.of(1))));
    assertBreaks(5, BOOK, holding(TUB_A, TUB_B, new FormHold("tub-c", List.of())));
  }

  @Test
  void noMoreUnitsAreHeldThanTheMouldNeeds() {
    Book book = Books.withTwoTubs();
    assertBreaks(5, "run L4-1", book, with("L4", new FormHold("tub-a", List.of(1, 2)), TUB_B));
  }

  @Test
  void eachCastingHoldsUnitsOfItsOwn() {
    Book book = Books.withTwoTubs();
    PlanDraft draft =
        TwoAtOnce.asOneRun()
            .run("L1", run -> Altered.of(run, "forms", List.of(twice("tub-a"), both("tub-b"))));
    assertBreaks(5, "run L1-1", book, draft);
  }

  @Test
  void aMouldOfTwoAlikeNeedsTwoOfThem() {
    List<FormUse> twoTubs = List.of(new FormUse("tub-a", 2), new FormUse("tub-b", 1));
    Book book =
        BookWith.moulds(
            Books.withTwoTubs(), Altered.of(SampleBook.planterDeep(), "forms", twoTubs));
    assertBreaks(5, book, sample());
    assertValid(book, holdingBothOfTubA());
  }

  @Test
  void aFormTheMouldNamesTwiceIsNeededTwice() {
    FormUse tubA = new FormUse("tub-a", 1);
    List<FormUse> thrice = List.of(tubA, new FormUse("tub-b", 1), tubA);
    Book book =
        BookWith.moulds(Books.withTwoTubs(), Altered.of(SampleBook.planterDeep(), "forms", thrice));
    assertBreaks(5, book, sample());
    assertValid(book, holdingBothOfTubA());
  }

  private static PlanDraft holdingBothOfTubA() {
    PlanDraft draft = sample();
    for (String lot : List.of("L1", "L2", "L3", "L4")) {
      draft.run(lot, run -> Altered.of(run, "forms", List.of(both("tub-a"), TUB_B)));
    }
    return draft;
  }

  private static FormHold twice(String form) {
    return new FormHold(form, List.of(1, 1));
  }

  private static FormHold both(String form) {
    return new FormHold(form, List.of(1, 2));
  }

  private static PlanDraft secondUnit(PlanDraft draft) {
    List<FormHold> second =
        List.of(new FormHold("tub-a", List.of(2)), new FormHold("tub-b", List.of(2)));
    return draft.run("L2", run -> Altered.of(run, "forms", second));
  }

  private static PlanDraft holding(FormHold... forms) {
    return with("L1", forms);
  }

  private static PlanDraft with(String lot, FormHold... forms) {
    return sample().run(lot, run -> Altered.of(run, "forms", List.of(forms)));
  }
}
