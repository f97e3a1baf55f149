package strickle.price;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Channel;
import strickle.book.Demand;
import strickle.book.Fair;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Form;
import strickle.book.Material;
import strickle.book.Piece;
import strickle.book.SampleBook;
import strickle.book.Studio;
import strickle.book.Use;

/** A fair's table, held against published figures of a stall and of break-even. */
class FairTableTest {

  private static void assertClose(String expected, BigDecimal actual) {
    BigDecimal figure = new BigDecimal(expected);
    assertEquals(figure, actual.setScale(figure.scale(), RoundingMode.HALF_UP));
  }

  // Source: OpenStax, Principles of Accounting 2, m68116: 18 000 fixed, 100 a unit of which 20 are
  // variable: 225 units, 22 500 of revenue.
  @Test
  void breakEvenIsTheFixedCostOverWhatAUnitContributes() {
    BigDecimal units =
        BreakEven.units(new BigDecimal("18000"), new BigDecimal("100"), new BigDecimal("20"))
            .orElseThrow();

    assertClose("225", units);
    assertClose("22500", units.multiply(new BigDecimal("100")));
  }

  @Test
  void whatContributesNothingNeverBreaksEven() {
    assertEquals(Optional.empty(), BreakEven.units(BigDecimal.ONE, BigDecimal.TEN, BigDecimal.TEN));
  }

  /** A piece that costs 15.50 to box and nothing else, sold at 25 without fees. */
  private static Book stall(int sold) {
    BigDecimal none = BigDecimal.ZERO;
    Studio studio = Altered.of(SampleBook.studio(), "wagePerHour", none);
    Book book = SampleBook.example();
    Material[] materials =
        book.materials().stream()
            .map(
                m ->
                    Altered.of(
                        m, "pack", SampleBook.pack("1", m.id().equals("box-m") ? "15.5" : "0")))
            .toArray(Material[]::new);
    Form[] forms =
        book.forms().stream().map(f -> Altered.of(f, "costEach", none)).toArray(Form[]::new);
    Piece piece =
        Altered.of(SampleBook.planterSlate(), "packing", List.of(new Use("box-m", BigDecimal.ONE)));
    Channel channel = new Channel("own-table", "own table", none, none, none);
    Fair fair =
        Altered.of(
            Altered.of(SampleBook.springFair(), "tableCost", new BigDecimal("700")),
            "demand",
            List.of(
                new Demand("planter-slate", sold, sold, sold, Optional.of(new BigDecimal("25")))));
    Book free = BookWith.studio(book, Altered.of(studio, "overheadPerMonth", none));
    free = BookWith.forms(BookWith.materials(free, materials), forms);
    return BookWith.fairs(BookWith.channels(BookWith.pieces(free, piece), channel), fair);
  }

  private static FairTable table(Book book) {
    return FairTable.of(book, "spring-fair", new StandardMinutes(book));
  }

  // Source: OpenStax, Principles of Accounting 2, m68115: a stall with 300 of rent and 400 of pay,
  // sold at 25, 15.50 variable: 250 with 100 sold, 1 200 with 200. Derived: break-even at 73.68, so
  // 74.
  @ParameterizedTest
  @CsvSource({"100,250", "200,1200"})
  void aStallEarnsWhatItsPiecesContributeLessWhatItCosts(int sold, String profit) {
    FairTable table = table(stall(sold));

    assertClose(profit, table.profit());
    assertClose("73.68", table.breakEvenPieces().orElseThrow());
    BigDecimal whole = table.breakEvenPieces().orElseThrow().setScale(0, RoundingMode.CEILING);
    assertClose("74", whole);
    assertClose(Integer.toString(sold), table.expected());
    assertClose(sold == 100 ? "7.0000" : "3.5000", table.perPiece().orElseThrow());
  }

  @Test
  void theTableIsSpreadEvenlyOverThePiecesExpectedToSell() {
    // 61.844 - 29.180080 = 32.663920 each; 140 / 6 = 23.333333 of it for the table.
    FairTable table = table(SampleBook.example());

    assertClose("6.0000", table.expected());
    assertClose("23.3333", table.perPiece().orElseThrow());
    assertClose("9.3306", table.pieces().getFirst().withTable());
    assertClose("195.9835", table.beforeTable());
    assertClose("55.9835", table.profit());
    assertClose("384.0000", table.takings());
  }

  // With D = the nearest whole number to a triangular T, the mean of D is that of T when the
  // triangle is symmetric: then the halves lost and won are the same.
  @ParameterizedTest
  @CsvSource({"2,5,8,5", "0,1,2,1", "3,3,3,3", "0,0,0,0", "10,20,30,20"})
  void theExpectedNumberOfASymmetricTriangleIsItsMiddle(
      int low, int likely, int high, String expected) {
    Demand demand = new Demand("p", low, likely, high, Optional.empty());

    assertEquals(0, new BigDecimal(expected).compareTo(Exact.meant(ExpectedSales.of(demand))));
  }

  // By hand: F(0.5) = 0, F(1.5) = 0.25 / 6, F(2.5) = 2.25 / 6, F(3.5) = 1 - 0.25 / 3 for 1, 3, 4.
  @Test
  void theExpectedNumberAddsUpTheChancesOfEachPiece() {
    BigDecimal sum = ExpectedSales.of(new Demand("p", 1, 3, 4, Optional.empty()));
    double byHand = 1 + (1 - 0.25 / 6) + (1 - 2.25 / 6) + 0.25 / 3;

    assertEquals(byHand, sum.doubleValue(), 1e-12);
  }

  @Test
  void aPieceThatHasNoPriceAnywhereIsRefused() {
    Piece piece = Altered.of(SampleBook.planterSlate(), "price", Optional.empty());
    Demand demand = new Demand("planter-slate", 1, 2, 3, Optional.empty());
    Fair fair = Altered.of(SampleBook.springFair(), "demand", List.of(demand));
    Book book = BookWith.fairs(BookWith.pieces(SampleBook.example(), piece), fair);

    Faulty faulty = assertThrows(Faulty.class, () -> table(book));
    assertEquals("$.fairs[0].demand[0].price", faulty.faults().getFirst().path());
  }

  @Test
  void anUnknownFairIsRefused() {
    Book book = SampleBook.example();
    Faulty faulty =
        assertThrows(Faulty.class, () -> FairTable.of(book, "spring", new StandardMinutes(book)));
    assertEquals(List.of(".fair"), faulty.faults().stream().map(Fault::path).toList());
  }
}
