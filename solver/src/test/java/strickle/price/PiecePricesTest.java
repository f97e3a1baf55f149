package strickle.price;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import strickle.book.Fault;
import strickle.book.Faulty;

class PiecePricesTest {

  private static PiecePrices costing(String full, String... lines) {
    BigDecimal none = BigDecimal.ZERO;
    List<CostLine> given =
        List.of(lines).stream()
            .map(amount -> new CostLine("m", CostKind.MATERIAL, new BigDecimal(amount)))
            .toList();
    BigDecimal all = new BigDecimal(full);
    return new PiecePrices("p", none, all, none, none, none, all, given, List.of());
  }

  @Test
  void linesThatDoNotAddUpAreRefused() {
    Faulty faulty = assertThrows(Faulty.class, () -> costing("1.0000", "0.5000", "0.4999"));

    assertEquals(
        List.of(new Fault(".lines", "a sum of 0.9999", "lines that add up to 1.0000")),
        faulty.faults());
  }

  @Test
  void linesAddUpWhateverTheirZeros() {
    assertEquals(2, costing("1.0000", "0.5", "0.50").lines().size());
  }
}
