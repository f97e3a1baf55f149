package strickle.paper;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import strickle.book.Channel;
import strickle.book.Piece;

class PriceListTest {

  private static final LocalDate DAY = LocalDate.of(2027, 3, 1);

  private static final Channel CHEAPER =
      Papers.BOOK.channels().stream()
          .filter(channel -> channel.discountPercent().signum() > 0)
          .findFirst()
          .orElseThrow();

  private static byte[] list(Optional<String> channel) {
    return PriceList.pdf(Papers.BOOK, channel, DAY, PageSize.A4);
  }

  @Test
  void everyPieceStandsThereWithItsPrice() {
    String words = Papers.words(list(Optional.empty()));
    for (Piece piece : Papers.BOOK.pieces()) {
      String price = piece.price().orElseThrow().setScale(2).toPlainString();
      String row = piece.name() + " " + Papers.BOOK.mix(piece.mix()).name() + " " + price;
      assertTrue(words.contains(row), row + " in " + words);
    }
    assertFalse(words.contains("your price"), words);
    assertTrue(words.contains("Monday 1 March 2027"), words);
  }

  @Test
  void aChannelWithADiscountHasItsPricesBesideThem() {
    String words = Papers.words(list(Optional.of(CHEAPER.id())));
    BigDecimal left = BigDecimal.valueOf(100).subtract(CHEAPER.discountPercent());
    for (Piece piece : Papers.BOOK.pieces()) {
      BigDecimal price = piece.price().orElseThrow();
      BigDecimal own =
          price.multiply(left).divide(BigDecimal.valueOf(100), 2, RoundingMode.HALF_UP);
      String row = price.setScale(2).toPlainString() + " " + own.toPlainString();
      assertTrue(words.contains(row), row + " in " + words);
    }
    assertTrue(words.contains("your price"), words);
  }

  @Test
  void theSameDayGivesTheSameBytes() {
    assertArrayEquals(list(Optional.empty()), list(Optional.empty()));
  }

  @Test
  void theTableHasARowForEachPiece() {
    String csv = PriceList.csv(Papers.BOOK, Optional.of(CHEAPER.id()));
    CsvText.Sheet sheet = CsvText.read("prices.csv", csv);
    assertEquals(1 + Papers.BOOK.pieces().size(), sheet.rows().size());
    Piece first = Papers.BOOK.pieces().get(0);
    assertEquals(first.id(), sheet.rows().get(1).cells().get(0));
    assertEquals(
        first.price().orElseThrow(),
        new BigDecimal(sheet.rows().get(1).cells().get(4)).setScale(first.price().get().scale()));
  }

  @Test
  void anotherChannelIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> list(Optional.of("nowhere")));
  }
}
