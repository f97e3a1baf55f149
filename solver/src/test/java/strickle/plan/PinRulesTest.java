package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static strickle.plan.Studios.FRIDAY;
import static strickle.plan.Studios.MONDAY;
import static strickle.plan.Studios.TUESDAY;
import static strickle.plan.Studios.form;
import static strickle.plan.Studios.mix;
import static strickle.plan.Studios.mould;
import static strickle.plan.Studios.order;
import static strickle.plan.Studios.piece;
import static strickle.plan.Studios.pin;
import static strickle.plan.Studios.step;
import static strickle.plan.Studios.tiles;
import static strickle.plan.Studios.weekdays;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Draft;
import strickle.book.Fault;
import strickle.book.FormUse;
import strickle.book.Pin;
import strickle.book.RestsOn;
import strickle.book.SampleBook;
import strickle.book.Step;

/** A pour of one tile takes 35 minutes, of two 50, of five 95; five are all the mix lasts for. */
class PinRulesTest {

  private static final String DUE = "2027-04-30T12:00";

  /** Three trays and lids, ten tiles, ten lidded ones and ten white ones on order. */
  private static Book book(Pin... pins) {
    return Draft.of(tiles())
        .people(weekdays("ana"), weekdays("ben"))
        .forms(form("tray", 6), form("lid", 2))
        .moulds(mould("slab", "tray"), mould("box", "tray", "lid"))
        .mixes(mix("slate"), mix("white"))
        .pieces(
            piece("tile", "slab"),
            piece("lidded", "box"),
            Altered.of(piece("white-tile", "slab"), "mix", "white"))
        .orders(
            order("A", 10, DUE),
            SampleBook.order("B", "lidded", 10, DUE),
            SampleBook.order("C", "white-tile", 10, DUE))
        .pins(pins)
        .book();
  }

  private static List<Fault> faults(Book book) {
    return Planning.faults(book, Studios.FROM);
  }

  private static Fault only(Book book) {
    List<Fault> faults = faults(book);
    assertEquals(1, faults.size(), faults::toString);
    return faults.get(0);
  }

  @Test
  void pinsThatCanBeKeptAreNoFault() {
    assertEquals(
        List.of(),
        faults(
            book(
                pin("tile", 2, MONDAY + "09:00", "ana"),
                pin("lidded", 1, MONDAY + "09:00", "ana"),
                pin("tile", 1, MONDAY + "09:00", "ben"),
                pin("tile", 5, TUESDAY + "15:25", "ana"))));
  }

  @Test
  void moreThanTheOrdersNeedIsRefusedFromThePinOnThatPassesIt() {
    Book book =
        book(
            pin(5, MONDAY + "09:00"),
            pin(5, TUESDAY + "09:00"),
            pin(1, FRIDAY + "09:00"),
            pin("white-tile", 1, FRIDAY + "12:00", "ana"));
    assertEquals(
        new Fault(
            "$.pins[2].castings",
            "11 castings of \"tile\" pinned so far",
            "at most 10, all that the orders still need"),
        only(book));
  }

  @Test
  void piecesInStockNeedNoCastingsToPin() {
    Book book = Studios.piece(book(pin(4, MONDAY + "09:00")), "onHand", 7);
    assertEquals("at most 3, all that the orders still need", only(book).right());
  }

  @Test
  void aStartBeforeThePlanBeginsIsRefused() {
    Book book = book(pin(1, MONDAY + "09:00"), pin(1, MONDAY + "09:35"));
    List<Fault> faults = Planning.faults(book, OffsetDateTime.parse("2027-04-05T09:01-05:00"));
    assertEquals(
        List.of(
            new Fault(
                "$.pins[0].start",
                "2027-04-05T09:00",
                "2027-04-05T09:01 or later, when the plan begins")),
        faults);
  }

  @Test
  void aStartAtTheVeryBeginningIsKept() {
    Book book = book(pin(1, MONDAY + "09:30"));
    OffsetDateTime from = OffsetDateTime.parse("2027-04-05T09:30-05:00");
    assertEquals(List.of(), Planning.faults(book, from));
  }

  @Test
  void aPourThatDoesNotFitIntoOneOfThatDaysHoursIsRefused() {
    Fault fault = only(book(pin(5, MONDAY + "15:26")));
    assertEquals("$.pins[0].start", fault.path());
    assertEquals("2027-04-05T15:26 for a pour of 95 minutes", fault.found());
    assertEquals("a pour inside one of the hours of \"ana\" that day [09:00-17:00]", fault.right());
    assertEquals(List.of(), faults(book(pin(5, MONDAY + "15:25"))));
    assertEquals("$.pins[0].start", only(book(pin(1, MONDAY + "08:59"))).path());
    // A Saturday.
    assertEquals(
        "a pour inside one of the hours of \"ana\" that day []",
        only(book(pin(1, "2027-04-10T12:00"))).right());
  }

  @Test
  void aPourAcrossABreakIsRefused() {
    Book book =
        Draft.of(book(pin(1, MONDAY + "11:30"))).people(SampleBook.ana(), weekdays("ben")).book();
    assertEquals(
        "a pour inside one of the hours of \"ana\" that day [09:00-12:00, 13:00-17:00]",
        only(book).right());
  }

  @Test
  void moreThanCanBePouredWhileTheMixWorksIsRefused() {
    Fault fault = only(book(pin(6, MONDAY + "09:00")));
    assertEquals("$.pins[0].castings", fault.path());
    assertEquals("30 minutes to pour them", fault.found());
    assertEquals("at most 25, as long as the mix can be worked", fault.right());
  }

  @Test
  void moreThanTheBatchLimitIsRefused() {
    Fault fault = only(Studios.studio(book(pin(4, MONDAY + "09:00")), "batchLimitGrams", 3999.9));
    assertEquals("$.pins[0].castings", fault.path());
    assertEquals("4000 g of wet mix", fault.found());
    assertEquals("at most 3999.9 g, the batch limit", fault.right());
    Book enough = Studios.studio(book(pin(4, MONDAY + "09:00")), "batchLimitGrams", 4000.0);
    assertEquals(List.of(), faults(enough));
  }

  @Test
  void whatIsPinnedOfOneMomentCountsTogether() {
    Book book =
        book(
            pin("tile", 3, MONDAY + "09:00", "ana"),
            pin("tile", 3, MONDAY + "12:00", "ana"),
            pin("lidded", 3, MONDAY + "09:00", "ana"));
    assertEquals(
        List.of(
            new Fault(
                "$.pins[0].castings",
                "30 minutes to pour them",
                "at most 25, as long as the mix can be worked"),
            new Fault(
                "$.pins[0].castings", "3 of form \"lid\" at once", "at most 2, all there are")),
        faults(book));
  }

  @Test
  void moreFormsThanThereAreAreRefused() {
    Fault fault = only(book(pin("lidded", 3, MONDAY + "09:00", "ana")));
    assertEquals("$.pins[0].castings", fault.path());
    assertEquals("3 of form \"lid\" at once", fault.found());
    assertEquals("at most 2, all there are", fault.right());
  }

  @Test
  void moreThanTheStationHoldsIsRefused() {
    Step sanded =
        Altered.of(
            step(5, 0, OptionalDouble.empty()), "restsOn", Optional.of(new RestsOn("rack", 7)));
    Book book = Studios.piece(book(pin(4, MONDAY + "09:00")), "route", List.of(sanded));
    assertEquals(
        new Fault(
            "$.pins[0].castings",
            "28 places of station \"rack\" for step 1",
            "at most 24, all there are"),
        only(book));
    assertEquals(List.of(), faults(BookWith.pins(book, pin(3, MONDAY + "09:00"))));
  }

  @Test
  void twoMixesAtOneMomentByOnePersonAreRefused() {
    Book book =
        book(
            pin("tile", 1, MONDAY + "09:00", "ana"), pin("white-tile", 1, MONDAY + "09:00", "ana"));
    assertEquals(
        new Fault(
            "$.pins[1].piece",
            "\"white-tile\" of mix \"white\"",
            "a piece of mix \"slate\", which this person pours at that moment"),
        only(book));
  }

  @Test
  void onePiecePinnedTwiceAtOneMomentByOnePersonIsRefused() {
    Book book = book(pin(1, MONDAY + "09:00"), pin(2, MONDAY + "09:00"));
    assertEquals(
        new Fault(
            "$.pins[1].piece",
            "\"tile\" pinned twice at the same moment",
            "one pin with all its castings"),
        only(book));
  }

  @Test
  void aPourThatBeginsBeforeAnotherOfThePersonIsOverIsRefused() {
    Book book = book(pin(1, MONDAY + "09:34"), pin(1, MONDAY + "09:00"));
    assertEquals(
        new Fault(
            "$.pins[0].start",
            "2027-04-05T09:34",
            "a start when the pour pinned at 2027-04-05T09:00 is over"),
        only(book));
    assertEquals(List.of(), faults(book(pin(1, MONDAY + "09:35"), pin(1, MONDAY + "09:00"))));
  }

  @Test
  void allPinsThatCannotBeKeptAreToldAtOnceWithEverythingElse() {
    Book book =
        book(
            pin("tile", 11, MONDAY + "07:00", "ana"),
            pin("white-tile", 1, MONDAY + "07:00", "ana"),
            pin("white-tile", 1, MONDAY + "07:00", "ana"),
            pin("lidded", 9, TUESDAY + "16:00", "ben"));
    List<FormUse> forms = List.of(new FormUse("tray", 1), new FormUse("lid", 3));
    Book greedy =
        BookWith.moulds(
            book, book.moulds().get(0), Altered.of(book.moulds().get(1), "forms", forms));
    Book heavy = Studios.studio(greedy, "batchLimitGrams", 999.0);
    assertEquals(
        List.of(
            "$.moulds[1].forms[1].count",
            "$.pieces[0].mould",
            "$.pieces[1].mould",
            "$.pieces[2].mould",
            "$.pins[0].castings",
            "$.pins[1].piece",
            "$.pins[2].piece",
            "$.pins[2].piece",
            "$.pins[3].start",
            "$.pins[3].castings",
            "$.pins[3].castings",
            "$.pins[3].castings",
            "$.pins[3].castings"),
        faults(heavy).stream().map(Fault::path).toList());
  }
}
