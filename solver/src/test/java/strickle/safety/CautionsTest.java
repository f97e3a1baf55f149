package strickle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import strickle.book.Book;
import strickle.book.Draft;
import strickle.book.Material;
import strickle.book.Mould;
import strickle.book.Pack;
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
  void loadsNearWhatMayBeLiftedFromTheFloorAreToldAndNoLighterOnes() {
    // 22.7 kg is the pack, 9 kg the batch limit, and 8.82 kg may be lifted from the floor; the
    // filled mould weighs 2.6 kg, a pack of pigment 1 kg.
    assertEquals(
        List.of(
            "a full pack of white blend, 22.7 kg (50.0 lb), 2.6 x the limit from the floor",
            "a lot at the batch limit, 9.0 kg (19.8 lb), 1.02 x the limit from the floor, over it"),
        where(Cautions.of(SampleBook.example()), Caution.LIFTING));
  }

  @Test
  void aFilledMouldIsToldOfWhenItIsNearTheLimit() {
    // Wet mix of 2.4943 kg at 1180 ml by the page on the files, and a core of 140 g; near is 0.8 of
    // 8.82 kg, 7.06 kg.
    double ml = 1180 * (Cautions.NEAR * Lift.fromTheFloor().limitKg() - 0.14) / 2.4943;
    assertTrue(lifts(ml * 1.01, "deep planter, filled"));
    assertFalse(lifts(ml * 0.99, "deep planter, filled"));
  }

  @Test
  void aPieceIsToldOfWhenItIsHeavyItself() {
    // 1180 ml and 2 % of waste are 2.4943 kg, by the page on the files; near is 7.06 kg.
    double ml = 1180 * Cautions.NEAR * Lift.fromTheFloor().limitKg() / (2.4943 / 1.02);
    assertTrue(lifts(ml * 1.01, "a piece of deep planter, slate, about"));
    assertFalse(lifts(ml * 0.99, "a piece of deep planter, slate, about"));
  }

  @Test
  void noLoadOverTheLimitIsLeftOutAndTheOthersAreCounted() {
    // 9 packs over 8.82 kg beside the batch limit; 4 packs of 8 kg are near it.
    List<Material> materials = new ArrayList<>(SampleBook.example().materials());
    IntStream.range(0, 8).forEach(i -> materials.add(pack("over " + i, 20_000 + i)));
    IntStream.range(0, 4).forEach(i -> materials.add(pack("near " + i, 8000)));
    Book book = Draft.of(SampleBook.example()).materials(materials.toArray(Material[]::new)).book();
    List<String> loads = where(Cautions.of(book), Caution.LIFTING);
    assertEquals(11, loads.size(), loads.toString());
    assertEquals("4 more near the limit", loads.get(10));
    assertTrue(loads.get(9).startsWith("a lot at the batch limit"), loads.toString());
  }

  private static Material pack(String name, int grams) {
    Material binder = SampleBook.example().material("white-blend");
    return new Material(
        name.replace(' ', '-'),
        name,
        binder.kind(),
        binder.unit(),
        binder.relativeDensity(),
        binder.cementPercent(),
        new Pack(BigDecimal.valueOf(grams), binder.pack().price()),
        binder.onHand(),
        binder.leadDays());
  }

  @Test
  void aPlanTellsOfThePacksItWeighsFrom() {
    List<String> loads = where(Cautions.of(SampleBook.example(), plan()), Caution.LIFTING);
    assertTrue(
        loads.contains(
            "a full pack of white blend, 22.7 kg (50.0 lb), 2.6 x the limit from the floor"),
        loads.toString());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "wipe with oil",
        "rub in the wax",
        "coat with epoxy resin",
        "spray with acrylic",
        "shellac",
        "polyurethane top coat",
        "wipe off excess sealer",
        "oil the form",
        "glue the felt"
      })
  void everyCoatThatIsNamedIsTold(String words) {
    List<Shown> shown = Cautions.of(withFirstStep(words));
    assertTrue(where(shown, Caution.COATS).contains(words));
    assertTrue(where(shown, Caution.VENTILATION).contains(words));
  }

  @ParameterizedTest
  @ValueSource(strings = {"wet sand the rim", "pack and seal the carton", "knock off the flash"})
  void whatIsNoCoatIsNotTold(String words) {
    assertFalse(where(Cautions.of(withFirstStep(words)), Caution.COATS).contains(words));
  }

  private static boolean lifts(double volumeMl, String what) {
    Mould m = SampleBook.example().mould("planter-deep");
    Mould mould =
        new Mould(
            m.id(),
            m.name(),
            m.forms(),
            m.cavities(),
            OptionalDouble.of(volumeMl),
            m.shape(),
            m.mesh(),
            m.wastePercent(),
            m.prepMinutes(),
            m.pourMinutes(),
            m.demouldMinutes(),
            m.setHours(),
            m.setAtMostHours(),
            m.core(),
            m.consumes());
    Book book = Draft.of(SampleBook.example()).moulds(mould).book();
    return where(Cautions.of(book), Caution.LIFTING).stream().anyMatch(load -> load.contains(what));
  }

  @Test
  void aPlanTellsOfLiftingOnlyWhereALoadIsHeavy() {
    // The ballast of a core is 7.872 kg by the page on the files: over 0.8 of 8.82 kg.
    List<String> loads = where(Cautions.of(SampleBook.example(), plan()), Caution.LIFTING);
    assertTrue(
        loads.contains(
            "the ballast of a deep planter, 7.9 kg (17.4 lb), 0.9 x the limit from the floor"),
        loads.toString());
    assertTrue(loads.stream().noneMatch(load -> load.contains("filled")), loads.toString());
    assertTrue(has(Cautions.of(SampleBook.example(), plan()), Caution.WET_CEMENT));
  }

  @Test
  void aPlanTellsOfEachCautionOnce() {
    List<Caution> each =
        Cautions.of(SampleBook.example(), plan()).stream().map(Shown::caution).toList();
    assertEquals(each.stream().distinct().toList(), each);
  }

  @ParameterizedTest
  @CsvSource({
    "'fruit bowl, slate', true",
    "tealight cup, true",
    "deep planter, false",
    "set of six coasters, true",
    "two mugs, true",
    "bowls, true",
    "egg cups, true",
    "serving dishes, true",
    "water vessel, true",
    "egg holder, true",
    "candle holder, false",
    "cakes server, true",
    "trays, true",
    "soap dish, false",
    "ring dish, false",
    "trinket tray, false",
    "pencil jar, false",
    "cake stand, true",
    "butter dish, true",
    "salt cellar, true",
    "cutting board, true",
    "carafe, true",
    "pen stand, false",
    "stand, false",
    "bookend, false"
  })
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
    "DRY_DUST, 'NIOSH recommends 50 at most over up to 10 hours'",
    // It is no work of a program to estimate what somebody breathes.
    "DRY_DUST, 'How much you breathe cannot be worked out'",
    "SANDING, '50 µg/m³ of respirable quartz over 8 hours, action from 25 on'",
    // The equation's own limits, second-hand: no unsteady load.
    "LIFTING, 'not steady: stay well below'",
    // ccohs.org/oshanswers/ergonomics/niosh/calculating_rwl.html.
    "LIFTING, '23 kg (51 lb)'",
    // cemnet.com/News/story/145340/chromium-vi-in-cement.html.
    "CHROMATE, 'no more than 2 ppm'",
    "CHROMATE, 'shelf life'",
    // 21 CFR 175.300(a).
    "FOOD, 'a continuous film over metal'",
    "FOOD, 'a functional barrier on a suitable substrate'"
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
