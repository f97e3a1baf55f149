package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.plan.Studios.mould;
import static strickle.plan.Studios.order;
import static strickle.plan.Studios.piece;
import static strickle.plan.Studios.tiles;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.Draft;
import strickle.book.Fault;

class BatchLimitTest {

  private static Book book() {
    return tiles(order("A", 2, "2027-04-30T12:00"));
  }

  private static List<Fault> faults(Book book) {
    return Planning.faults(book, Studios.FROM);
  }

  @ParameterizedTest
  @CsvSource({"1000, true", "999.9999, false", "1000.1, true", "333.3, false"})
  void aCastingMayWeighTheBatchLimitAndNoMore(double limit, boolean fits) {
    Book book = Studios.studio(book(), "batchLimitGrams", limit);
    assertEquals(fits, faults(book).isEmpty());
  }

  @Test
  void everyPieceOverTheBatchLimitIsNamedOrderedOrNot() {
    Book book =
        Draft.of(book())
            .moulds(mould("slab", "tray"), Altered.of(mould("small", "tray"), "wastePercent", 1.0))
            .pieces(piece("small", "small"), piece("tile", "slab"), piece("b", "small"))
            .book();
    List<Fault> faults = faults(Studios.studio(book, "batchLimitGrams", 1000.0));
    assertEquals(
        List.of("$.pieces[0].mould", "$.pieces[2].mould"),
        faults.stream().map(Fault::path).toList());
    assertEquals("1010 g of wet mix for one casting", faults.get(0).found());
    assertTrue(faults.get(0).right().startsWith("at most 1000 g, the batch limit; raise "));
  }

  @Test
  void aMassNextToTheLimitIsNotRoundedOntoIt() {
    Fault fault = faults(Studios.studio(book(), "batchLimitGrams", 999.75)).get(0);
    assertEquals("1000 g of wet mix for one casting", fault.found());
    assertTrue(fault.right().startsWith("at most 999.75 g, the batch limit"), fault::toString);
  }
}
