package strickle.price;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Channel;
import strickle.book.Form;
import strickle.book.Piece;

/**
 * Every closing value put into the book in place of the present one: by plain arithmetic the margin
 * wanted then holds, and one step before it does not.
 */
class LeversTest {

  /** What floating point may be off by, in percent. */
  private static final double ROUNDING = 1e-6;

  static LongStream books() {
    return LongStream.range(0, 150);
  }

  private final BigDecimal margin = new BigDecimal("20");

  private static BigDecimal price(long number) {
    return BigDecimal.valueOf(1500 + number * 137, 2);
  }

  private Target target(long number) {
    Book book = book(number);
    String piece = book.pieces().getFirst().id();
    TargetRequest request = new TargetRequest(piece, "c0", price(number), margin, Optional.empty());
    return TargetCheck.of(book, request, Optional.empty());
  }

  private static Book book(long number) {
    Book book = BookWith.fairs(GeneratedBook.of(number));
    return BookWith.channels(book, book.channels().getFirst());
  }

  private static Lever lever(Target target, LeverKind kind) {
    return target.levers().stream().filter(one -> one.kind() == kind).findFirst().orElseThrow();
  }

  private static double margin(Book book, double price) {
    double full = new PlainArithmetic(book, book.pieces().getFirst()).full();
    return margin(book.channels().getFirst(), price, full);
  }

  private static double margin(Channel channel, double price, double full) {
    double paid = price * (100 - channel.discountPercent().doubleValue()) / 100;
    return (PlainArithmetic.net(channel, price) - full) / paid * 100;
  }

  private void assertHolds(boolean holds, double found, String what) {
    double wanted = margin.doubleValue();
    assertTrue(holds ? found >= wanted - ROUNDING : found < wanted + ROUNDING, what + ": " + found);
  }

  private static Book with(Book book, String component, Object value) {
    Piece piece = Altered.of(book.pieces().getFirst(), component, value);
    return BookWith.pieces(book, piece);
  }

  @ParameterizedTest
  @MethodSource("books")
  void theVerdictIsThatOfPlainArithmetic(long number) {
    Target target = target(number);
    double found = margin(book(number), price(number).doubleValue());
    assertEquals(found, target.marginPercent().doubleValue(), 0.0001 + Math.abs(found) * 1e-8);
    assertEquals(found >= margin.doubleValue(), target.holds());
    assertEquals(target.holds(), target.gap().signum() >= 0);
  }

  @ParameterizedTest
  @MethodSource("books")
  void thePriceThatClosesTheGapIsTheLowest(long number) {
    BigDecimal closing = lever(target(number), LeverKind.PRICE).closing().orElseThrow();
    Book book = book(number);
    assertHolds(true, margin(book, closing.doubleValue()), "price");
    assertHolds(false, margin(book, closing.doubleValue() - 0.01), "a cent less");
  }

  @ParameterizedTest
  @MethodSource("books")
  void theRunSizeThatClosesTheGapIsTheSmallest(long number) {
    Lever lever = lever(target(number), LeverKind.RUN_SIZE);
    double price = price(number).doubleValue();
    Book book = book(number);
    if (lever.closing().isEmpty()) {
      int most = lever.limit().orElseThrow().intValueExact();
      assertHolds(false, margin(with(book, "typicalRun", most), price), "at most");
    } else {
      int n = lever.closing().get().intValueExact();
      assertHolds(true, margin(with(book, "typicalRun", n), price), "closing");
      if (n > 1) {
        assertHolds(false, margin(with(book, "typicalRun", n - 1), price), "one less");
      }
    }
  }

  @ParameterizedTest
  @MethodSource("books")
  void theGoodShareThatClosesTheGapIsTheLowest(long number) {
    Lever lever = lever(target(number), LeverKind.GOOD_SHARE);
    double price = price(number).doubleValue();
    Book book = book(number);
    if (lever.closing().isEmpty()) {
      assertHolds(false, margin(with(book, "goodPercent", 100.0), price), "all good");
    } else {
      double percent = lever.closing().get().doubleValue();
      assertHolds(true, margin(with(book, "goodPercent", percent), price), "closing");
      if (percent > 0.001) {
        assertHolds(false, margin(with(book, "goodPercent", percent - 0.0002), price), "less");
      }
    }
  }

  @ParameterizedTest
  @MethodSource("books")
  void theFeeAndTheShopsShareThatCloseTheGapAreTheHighest(long number) {
    Target target = target(number);
    check(target, LeverKind.CHANNEL_FEE, "percentFee", number);
    if (book(number).channels().getFirst().discountPercent().signum() > 0) {
      check(target, LeverKind.SHOP_SHARE, "discountPercent", number);
    }
  }

  private void check(Target target, LeverKind kind, String component, long number) {
    Channel channel = book(number).channels().getFirst();
    double full = new PlainArithmetic(book(number), book(number).pieces().getFirst()).full();
    double price = price(number).doubleValue();
    Optional<BigDecimal> closing = lever(target, kind).closing();
    Channel best = Altered.of(channel, component, closing.orElse(BigDecimal.ZERO));
    assertHolds(closing.isPresent(), margin(best, price, full), kind + " " + closing);
    if (closing.isPresent()) {
      BigDecimal more = closing.get().add(new BigDecimal("0.0002"));
      assertHolds(false, margin(Altered.of(channel, component, more), price, full), "more");
    }
  }

  @ParameterizedTest
  @MethodSource("books")
  void theMinutesThatCloseTheGapAreTheMost(long number) {
    Book book = book(number);
    PlainArithmetic plain = new PlainArithmetic(book, book.pieces().getFirst());
    double perMinute = (plain.labour + plain.overhead) / plain.minutes;
    double rest = plain.material + plain.wear;
    Channel channel = book.channels().getFirst();
    double price = price(number).doubleValue();
    Optional<BigDecimal> closing = lever(target(number), LeverKind.MINUTES).closing();
    double minutes = closing.map(BigDecimal::doubleValue).orElse(0.0);
    assertHolds(
        closing.isPresent(), margin(channel, price, rest + minutes * perMinute), "" + closing);
    if (closing.isPresent()) {
      double more = rest + (minutes + 0.0002) * perMinute;
      assertHolds(false, margin(channel, price, more), "more");
    }
  }

  @ParameterizedTest
  @MethodSource("books")
  void theMouldLifeThatClosesTheGapIsTheShortest(long number) {
    Book book = book(number);
    if (book.moulds().getFirst().forms().size() > 1) {
      return;
    }
    Lever lever = lever(target(number), LeverKind.MOULD_LIFE);
    double price = price(number).doubleValue();
    if (lever.closing().isPresent() && lever.closing().get().compareTo(BigDecimal.TEN.pow(6)) < 0) {
      int life = lever.closing().get().intValueExact();
      assertHolds(true, margin(lasting(book, life), price), "closing");
      if (life > 1) {
        assertHolds(false, margin(lasting(book, life - 1), price), "one casting less");
      }
    }
  }

  private static Book lasting(Book book, int castings) {
    Form[] forms =
        book.forms().stream()
            .map(form -> Altered.of(form, "lifeCastings", castings))
            .toArray(Form[]::new);
    return BookWith.forms(book, forms);
  }
}
