package strickle.price;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Material;
import strickle.book.Mix;
import strickle.book.Piece;
import strickle.book.SampleBook;
import strickle.price.Sensitivity.MovingNumber;

/** The example planter at its own table: 64.00, of which 32.663920 are profit. */
class SensitivityCheckTest {

  private static final Optional<String> PLANTER = Optional.of("planter-slate");

  private static Sensitivity of(Book book, Optional<String> piece, int by, int most) {
    SensitivityRequest request =
        new SensitivityRequest(piece, "own-table", Optional.empty(), BigDecimal.valueOf(by), most);
    return SensitivityCheck.of(book, request, Optional.empty());
  }

  private static MovingNumber number(Sensitivity all, String what) {
    return all.numbers().stream().filter(n -> n.what().equals(what)).findFirst().orElseThrow();
  }

  private static void assertAmount(String expected, BigDecimal actual) {
    assertEquals(new BigDecimal(expected), actual);
  }

  @Test
  void theFiveThatMoveTheProfitMostAreToldTheStrongestFirst() {
    Sensitivity five = of(SampleBook.example(), PLANTER, 10, 5);

    assertAmount("32.6639", five.profit());
    assertEquals(
        List.of("price", "good share", "wage", "run size", "productive hours"),
        five.numbers().stream().map(MovingNumber::what).toList());
    // 6.4 x 0.971
    assertAmount("6.2144", five.numbers().getFirst().swing());
  }

  @Test
  void everyNumberHasItsOwnProfitWhenItIsSmallerAndLarger() {
    Sensitivity all = of(SampleBook.example(), PLANTER, 10, 1000);
    MovingNumber wage = number(all, "wage");
    // A tenth of 19.329710
    assertAmount("34.5969", wage.profitAtLow());
    assertAmount("30.7309", wage.profitAtHigh());
    assertAmount("22.0000", wage.present());
    assertAmount("24.2000", wage.high());
    // A tenth of 2.9 % of 64
    assertAmount("32.8495", number(all, "percent fee").profitAtLow());
    // 0.01 x 30 ml / 0.92 x 29 / 946, ten times
    assertAmount("32.5640", number(all, "water-based sealer, a pack").profitAtHigh());
    for (int i = 1; i < all.numbers().size(); i++) {
      assertTrue(all.numbers().get(i - 1).swing().compareTo(all.numbers().get(i).swing()) >= 0);
    }
  }

  /** The sealer, called like the box: it still moves the profit by a tenth of its own 0.9997. */
  @Test
  void twoMaterialsOfOneNameAreNotTurnedTogether() {
    Book book = SampleBook.example();
    Material[] materials =
        book.materials().stream()
            .map(one -> one.id().equals("sealer") ? Altered.of(one, "name", "medium box") : one)
            .toArray(Material[]::new);
    Sensitivity all = of(BookWith.materials(book, materials), PLANTER, 10, 1000);

    assertAmount("32.6639", all.profit());
    assertAmount("32.5640", number(all, "medium box, a pack").profitAtHigh());
  }

  @Test
  void aGoodShareIsNeverMoreThanAll() {
    MovingNumber good = number(of(SampleBook.example(), PLANTER, 10, 1000), "good share");

    assertAmount("100.0000", good.high());
    assertAmount("82.8000", good.low());
  }

  private static double profit(Book book, Piece piece) {
    double full = new PlainArithmetic(BookWith.pieces(book, piece), piece).full();
    return PlainArithmetic.net(SampleBook.ownTable(), 64) - full;
  }

  @Test
  void theProfitIsThatOfABookWithTheOtherNumber() {
    Book book = SampleBook.example();
    Sensitivity all = of(book, PLANTER, 50, 1000);
    Piece planter = SampleBook.planterSlate();

    Piece threes = Altered.of(planter, "typicalRun", 3);
    assertEquals(profit(book, threes), number(all, "run size").profitAtHigh().doubleValue(), 1e-4);
    Piece halves = Altered.of(planter, "goodPercent", 46.0);
    assertEquals(profit(book, halves), number(all, "good share").profitAtLow().doubleValue(), 1e-4);
    Mix mix = Altered.of(SampleBook.slate(), "mixMinutes", 18);
    Book longer = BookWith.mixes(book, mix);
    assertEquals(profit(longer, planter), number(all, "mixing").profitAtHigh().doubleValue(), 1e-4);
    Book half =
        BookWith.moulds(
            book, Altered.of(SampleBook.planterDeep(), "volumeMl", OptionalDouble.of(590)));
    assertEquals(
        profit(half, planter),
        number(all, "mix in a good piece").profitAtLow().doubleValue(),
        1e-4);
  }

  @Test
  void withoutAPieceItIsOfAllThatIsOrdered() {
    Sensitivity all = of(SampleBook.example(), Optional.empty(), 10, 1000);

    // Four at 68: 4 x (68 x 0.971 - 0.30 - 29.180080)
    assertEquals(4, all.sold());
    assertAmount("146.1917", all.profit());
    assertAmount("138.4598", number(all, "wage").profitAtHigh());
  }

  @Test
  void ordersOfTheSameKindCountEachForItself() {
    Book book = SampleBook.example();
    var order = book.orders().getFirst();
    Book twice = book.withOrders(List.of(order, Altered.of(order, "id", "O-105")));
    Sensitivity all = of(twice, Optional.empty(), 10, 1000);

    assertEquals(8, all.sold());
    assertAmount("276.9196", number(all, "wage").profitAtHigh());
  }

  @ParameterizedTest
  @CsvSource({"0,5,.byPercent", "51,5,.byPercent", "10,0,.most"})
  void absurdRequestsAreRefused(int by, int most, String path) {
    Faulty faulty = assertThrows(Faulty.class, () -> of(SampleBook.example(), PLANTER, by, most));
    assertEquals(List.of(path), faulty.faults().stream().map(Fault::path).toList());
  }

  @Test
  void whatHasNoPriceIsRefused() {
    Piece piece = Altered.of(SampleBook.planterSlate(), "price", Optional.empty());
    Book book = BookWith.pieces(SampleBook.example(), piece);
    Faulty faulty = assertThrows(Faulty.class, () -> of(book, PLANTER, 10, 5));
    assertEquals(".price", faulty.faults().getFirst().path());
    Book idle = book.withOrders(List.of());
    faulty = assertThrows(Faulty.class, () -> of(idle, Optional.empty(), 10, 5));
    assertEquals("$.orders", faulty.faults().getFirst().path());
  }
}
