package strickle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import strickle.book.Book;
import strickle.book.Draft;
import strickle.book.Piece;
import strickle.book.SampleBook;
import strickle.book.Step;
import strickle.plan.Effort;
import strickle.plan.Plan;
import strickle.plan.PlanRequest;
import strickle.plan.Planning;

class CautionsTest {

  private static final OffsetDateTime FROM = OffsetDateTime.parse("2027-04-05T00:00-05:00");

  @Test
  void aStudioIsToldOfEachOnceWithItsActs() {
    List<Shown> shown = Cautions.of(SampleBook.example());
    List<Caution> each = shown.stream().map(Shown::caution).toList();
    assertEquals(each.stream().distinct().toList(), each);
    assertEquals(List.of("pour slate"), where(shown, Caution.WET_CEMENT));
    assertEquals(
        List.of("weigh white blend", "weigh iron oxide black"), where(shown, Caution.DRY_DUST));
    assertEquals(List.of("first seal coat", "second seal coat"), where(shown, Caution.COATS));
    assertEquals(List.of("first seal coat", "second seal coat"), where(shown, Caution.VENTILATION));
    assertEquals(List.of("white blend"), where(shown, Caution.CHROMATE));
  }

  @Test
  void sandingWetIsNoDryDust() {
    assertFalse(has(Cautions.of(SampleBook.example()), Caution.SANDING));
    List<Shown> shown = Cautions.of(withFirstStep("sand the rim"));
    assertEquals(List.of("sand the rim"), where(shown, Caution.SANDING));
  }

  @Test
  void theHeaviestLoadsOfAStudioAreFullPacksLotsAndFilledMoulds() {
    // 22.7 kg is the pack, 9 kg the batch limit; 1180 ml, 2 % waste, and a core of 140 g: 2.5 kg of
    // wet mix by the page on the files, and the core.
    List<String> loads = where(Cautions.of(SampleBook.example()), Caution.LIFTING);
    assertEquals("a full pack of white blend, 22.7 kg (50.0 lb)", loads.get(0));
    assertEquals("a lot at the batch limit, 9.0 kg (19.8 lb)", loads.get(1));
    assertEquals("a deep planter, filled, 2.6 kg (5.8 lb)", loads.get(2));
  }

  @Test
  void aPlanTellsOfLiftingOnlyWhereALoadIsHeavy() {
    assertFalse(has(Cautions.of(SampleBook.example(), plan()), Caution.LIFTING));
    assertTrue(has(Cautions.of(SampleBook.example(), plan()), Caution.WET_CEMENT));
  }

  @ParameterizedTest
  @CsvSource({"'fruit bowl, slate', true", "tealight cup, true", "deep planter, false"})
  void foodIsToldWhereANameSoundsLikeIt(String name, boolean told) {
    assertEquals(told, has(Cautions.of(named(name)), Caution.FOOD));
  }

  @ParameterizedTest
  @EnumSource(Caution.class)
  void everyCautionSaysWhatToDoWhyAndWhereItIsFrom(Caution caution) {
    assertFalse(caution.brief().endsWith("."));
    assertTrue(caution.more().endsWith("."));
    assertFalse(caution.source().isBlank());
    assertFalse(caution.title().isBlank());
  }

  @ParameterizedTest
  @CsvSource({
    // OSHA guidance 3351.
    "WET_CEMENT, 'caustic'",
    "WET_CEMENT, 'traces of chromate'",
    "WET_CEMENT, 'a soap that is neutral or slightly acid'",
    // HSE CIS26(rev2), as quoted at designingbuildings.co.uk/wiki/Cement_dermatitis.
    "WET_CEMENT, '5 to 10 % of construction workers'",
    // cpwrconstructionsolutions.org/hazard/2463/silica.html; 50 and 25 of OSHA also second-hand.
    "DRY_DUST, '50 µg/m³ of respirable quartz over 8 hours, action from 25 on'",
    "DRY_DUST, 'NIOSH recommends 50 at most'",
    // ccohs.org/oshanswers/ergonomics/niosh/calculating_rwl.html.
    "LIFTING, '23 kg (51 lb)'",
    // cemnet.com/News/story/145340/chromium-vi-in-cement.html.
    "CHROMATE, 'no more than 2 ppm'",
    "CHROMATE, 'shelf life'",
    // 21 CFR 175.300(a).
    "FOOD, 'a continuous film over metal'"
  })
  void whatWasPublishedIsSaid(Caution caution, String words) {
    String all = caution.brief() + " " + caution.more() + " " + caution.source();
    assertTrue(all.contains(words), all);
  }

  private static Plan plan() {
    PlanRequest request = new PlanRequest(FROM, Effort.ofSchedules(1), 0);
    return Planning.of(SampleBook.example(), request, progress -> {}).run();
  }

  private static Book withFirstStep(String words) {
    Piece piece = SampleBook.planterSlate();
    Step first = piece.route().get(0);
    Step other = new Step(words, 3, 5, first.after(), List.of(), List.of(), Optional.empty());
    return book(piece.name(), Stream.concat(Stream.of(other), piece.route().stream().skip(1)));
  }

  private static Book named(String name) {
    return book(name, SampleBook.planterSlate().route().stream());
  }

  private static Book book(String name, Stream<Step> route) {
    Piece p = SampleBook.planterSlate();
    Piece piece =
        new Piece(
            p.id(),
            name,
            p.mould(),
            p.mix(),
            p.goodPercent(),
            p.onHand(),
            p.typicalRun(),
            route.toList(),
            p.finalDryHours(),
            p.packing(),
            p.price(),
            p.leftoverValue());
    return Draft.of(SampleBook.example()).pieces(piece).book();
  }

  private static boolean has(List<Shown> shown, Caution caution) {
    return shown.stream().anyMatch(one -> one.caution() == caution);
  }

  private static List<String> where(List<Shown> shown, Caution caution) {
    return shown.stream().filter(one -> one.caution() == caution).findFirst().orElseThrow().where();
  }
}
