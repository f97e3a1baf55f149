package strickle.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strickle.book.Book;
import strickle.book.Channel;
import strickle.book.Piece;
import strickle.plan.Effort;
import strickle.plan.Plan;
import strickle.plan.PlanRequest;
import strickle.plan.Planning;
import strickle.plan.Task;
import strickle.price.ChannelPrice;
import strickle.price.CostLine;
import strickle.price.PiecePrices;
import strickle.price.PlanCost;
import strickle.price.PlanCost.PieceShare;
import strickle.price.PriceRequest;
import strickle.price.Prices;
import strickle.price.Pricing;

/** All amounts of books of 120 castings, by typical runs and as planned, in plain arithmetic. */
class GeneratedPricesTest {

  private static final int CASTINGS = 120;
  private static final PriceRequest REQUEST =
      new PriceRequest(BigDecimal.valueOf(30), BigDecimal.ZERO);

  private static Plan plan(Book book, long seed) {
    Effort effort = Effort.ofSchedules(20);
    PlanRequest request = new PlanRequest(Generator.start(book), effort, seed);
    return Planning.of(book, request, progress -> {}).run();
  }

  /** Half a unit of the fourth decimal, and what floating point may be off by. */
  private static void assertAmount(double expected, BigDecimal actual, String what) {
    double tolerance = 0.00005 + 1e-9 * Math.max(1, Math.abs(expected));
    assertEquals(expected, actual.doubleValue(), tolerance, what);
  }

  private static void assertPriced(Book book, PiecePrices priced, double minutes) {
    PlainCosts plain = new PlainCosts(book);
    Piece piece = book.piece(priced.piece());
    double full =
        plain.material(piece) + plain.labour(minutes) + plain.wear(piece) + plain.overhead(minutes);
    String name = piece.id();
    assertAmount(minutes, priced.minutes(), name + " minutes");
    assertAmount(plain.material(piece), priced.material(), name + " material");
    assertAmount(plain.labour(minutes), priced.labour(), name + " labour");
    assertAmount(plain.wear(piece), priced.wear(), name + " wear");
    assertAmount(plain.overhead(minutes), priced.overhead(), name + " overhead");
    assertAmount(full, priced.full(), name + " full");
    BigDecimal lines =
        priced.lines().stream().map(CostLine::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
    assertEquals(0, priced.full().compareTo(lines), name + " lines");
    for (ChannelPrice channel : priced.channels()) {
      assertSold(book, channel, full, full - plain.labour(minutes), minutes);
    }
  }

  private static void assertSold(
      Book book, ChannelPrice priced, double full, double withoutLabour, double minutes) {
    Channel channel = book.channel(priced.channel());
    double price = priced.price().orElseThrow().doubleValue();
    double net = PlainCosts.net(channel, price);
    double paid = PlainCosts.paid(channel, price);
    assertAmount(net, priced.net().orElseThrow(), "net");
    assertAmount(net - full, priced.profit().orElseThrow(), "profit");
    assertAmount((net - full) / paid * 100, priced.marginPercent().orElseThrow(), "margin");
    assertAmount(
        (net - withoutLabour) / (minutes / 60), priced.earnedPerHour().orElseThrow(), "per hour");
    double kept = 1 - channel.discountPercent().doubleValue() / 100;
    double fee = channel.percentFee().doubleValue() / 100;
    double owed = full + channel.fixedFee().doubleValue();
    assertAmount(owed / (kept * (1 - fee)), priced.breakEven(), "break-even");
    double asked = owed / (kept * (1 - fee - 0.3));
    assertEquals(Math.ceil(asked - 1e-9), priced.suggested().doubleValue(), "suggested");
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void allAmountsByTypicalRunsAreThoseOfPlainArithmetic(long seed) {
    Book book = Generator.book(CASTINGS, seed);
    List<PiecePrices> pieces = Pricing.standard(book, REQUEST).pieces();
    PlainCosts plain = new PlainCosts(book);

    assertEquals(book.pieces().size(), pieces.size());
    pieces.forEach(
        priced -> assertPriced(book, priced, plain.standardMinutes(book.piece(priced.piece()))));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2})
  void allAmountsAsPlannedAreThoseOfPlainArithmetic(long seed) {
    Book book = Generator.book(CASTINGS, seed);
    Plan plan = plan(book, seed);
    Prices prices = Pricing.planned(book, REQUEST, plan);
    PlainCosts plain = new PlainCosts(book);

    assertTrue(prices.pieces().size() > 1, "several pieces are planned");
    for (PiecePrices priced : prices.pieces()) {
      Piece piece = book.piece(priced.piece());
      double minutes = plain.plannedMinutes(piece, plan);
      assertPriced(book, priced, minutes);
      double more = minutes - plain.standardMinutes(piece);
      assertAmount(
          plain.labour(more) + plain.overhead(more),
          priced.comparison().orElseThrow().difference(),
          piece.id() + " difference");
    }
    assertWhole(book, plan, prices.plan().orElseThrow());
  }

  /** Every minute of the plan is paid for by some piece, and nothing is paid for twice. */
  private static void assertWhole(Book book, Plan plan, PlanCost cost) {
    PlainCosts plain = new PlainCosts(book);
    double minutes = plan.tasks().stream().mapToLong(Task::minutes).sum();
    double bill = plain.labour(minutes) + plain.overhead(minutes);
    BigDecimal sum = BigDecimal.ZERO;
    for (PieceShare share : cost.pieces()) {
      Piece piece = book.piece(share.piece());
      double good = plain.good(piece, PlainCosts.castings(piece, plan));
      bill += good * (plain.material(piece) + plain.wear(piece));
      sum = sum.add(share.full());
    }
    double half = 0.5 * Math.pow(10, -book.studio().currency().getDecimalPlaces());
    assertEquals(bill, cost.full().doubleValue(), half + 1e-6);
    assertEquals(cost.full(), sum);
  }

  @Test
  void theSameBookAndPlanGiveTheSamePrices() {
    Book book = Generator.book(12, 7);
    Plan plan = plan(book, 7);

    assertEquals(Pricing.planned(book, REQUEST, plan), Pricing.planned(book, REQUEST, plan));
  }
}
