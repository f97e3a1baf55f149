package strickle.price;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Form;
import strickle.book.FormUse;
import strickle.book.Mould;
import strickle.book.Piece;
import strickle.book.SampleBook;
import strickle.book.Step;
import strickle.book.Studio;
import strickle.book.Use;

/** The cost of a piece, held against published and derived figures of cost accounting. */
class UnitCostTest {

  private static final BigDecimal AN_HOUR = new BigDecimal(60);
  private static final List<FormUse> TUB = List.of(new FormUse("tub-a", 1));

  private static void assertClose(String expected, BigDecimal actual) {
    BigDecimal figure = new BigDecimal(expected);
    assertEquals(figure, actual.setScale(figure.scale(), RoundingMode.HALF_UP));
  }

  private static UnitCost cost(Book book) {
    return UnitCost.of(book, book.pieces().getFirst(), AN_HOUR);
  }

  private static BigDecimal line(String what, UnitCost cost) {
    List<ExactLine> named = cost.lines().stream().filter(l -> l.what().equals(what)).toList();
    assertEquals(1, named.size(), "lines for " + what);
    return named.getFirst().amount();
  }

  private static Mould mould(int cavities, List<FormUse> forms, List<Use> consumes) {
    Mould m = SampleBook.planterDeep();
    return new Mould(
        m.id(),
        m.name(),
        forms,
        cavities,
        OptionalDouble.of(1180),
        m.shape(),
        m.mesh(),
        m.wastePercent(),
        m.prepMinutes(),
        m.pourMinutes(),
        m.demouldMinutes(),
        m.setHours(),
        m.setAtMostHours(),
        m.core(),
        consumes);
  }

  private static Piece piece(double goodPercent, List<Step> route, List<Use> packing) {
    Piece p = SampleBook.planterSlate();
    return new Piece(
        p.id(),
        p.name(),
        p.mould(),
        p.mix(),
        goodPercent,
        p.onHand(),
        p.typicalRun(),
        route,
        p.finalDryHours(),
        packing,
        p.price(),
        p.leftoverValue());
  }

  private static Book book(Piece piece, Mould mould, Form... more) {
    List<Form> forms = new ArrayList<>(SampleBook.example().forms());
    forms.addAll(List.of(more));
    Book book = BookWith.forms(SampleBook.example(), forms.toArray(Form[]::new));
    return BookWith.moulds(BookWith.pieces(book, piece), mould);
  }

  private static Book press(String costEach, int lifeCastings) {
    Form form = new Form("press", "press", 1, new BigDecimal(costEach), lifeCastings);
    Mould mould = mould(1, List.of(new FormUse("press", 1)), List.of());
    return book(piece(100, List.of(), List.of()), mould, form);
  }

  // Source: OpenStax, Principles of Accounting 1, m67897: units of production, 48 000 over 960 000
  // units is 0.05 a unit, 9 000 for 180 000; the small press 1 800 and 2 700 for 20 000 and 30 000.
  @ParameterizedTest
  @CsvSource({
    "48000,960000,1,0.05",
    "48000,960000,180000,9000",
    "9000,100000,20000,1800",
    "9000,100000,30000,2700"
  })
  void wearIsUnitsOfProductionWithCastingsAsUnits(
      String costEach, int lifeCastings, String castings, String expected) {
    BigDecimal wear = cost(press(costEach, lifeCastings)).of(CostKind.WEAR);

    assertClose(expected, wear.multiply(new BigDecimal(castings)));
  }

  // Source: the same module: straight line gives 9 600 for each of five years, whatever is made.
  // Wear by the casting gives the same over a life of even years, and less in a slack year.
  @Test
  void wearFollowsTheCastingsAndNotTheYears() {
    BigDecimal wear = cost(press("48000", 960_000)).of(CostKind.WEAR);

    assertClose("9600", wear.multiply(new BigDecimal(960_000 / 5)));
    assertClose("5000", wear.multiply(new BigDecimal(100_000)));
  }

  @Test
  void wearCountsEveryUnitOfAFormAndIsSharedByTheCavities() {
    Form ring = new Form("ring", "ring", 4, new BigDecimal("6"), 100);
    Mould mould = mould(2, List.of(new FormUse("ring", 3)), List.of());
    Book book = book(piece(80, List.of(), List.of()), mould, ring);

    // 3 x 6 / 100 = 0.18 a casting, 0.09 a piece, 0.1125 a good piece.
    assertClose("0.112500", line("ring", cost(book)));
  }

  @Test
  void aFormThatAMouldListsTwiceHasOneLine() {
    List<FormUse> twice = List.of(new FormUse("tub-a", 1), new FormUse("tub-a", 2));
    Book book = book(piece(100, List.of(), List.of()), mould(1, twice, List.of()));

    // 3 x 14.50 / 150
    assertClose("0.290000", line("deep tub", cost(book)));
  }

  // Derived: cost per good piece = cost per piece started / good share; 6.00 / 0.92 = 6.5217.
  @Test
  void theGoodPiecesPayForTheOthers() {
    // 375 g of oil at 8.00 for 500 g is 6.00.
    Mould mould = mould(1, TUB, List.of(SampleBook.use("release-oil", "375")));
    Book book = book(piece(92, List.of(), List.of()), mould);

    assertClose("6.5217", line("release oil", cost(book)));
  }

  @Test
  void packingIsPaidForGoodPiecesOnly() {
    List<Use> boxes = List.of(SampleBook.use("box-m", "2"));
    Book book = book(piece(50, List.of(), boxes), mould(1, TUB, List.of()));

    assertClose("1.680000", line("medium box", cost(book)));
  }

  @Test
  void aMaterialUsedInSeveralPlacesHasOneLine() {
    // 10 ml to a casting of 2 pieces, 30 ml to a piece on its route: 35 ml; 70 ml to a good piece
    // at 50 %; 4 ml more at the packing; 29.00 for 946 ml.
    List<Step> route = SampleBook.planterSlate().route();
    Mould mould = mould(2, TUB, List.of(SampleBook.use("sealer", "10")));
    Book book = book(piece(50, route, List.of(SampleBook.use("sealer", "4"))), mould);

    // 74 x 29 / 946 = 2.268499
    assertClose("2.268499", line("water-based sealer", cost(book)));
  }

  // Source: OpenStax, Principles of Accounting 2, m68004 and m68005: material 700, labour 66,
  // overhead at 2.5 for each unit of labour cost 165; the job costs 931.
  @Test
  void aJobCostsItsMaterialItsLabourAndItsShareOfOverhead() {
    Studio s = SampleBook.studio();
    Studio studio =
        new Studio(
            s.name(),
            s.currency(),
            s.timeZone(),
            new BigDecimal("66"),
            new BigDecimal("1650"),
            new BigDecimal("10"),
            s.batchLimitGrams(),
            s.climate());
    Book book = BookWith.studio(SampleBook.example(), studio);
    UnitCost cost = cost(book);

    assertClose("66.0000", cost.of(CostKind.LABOUR));
    assertClose("165.0000", cost.of(CostKind.OVERHEAD));
    BigDecimal job = cost.full().subtract(cost.of(CostKind.MATERIAL));
    assertClose("931.0000", job.subtract(cost.of(CostKind.WEAR)).add(new BigDecimal("700")));
  }

  // Source: the same module: a budget of 250 000 over a base of 100 000 is a rate of 2.50.
  @Test
  void theRateOfOverheadIsItsBudgetOverItsBase() {
    HourRates rates =
        new HourRates(BigDecimal.ONE, new BigDecimal("250000"), new BigDecimal("100000"));
    assertClose("2.50", rates.overhead(AN_HOUR));
    assertClose("165.00", rates.overhead(AN_HOUR).multiply(new BigDecimal("66")));
  }

  @Test
  void aLargerRunSharesItsMixingWashingAndSettingUp() {
    StandardMinutes minutes = new StandardMinutes(SampleBook.example());

    // One casting: 6 + 12 + 5 + 8 + 8 + (3 + 5) + (5 + 4) + (5 + 4) = 65; each more 6 + 5 + 8 + 13.
    assertClose("70.6522", minutes.perGoodPiece(runOf(1)).orElseThrow());
    assertClose("52.7174", minutes.perGoodPiece(runOf(2)).orElseThrow());
    assertClose("43.7500", minutes.perGoodPiece(runOf(4)).orElseThrow());
  }

  private static Piece runOf(int castings) {
    Piece p = SampleBook.planterSlate();
    return new Piece(
        p.id(),
        p.name(),
        p.mould(),
        p.mix(),
        p.goodPercent(),
        p.onHand(),
        castings,
        p.route(),
        p.finalDryHours(),
        p.packing(),
        Optional.empty(),
        Optional.empty());
  }
}
