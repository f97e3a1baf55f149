package strickle.price.fair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import strickle.price.fair.Programme.Level;
import strickle.price.fair.Programme.Limit;

/** Published cases of the newsvendor problem. A normal demand is counted in thousandths. */
class NewsvendorTest {

  private static final int FINE = 1000;

  /**
   * Porteus: mean 100, deviation 30, price 4, cost 1, salvage 0 give Q 120.23, expected cost 38.13,
   * expected profit 261.87 and a fill rate of 0.96; Gallego: deviation 20 gives 113.49, 25.42,
   * 274.58 and 0.97. Source: CRAN package SCperf, documentation of Newsboy (read).
   */
  @Test
  void aNormalDemandIsStockedAsPublished() {
    assertNormal(30, 120.23, 38.13, 261.87, 0.96);
    assertNormal(20, 113.49, 25.42, 274.58, 0.97);
  }

  private static void assertNormal(
      double deviation, double stock, double cost, double profit, double fill) {
    Ware ware = normal(100, deviation, 4, 0, 1);
    int best = ware.unlimited();
    assertEquals(stock, best / (double) FINE, 0.01);
    double expected = ware.worthOf(best) / FINE;
    // Nobody buys less than nothing, which a normal demand does in 4 of 10,000 cases: 0.0134 of 4.
    assertEquals(profit, expected, 0.02);
    // Expected cost is what uncertainty takes of (p - c) x mean.
    assertEquals(cost, 3 * 100 - expected, 0.02);
    assertEquals(fill, ware.sold(best) / (double) FINE / 100, 0.005);
  }

  /**
   * Price 2.50, cost 1.50, salvage 0.50, demand 15 to 18 with .4, .2, .3, .1. Source of the
   * problem: Hillier and Lieberman (read); the answer 16 is derived: critical ratio 0.5.
   */
  @Test
  void aDiscreteDemandIsStockedUpToTheCriticalRatio() {
    double[] chance = {.4, .2, .3, .1};
    Chances chances =
        k -> {
          double sum = 0;
          for (int i = 0; i < chance.length; i++) {
            sum += 15 + i >= k ? chance[i] : 0;
          }
          return sum;
        };
    assertEquals(16, new Ware("paper", chances, 30, 0, 2.5, 0.5, 1.5).unlimited());
  }

  /** Derived: mean 8, ratio .75 give 10; mean 12, ratio .6 give 13. */
  @Test
  void aPoissonDemandIsStockedUpToTheCriticalRatio() {
    assertEquals(10, poisson("a", 8, 18, 6).unlimited());
    assertEquals(13, poisson("b", 12, 0.6, 0.4).unlimited());
    assertEquals(13, poisson("b", 12, 10, 5).unlimited());
  }

  /**
   * Two Poisson demands, A: mean 8, C_u 18, C_o 6, space 1; B: mean 12, C_u 10, C_o 5, space .5;
   * space 12: derived A 7, B 10, worth 201.6166, equal to the best of all choices.
   */
  @Test
  void aSharedSpaceIsFilledAsWellAsCanBe() {
    Programme programme =
        new Programme(
            List.of(levels(poisson("a", 8, 18, 6), 1), levels(poisson("b", 12, 10, 5), 0.5)),
            List.of(),
            List.of(new Limit(12)));
    Programme.Chosen best = programme.best();
    assertEquals(7, best.levels().get(0).pieces());
    assertEquals(10, best.levels().get(1).pieces());
    assertEquals(201.6166, best.worth(), 0.0001);
  }

  /**
   * Two normal demands (mean, deviation, C_u, C_o, space): (100, 30, 3, 1, 1) and (80, 20, 6, 2,
   * 2), space 230: derived 87.143 and 71.429, the space worth 1.66353 a unit. Method read:
   * effective critical ratios (C_u − λa)/(C_u + C_o), λ by bisection (lecture notes on
   * capacity-constrained newsvendors). Here in pieces, so to within half of one.
   */
  @Test
  void theWorthOfMoreSpaceIsItsLagrangeMultiplier() {
    Programme programme =
        new Programme(
            List.of(
                levels(pieces(100, 30, 3, 1), 1, 75, 100), levels(pieces(80, 20, 6, 2), 2, 60, 85)),
            List.of(),
            List.of(new Limit(230)));
    List<Level> best = programme.best().levels();
    assertEquals(87.143, best.get(0).pieces(), 1);
    assertEquals(71.429, best.get(1).pieces(), 1);
    double worth = programme.withMore(0, 1).relaxed() - programme.relaxed();
    assertEquals(1.66353, worth, 0.05);
    assertTrue(programme.withMore(0, 100).relaxed() - programme.withMore(0, 99).relaxed() < 1e-6);
  }

  private static List<Level> levels(Ware ware, double space) {
    return levels(ware, space, 0, 30);
  }

  private static List<Level> levels(Ware ware, double space, int least, int most) {
    List<Level> levels = new ArrayList<>();
    for (int k = least; k <= most; k++) {
      levels.add(new Level(k, k, ware.worthOf(k), List.of(space * k)));
    }
    return levels;
  }

  private static Ware poisson(String name, double mean, double under, double over) {
    return new Ware(name, k -> poissonAtLeast(mean, k), 100, 0, under + over, 0, over);
  }

  private static double poissonAtLeast(double mean, int k) {
    double term = Math.exp(-mean);
    double below = 0;
    for (int i = 0; i < k; i++) {
      below += term;
      term *= mean / (i + 1);
    }
    return 1 - below;
  }

  private static Ware pieces(double mean, double deviation, double under, double over) {
    Chances chances = k -> 1 - normalBelow((k - 0.5 - mean) / deviation);
    return new Ware("normal", chances, 400, 0, under + over, 0, over);
  }

  private static Ware normal(
      double mean, double deviation, double price, double salvage, double cost) {
    Chances chances = k -> 1 - normalBelow(((k - 0.5) / FINE - mean) / deviation);
    return new Ware("normal", chances, 400 * FINE, 0, price, salvage, cost);
  }

  /** The normal distribution function, by its series (Abramowitz and Stegun 26.2.10, memory). */
  private static double normalBelow(double z) {
    if (Math.abs(z) > 7) {
      return z > 0 ? 1 : 0;
    }
    double sum = z;
    double term = z;
    for (int n = 1; n < 200; n++) {
      term *= z * z / (2 * n + 1);
      sum += term;
    }
    return 0.5 + sum * Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
  }
}
