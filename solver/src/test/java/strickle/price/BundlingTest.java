package strickle.price;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.SampleBook;
import strickle.price.BundlePrices.BundleChannel;
import strickle.price.BundleRequest.Item;

/** Bundles of the example planter, recomputed by hand from its full cost of 29.180080. */
class BundlingTest {

  private static final PriceRequest REQUEST = new PriceRequest(new BigDecimal(30), BigDecimal.ZERO);

  private static BundlePrices bundle(Book book, int quantity, String price) {
    BundleRequest bundle =
        new BundleRequest(List.of(new Item("planter-slate", quantity)), new BigDecimal(price));
    return Bundling.of(book, REQUEST, bundle, new StandardMinutes(book));
  }

  private static void assertAmount(String expected, BigDecimal actual) {
    assertEquals(new BigDecimal(expected), actual);
  }

  @Test
  void aBundleCostsWhatItsPiecesCostAndPaysTheFixedFeeOnce() {
    BundlePrices three = bundle(SampleBook.example(), 3, "150");
    BundleChannel table = three.channels().getFirst();

    assertAmount("87.5402", three.full());
    assertAmount("158.1522", three.minutes());
    // 192 one by one
    assertAmount("21.8750", three.offPercent().orElseThrow());
    // 150 x 0.971 - 0.30 = 145.35
    assertAmount("145.3500", table.net());
    assertAmount("57.8098", table.profit());
    assertAmount("38.5398", table.marginPercent());
    // 3 x 32.663920
    assertAmount("97.9918", table.profitSeparately().orElseThrow());
    // (87.540239 + 0.30) / 0.971 and / 0.671
    assertAmount("90.4637", table.breakEven());
    assertAmount("131.00", table.suggested());
  }

  @Test
  void withoutListPricesThereIsNothingToCompareWith() {
    Book book =
        BookWith.pieces(
            SampleBook.example(), Altered.of(SampleBook.planterSlate(), "price", Optional.empty()));
    BundlePrices two = bundle(book, 2, "100");

    assertEquals(Optional.empty(), two.separately());
    assertEquals(Optional.empty(), two.offPercent());
    assertEquals(Optional.empty(), two.channels().getFirst().profitSeparately());
  }

  private static List<String> paths(Faulty faulty) {
    return faulty.faults().stream().map(Fault::path).toList();
  }

  @Test
  void anEmptyBundleAndAbsurdNumbersAreRefused() {
    assertEquals(
        List.of(".items", ".price"),
        paths(assertThrows(Faulty.class, () -> new BundleRequest(List.of(), BigDecimal.ZERO))));
    List<Item> items = List.of(new Item("a", 0), new Item("a", 2), new Item("b", 1001));
    assertEquals(
        List.of(".items", ".items", ".items"),
        paths(assertThrows(Faulty.class, () -> new BundleRequest(items, BigDecimal.ONE))));
  }

  @Test
  void piecesThatAreNotInTheBookAndPricesTooFineAreRefusedTogether() {
    BundleRequest wrong = new BundleRequest(List.of(new Item("vase", 1)), new BigDecimal("9.999"));
    Book book = SampleBook.example();
    Faulty faulty =
        assertThrows(
            Faulty.class, () -> Bundling.of(book, REQUEST, wrong, new StandardMinutes(book)));
    assertEquals(List.of(".price", ".items"), paths(faulty));
  }
}
