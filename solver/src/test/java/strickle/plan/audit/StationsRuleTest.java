package strickle.plan.audit;

import static strickle.plan.SamplePlan.spell;
import static strickle.plan.audit.Reading.BOOK;
import static strickle.plan.audit.Reading.assertBreaks;
import static strickle.plan.audit.Reading.assertValid;
import static strickle.plan.audit.Reading.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Person;
import strickle.book.Piece;
import strickle.book.RestsOn;
import strickle.book.SampleBook;
import strickle.book.Step;

/** Rule 6. */
class StationsRuleTest {

  @Test
  void aRunTakesNoMorePlacesThanThereAre() {
    assertValid(route(BOOK, 2, onRack(24)), sample());
    assertBreaks(6, route(BOOK, 2, onRack(25)), sample());
  }

  @Test
  void everyPieceOfARunTakesPlaces() {
    assertValid(rack(Books.withTwoTubs(), 2), TwoAtOnce.asOneRun());
    assertBreaks(6, "station rack", rack(Books.withTwoTubs(), 1), TwoAtOnce.asOneRun());
  }

  @Test
  void aRunKeepsItsPlacesToTheStartOfItsNextStep() {
    // Lots 1 to 3 lie there together from Saturday on; lot 4 comes on Monday at 9:08, before lot 1
    // leaves at 9:16.
    assertValid(restingBeforeTheCoat(4), sample());
    assertBreaks(6, "station rack", restingBeforeTheCoat(3), sample());
  }

  @Test
  void thePlacesAreFreeTheMinuteTheNextStepStarts() {
    // Ben sands lot 4 from 9:16 on, when Ana gives lot 1 its first coat.
    PlanDraft draft =
        sample().spells("L4-1/step-1", spell("04-12T09:16", 8)).person("L4-1/step-1", "ben");
    Book book = BookWith.people(restingBeforeTheCoat(3), people());
    assertValid(book, draft.settled());
  }

  @Test
  void afterItsLastStepARunKeepsItsPlacesUntilItIsReady() {
    // Lot 2 gets its second coat on Thursday at 13:09 and is ready on Friday at 13:18; lot 3 gets
    // its first coat on Friday at 9:00.
    assertValid(restingToTheEnd(2, 24), sample());
    assertBreaks(6, "station rack", restingToTheEnd(1, 24), sample());
  }

  @Test
  void thePlacesAreFreeTheMinuteARunIsReady() {
    // 19.7 h after Thursday 13:18 it is Friday 9:00.
    assertValid(restingToTheEnd(1, 19.7), sample().settled(Follow.SAMPLE.withFinalDry(1182)));
    assertBreaks(
        6,
        "station rack",
        restingToTheEnd(1, 19.71),
        sample().settled(Follow.SAMPLE.withFinalDry(1183)));
  }

  private static Person[] people() {
    return Books.withBen().people().toArray(Person[]::new);
  }

  private static Book restingBeforeTheCoat(int places) {
    return rack(route(route(BOOK, 1, onRack(1)), 2, Optional.empty()), places);
  }

  private static Book rack(Book book, int places) {
    return BookWith.stations(book, Altered.of(SampleBook.rack(), "places", places));
  }

  private static Optional<RestsOn> onRack(int placesEach) {
    return Optional.of(new RestsOn("rack", placesEach));
  }

  private static Book restingToTheEnd(int places, double finalDryHours) {
    Book resting = rack(route(BOOK, 3, onRack(1)), places);
    Piece piece = Altered.of(resting.pieces().get(0), "finalDryHours", finalDryHours);
    return BookWith.pieces(resting, piece);
  }

  private static Book route(Book book, int number, Optional<RestsOn> rests) {
    Piece piece = book.pieces().get(0);
    List<Step> route = new ArrayList<>(piece.route());
    route.set(number - 1, Altered.of(route.get(number - 1), "restsOn", rests));
    return BookWith.pieces(book, Altered.of(piece, "route", route));
  }
}
