package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BinomialTest {

  /**
   * "Table A1. Binomial distribution", F(x) = P(X ≤ x), as printed in "Distribution tables"
   * (scribd.com/document/413754319), n = 5, 6 and 7; n = 20: value from memory. At least n − x good
   * with chance 1 − p are at most x bad with chance p.
   */
  @ParameterizedTest
  @CsvSource({
    "5, 0.10, 0, 0.5905",
    "5, 0.10, 1, 0.9185",
    "5, 0.25, 2, 0.8965",
    "6, 0.05, 0, 0.7351",
    "6, 0.20, 1, 0.6554",
    "6, 0.50, 3, 0.6563",
    "7, 0.10, 0, 0.4783",
    "7, 0.10, 1, 0.8503",
    "7, 0.30, 2, 0.6471",
    "20, 0.10, 2, 0.6769",
    "20, 0.05, 2, 0.9245",
  })
  void chancesAreThoseOfThePrintedTable(int n, double bad, int most, double printed) {
    assertEquals(printed, Binomial.atLeast(n, 1 - bad, n - most), 0.00005001);
  }

  /** Same source: a table of P(X ≤ k) for n = 5 to five places, statistics-website.pages.dev. */
  @ParameterizedTest
  @CsvSource({"0.15, 1, 0.83521", "0.35, 3, 0.94598", "0.45, 4, 0.98155", "0.50, 2, 0.50000"})
  void chancesAreThoseOfAnotherTable(double bad, int most, double printed) {
    assertEquals(printed, Binomial.atLeast(5, 1 - bad, 5 - most), 0.0000050001);
  }

  @Test
  void chancesAreThoseOfTheDefinitionSummedExactly() {
    for (int n = 1; n <= 60; n++) {
      for (int percent : new int[] {1, 10, 37, 50, 80, 92, 99}) {
        for (int wanted = 0; wanted <= n + 1; wanted++) {
          double exact = summed(n, percent, wanted);
          double found = Binomial.atLeast(n, percent / 100.0, wanted);
          assertEquals(exact, found, 1e-13, n + " at " + percent + " %, " + wanted);
        }
      }
    }
  }

  /** Whole numbers over 100^n, so nothing is rounded until the end. */
  private static double summed(int n, int percent, int wanted) {
    BigInteger sum = BigInteger.ZERO;
    BigInteger ways = BigInteger.ONE;
    for (int k = 0; k <= n; k++) {
      BigInteger good = BigInteger.valueOf(percent).pow(k);
      BigInteger bad = BigInteger.valueOf(100L - percent).pow(n - k);
      sum = k >= wanted ? sum.add(ways.multiply(good).multiply(bad)) : sum;
      ways = ways.multiply(BigInteger.valueOf(n - k)).divide(BigInteger.valueOf(k + 1L));
    }
    return new BigDecimal(sum).movePointLeft(2 * n).doubleValue();
  }

  @Test
  void certaintiesAreCertain() {
    assertEquals(1, Binomial.atLeast(0, 0.5, 0));
    assertEquals(1, Binomial.atLeast(7, 0.5, -3));
    assertEquals(0, Binomial.atLeast(7, 0.5, 8));
    assertEquals(1, Binomial.atLeast(7, 1, 7));
    assertEquals(0, Binomial.atLeast(7, 0, 1));
  }

  @Test
  void aPieceMoreNeverMakesItLessSure() {
    Random random = new Random(5);
    for (int i = 0; i < 300; i++) {
      double chance = random.nextInt(1, 1000) / 1000.0;
      int wanted = random.nextInt(1, 2000);
      long n = wanted + random.nextLong(3000);
      double one = Binomial.atLeast(n, chance, wanted);
      assertTrue(Binomial.atLeast(n + 1, chance, wanted) >= one - 1e-12, n + " " + chance);
    }
  }

  @Test
  void largeCountsNeitherOverflowNorTakeLong() {
    // Half of an odd number or more, by symmetry.
    assertEquals(0.5, Binomial.atLeast(1_999_999, 0.5, 1_000_000), 1e-11);
    // Far in the tails.
    assertEquals(1, Binomial.atLeast(1_000_000_000, 0.5, 400_000_000), 1e-12);
    assertEquals(0, Binomial.atLeast(1_000_000_000, 0.5, 600_000_000), 1e-12);
  }
}
