package strickle.price;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import strickle.book.Book;
import strickle.book.Channel;
import strickle.book.Piece;

/** Two hundred generated books, priced by the package and by plain arithmetic. */
class PlainArithmeticTest {

  private static final BigDecimal UNIT = new BigDecimal("0.0001");

  static LongStream books() {
    return LongStream.range(0, 200);
  }

  private static Prices price(Book book, long number) {
    BigDecimal ending = BigDecimal.valueOf(number % 100, 2);
    return Pricing.standard(book, new PriceRequest(BigDecimal.valueOf(number % 55), ending));
  }

  /** Half a unit of the fourth decimal, and what floating point may be off by. */
  private static void assertAmount(String what, double expected, BigDecimal actual) {
    double tolerance = 0.00005 + 1e-9 * Math.max(1, Math.abs(expected));
    assertEquals(expected, actual.doubleValue(), tolerance, what);
  }

  private static void assertAmount(String what, double expected, Optional<BigDecimal> actual) {
    assertAmount(what, expected, actual.orElseThrow());
  }

  @ParameterizedTest
  @MethodSource("books")
  void aPieceCostsItsShareOfWhatAWholeLotUsesUp(long number) {
    Book book = GeneratedBook.of(number);
    PlainArithmetic plain = new PlainArithmetic(book, book.pieces().getFirst());
    PiecePrices priced = price(book, number).pieces().getFirst();

    assertAll(
        () -> assertAmount("minutes", plain.minutes, priced.minutes()),
        () -> assertAmount("material", plain.material, priced.material()),
        () -> assertAmount("labour", plain.labour, priced.labour()),
        () -> assertAmount("wear", plain.wear, priced.wear()),
        () -> assertAmount("overhead", plain.overhead, priced.overhead()),
        () -> assertAmount("full", plain.full(), priced.full()));
  }

  @ParameterizedTest
  @MethodSource("books")
  void theLinesAddUpToTheFullCostAndNearlyToEachKind(long number) {
    PiecePrices priced = price(GeneratedBook.of(number), number).pieces().getFirst();

    BigDecimal sum =
        priced.lines().stream().map(CostLine::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
    assertEquals(priced.full(), sum);
    assertKind(CostKind.MATERIAL, priced.material(), priced);
    assertKind(CostKind.LABOUR, priced.labour(), priced);
    assertKind(CostKind.WEAR, priced.wear(), priced);
    assertKind(CostKind.OVERHEAD, priced.overhead(), priced);
  }

  /**
   * Each line of the kind is within a unit of its exact amount, the kind's own amount within one.
   */
  private static void assertKind(CostKind kind, BigDecimal amount, PiecePrices priced) {
    var lines = priced.lines().stream().filter(line -> line.kind() == kind).toList();
    BigDecimal sum = lines.stream().map(CostLine::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
    BigDecimal room = UNIT.multiply(BigDecimal.valueOf(lines.size() + 1L));
    assertTrue(sum.subtract(amount).abs().compareTo(room) < 0, kind + ": " + sum + ", " + amount);
  }

  @ParameterizedTest
  @MethodSource("books")
  void aListPriceBringsWhatTheChannelLeaves(long number) {
    Book book = GeneratedBook.of(number);
    Piece piece = book.pieces().getFirst();
    PlainArithmetic plain = new PlainArithmetic(book, piece);
    for (ChannelPrice priced : price(book, number).pieces().getFirst().channels()) {
      assertEquals(piece.price(), priced.price());
      assertEquals(piece.price().isPresent(), priced.net().isPresent());
      Channel channel = channel(book, priced.channel());
      piece.price().ifPresent(p -> assertBrings(plain, channel, p.doubleValue(), priced));
    }
  }

  private static void assertBrings(
      PlainArithmetic plain, Channel channel, double price, ChannelPrice priced) {
    double net = PlainArithmetic.net(channel, price);
    double profit = net - plain.full();
    double paid = price * (100 - channel.discountPercent().doubleValue()) / 100;
    double earned = (profit + plain.labour) * 60 / plain.minutes;
    assertAll(
        () -> assertAmount("net", net, priced.net()),
        () -> assertAmount("profit", profit, priced.profit()),
        () -> assertAmount("margin", 100 * profit / paid, priced.marginPercent()),
        () -> assertAmount("earned", earned, priced.earnedPerHour()));
  }

  @ParameterizedTest
  @MethodSource("books")
  void theBreakEvenBringsTheCostAndTheSuggestedPriceTheMargin(long number) {
    Book book = GeneratedBook.of(number);
    double full = new PlainArithmetic(book, book.pieces().getFirst()).full();
    double margin = number % 55 / 100.0;
    for (ChannelPrice priced : price(book, number).pieces().getFirst().channels()) {
      Channel channel = channel(book, priced.channel());
      double breakEven = priced.breakEven().doubleValue();
      assertEquals(full, PlainArithmetic.net(channel, breakEven), 0.0001 + 1e-9 * full);
      double suggested = priced.suggested().doubleValue();
      double kept = profitAbove(margin, channel, suggested, full);
      assertTrue(kept > -1e-6, "margin missed by " + kept);
      assertTrue(suggested < 1 || profitAbove(margin, channel, suggested - 1, full) < 1e-6);
      assertEquals(number % 100, Math.round(suggested * 100) % 100);
    }
  }

  /** Profit beyond the margin wanted; the price for the margin is where it is 0. */
  private static double profitAbove(double margin, Channel channel, double price, double full) {
    double paid = price * (100 - channel.discountPercent().doubleValue()) / 100;
    return PlainArithmetic.net(channel, price) - full - margin * paid;
  }

  private static Channel channel(Book book, String id) {
    return book.channels().stream().filter(c -> c.id().equals(id)).findFirst().orElseThrow();
  }
}
