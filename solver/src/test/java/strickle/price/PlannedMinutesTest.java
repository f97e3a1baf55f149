package strickle.price;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.FormUse;
import strickle.book.Mould;
import strickle.book.Piece;
import strickle.book.SampleBook;
import strickle.plan.Lot;
import strickle.plan.Plan;
import strickle.plan.Run;
import strickle.plan.Spell;
import strickle.plan.Task;
import strickle.plan.TaskKind;
import strickle.plan.Totals;
import strickle.price.CostComparison.Reason;

/** A planter and dishes of half its volume, poured from one lot; all recomputed by hand. */
class PlannedMinutesTest {

  private static final OffsetDateTime NINE = OffsetDateTime.parse("2027-04-05T09:00-05:00");

  private static final Book BOOK = book();
  private static final Piece PLANTER = BOOK.piece("planter-slate");
  private static final Piece DISH = BOOK.piece("dish");

  private static Book book() {
    Book book = SampleBook.example();
    Mould p = SampleBook.planterDeep();
    Mould dish =
        new Mould(
            "dish",
            "dish",
            List.of(new FormUse("tub-a", 1)),
            1,
            OptionalDouble.of(590),
            List.of(),
            Optional.empty(),
            p.wastePercent(),
            2,
            3,
            4,
            20,
            OptionalDouble.empty(),
            Optional.empty(),
            List.of());
    Piece piece =
        new Piece(
            "dish",
            "dish",
            "dish",
            "slate",
            100,
            0,
            1,
            List.of(),
            0,
            List.of(),
            Optional.empty(),
            Optional.empty());
    return BookWith.pieces(BookWith.moulds(book, p, dish), SampleBook.planterSlate(), piece);
  }

  private static Run run(String id, String piece, int castings, int scrapped) {
    return new Run(id, piece, castings, List.of(), OptionalLong.empty(), scrapped);
  }

  private static List<Spell> minutes(int minutes) {
    return List.of(new Spell(NINE, NINE.plusMinutes(minutes)));
  }

  private static Task pour(int minutes) {
    return new Task(
        "L1/pour",
        TaskKind.POUR,
        "L1",
        Optional.empty(),
        OptionalInt.empty(),
        "ana",
        minutes(minutes));
  }

  private static Task demould(String run, int minutes) {
    return new Task(
        run + "/demould",
        TaskKind.DEMOULD,
        "L1",
        Optional.of(run),
        OptionalInt.empty(),
        "ana",
        minutes(minutes));
  }

  private static Task step(int number, int minutes) {
    return new Task(
        "L1-1/step-" + number,
        TaskKind.STEP,
        "L1",
        Optional.of("L1-1"),
        OptionalInt.of(number),
        "ana",
        minutes(minutes));
  }

  /** One planter and two dishes: 20 of mixing and washing, 11 and 2 x 5 of their own. */
  private static Plan plan(int pourMinutes, int scrapped) {
    Lot lot =
        new Lot(
            "L1",
            "slate",
            List.of(run("L1-1", "planter-slate", 1, 0), run("L1-2", "dish", 2, scrapped)),
            List.of(),
            4988.6);
    List<Task> tasks =
        new ArrayList<>(List.of(pour(pourMinutes), demould("L1-1", 8), demould("L1-2", 8)));
    tasks.addAll(List.of(step(1, 8), step(2, 9), step(3, 9)));
    Totals totals = new Totals(BigDecimal.ZERO, 0, 0, 1, NINE);
    return new Plan(
        BOOK.studio().name(),
        NINE,
        0,
        List.of(lot),
        tasks,
        List.of(),
        List.of(),
        List.of(),
        totals);
  }

  private static void assertMinutes(String expected, Plan plan, Piece piece) {
    BigDecimal minutes = PlannedMinutes.of(BOOK, plan).perGoodPiece(piece).orElseThrow();
    assertEquals(new BigDecimal(expected), minutes.setScale(4, RoundingMode.HALF_UP));
  }

  @Test
  void mixingAndWashingUpIsSplitByWetMass() {
    // Two dishes weigh what one planter weighs: 10 of the 20 minutes each.
    // 10 + 6 + 5 + 8 + 8 + 9 + 9 = 55, / 0.92
    assertMinutes("59.7826", plan(41, 0), PLANTER);
    // 10 + 2 x (2 + 3 + 4) = 28 for two
    assertMinutes("14.0000", plan(41, 0), DISH);
  }

  @Test
  void whatAPourReallyTookIsSplitTheSameWay() {
    // 6 minutes more: 3 each.
    assertMinutes("63.0435", plan(47, 0), PLANTER);
    assertMinutes("15.5000", plan(47, 0), DISH);
  }

  @Test
  void theGoodPiecesThatAreLeftCarryTheWork() {
    assertMinutes("28.0000", plan(41, 1), DISH);
    assertMinutes("59.7826", plan(41, 1), PLANTER);
  }

  @Test
  void aPieceOfWhichNothingIsLeftHasNoCostAsPlanned() {
    assertEquals(Optional.empty(), PlannedMinutes.of(BOOK, plan(41, 2)).perGoodPiece(DISH));
  }

  private static PiecePrices priced(Plan plan, int piece) {
    PriceRequest request = new PriceRequest(BigDecimal.valueOf(30), BigDecimal.ZERO);
    return Pricing.planned(BOOK, request, plan).pieces().get(piece);
  }

  @Test
  void theReasonsAddUpToTheDifference() {
    for (Plan plan : List.of(plan(41, 0), plan(50, 0), plan(30, 1))) {
      for (int piece = 0; piece < 2; piece++) {
        CostComparison comparison = priced(plan, piece).comparison().orElseThrow();
        BigDecimal sum =
            comparison.reasons().stream()
                .map(Reason::amount)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        assertEquals(0, comparison.difference().compareTo(sum), comparison.toString());
      }
    }
  }

  @Test
  void theReasonsSayWhatIsOtherThanUsual() {
    CostComparison planter = priced(plan(41, 0), 0).comparison().orElseThrow();
    // As planned 10 / 0.92, by the typical run 20 / 1.84: no difference in mixing; but setting up
    // is 13 / 0.92 against 13 / 1.84.
    assertEquals(
        List.of("set up once for 1 casting, not once for every 2"),
        planter.reasons().stream().map(Reason::why).toList());
    CostComparison dish = priced(plan(41, 0), 1).comparison().orElseThrow();
    // 10 / 2 against 20.
    assertEquals(
        List.of(
            "mixed once for 2 castings, not once for each; 1 lot shared with other pieces, which"
                + " carry their part by wet mass"),
        dish.reasons().stream().map(Reason::why).toList());
    assertEquals(new BigDecimal("-15.0000"), dish.reasons().getFirst().minutes());
  }

  @Test
  void tasksThatTookLongerAndPiecesThatAreLostAreAmongTheReasons() {
    List<String> reasons =
        priced(plan(47, 1), 1).comparison().orElseThrow().reasons().stream()
            .map(Reason::why)
            .toList();
    assertEquals("as much work on fewer good pieces; 1 more lost than usual", reasons.getFirst());
    assertTrue(reasons.getLast().startsWith("tasks that are done took longer"), reasons.toString());
  }

  @Test
  void aComparisonStandsBesideTheCostByTheTypicalRun() {
    PiecePrices planter = priced(plan(41, 0), 0);
    CostComparison comparison = planter.comparison().orElseThrow();
    assertEquals(new BigDecimal("29.1801"), comparison.standardFull());
    assertEquals(new BigDecimal("52.7174"), comparison.standardMinutes());
    // 13 / 1.84 = 7.0652 minutes at (22 + 310/70) / 60 = 0.440476
    assertEquals(new BigDecimal("3.1121"), comparison.difference());
    assertEquals(
        PriceBasis.PLANNED,
        Pricing.planned(BOOK, new PriceRequest(BigDecimal.ONE, BigDecimal.ZERO), plan(41, 0))
            .basis());
  }
}
