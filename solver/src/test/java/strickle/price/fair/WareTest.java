package strickle.price.fair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class WareTest {

  private static final Triangle DEMAND = new Triangle(2, 5, 11);

  /** By hand from the triangle 2, 5, 11: the area above k - 0.5. */
  @Test
  void aTriangleIsReadAtTheHalves() {
    assertEquals(1, DEMAND.atLeast(1));
    assertEquals(1, DEMAND.atLeast(2));
    assertEquals(1 - 0.5 * 0.5 / 27, DEMAND.atLeast(3), 1e-12);
    assertEquals(1 - 2.5 * 2.5 / 27, DEMAND.atLeast(5), 1e-12);
    assertEquals(5.5 * 5.5 / 54, DEMAND.atLeast(6), 1e-12);
    assertEquals(0.5 * 0.5 / 54, DEMAND.atLeast(11), 1e-12);
    assertEquals(0, DEMAND.atLeast(12));
  }

  @Test
  void aTriangleThatIsAPointOrHasAnUprightSideIsReadAsWell() {
    assertEquals(1, new Triangle(4, 4, 4).atLeast(4));
    assertEquals(0, new Triangle(4, 4, 4).atLeast(5));
    assertEquals(1 - 0.5 * 0.5 / 16, new Triangle(0, 4, 4).atLeast(1), 1e-12);
    assertEquals(3.5 * 3.5 / 16, new Triangle(0, 0, 4).atLeast(1), 1e-12);
    assertThrows(IllegalArgumentException.class, () -> new Triangle(5, 4, 6));
  }

  /** The mean of a triangle is (2 + 5 + 11) / 3 = 6; what halves round off is less than a tenth. */
  @Test
  void allThatCouldSellIsTheMean() {
    assertEquals(6, new Ware("a", DEMAND, 11, 0, 60, 0, 20).sold(11), 0.1);
  }

  @Test
  void stockCostsNothingMoreAndComesFirst() {
    Ware ware = new Ware("a", DEMAND, 11, 2, 60, 10, 20);
    assertEquals(60, ware.worth(2), 1e-12);
    double third = 60 * DEMAND.atLeast(3) + 10 * (1 - DEMAND.atLeast(3)) - 20;
    assertEquals(third, ware.worth(3), 1e-12);
    assertEquals(60 + 60 + third, ware.worthOf(3), 1e-12);
  }

  @Test
  void noFurtherPieceIsWorthMoreThanTheOneBefore() {
    Ware ware = new Ware("a", DEMAND, 15, 3, 60, 10, 20);
    for (int k = 2; k <= 15; k++) {
      assertTrue(ware.worth(k) <= ware.worth(k - 1) + 1e-12, "piece " + k);
    }
  }

  /** Critical ratio (60 - 20) / (60 - 10) = 0.8: the smallest Q with F(Q + 0.5) at least 0.8. */
  @Test
  void asManyAreWantedAsTheCriticalRatioSays() {
    Ware ware = new Ware("a", DEMAND, 11, 0, 60, 10, 20);
    int best = ware.unlimited();
    assertTrue(1 - DEMAND.atLeast(best + 1) >= 0.8);
    assertTrue(1 - DEMAND.atLeast(best) < 0.8);
  }

  @Test
  void whatIsWorthMoreUnsoldThanSoldIsNoWare() {
    assertThrows(IllegalArgumentException.class, () -> new Ware("a", DEMAND, 11, 0, 30, 40, 20));
  }
}
