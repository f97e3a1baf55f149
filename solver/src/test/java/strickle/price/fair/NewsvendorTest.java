package strickle.price.fair;

import static org.junit.jupiter.api.Assertions.assertEquals;

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

  /** The same with more digits. Derived: recomputed by the formulas of the source. */
  @Test
  void aNormalDemandIsStockedAsRecomputed() {
    assertStocked(30, new double[] {120.2347, 38.1332, 261.8668, 0.9553}, 0.001);
    assertStocked(20, new double[] {113.4898, 25.4221, 274.5779, 0.9702}, 0.001);
  }

  private static void assertNormal(
      double deviation, double stock, double cost, double profit, double fill) {
    assertStocked(deviation, new double[] {stock, cost, profit}, 0.01);
    assertEquals(fill, stocked(deviation)[3], 0.005);
  }

  private static void assertStocked(double deviation, double[] published, double tolerance) {
    double[] found = stocked(deviation);
    for (int i = 0; i < published.length; i++) {
      assertEquals(published[i], found[i], tolerance, "figure " + i);
    }
  }

  /** Stock, expected cost, expected profit and fill rate of a mean of 100, price 4 and cost 1. */
  private static double[] stocked(double deviation) {
    Ware ware = normal(100, deviation, 4, 0, 1);
    int best = ware.unlimited();
    // The publication counts demand below nothing as it comes; a ware sells nothing then.
    double below = belowNothing(100, deviation);
    double profit = ware.worthOf(best) / FINE - 4 * below;
    double fill = (ware.sold(best) / (double) FINE - below) / 100;
    // Expected cost is what uncertainty takes of (p - c) x mean.
    return new double[] {best / (double) FINE, 3 * 100 - profit, profit, fill};
  }

  /** How far a normal demand lies below nothing, on average. */
  private static double belowNothing(double mean, double deviation) {
    double z = mean / deviation;
    double density = Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
    return deviation * density - mean * normalBelow(-z);
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

  /** Derived: 120.235 and 93.490 without a limit, which take 307.214 of the space below. */
  @Test
  void withoutALimitEachIsStockedByItself() {
    double a = normal(100, 30, 4, 0, 1).unlimited() / (double) FINE;
    double b = normal(80, 20, 8, 0, 2).unlimited() / (double) FINE;

    assertEquals(120.235, a, 0.001);
    assertEquals(93.490, b, 0.001);
    assertEquals(307.214, a + 2 * b, 0.003);
  }

  /**
   * Two normal demands (mean, deviation, C_u, C_o, space): (100, 30, 3, 1, 1) and (80, 20, 6, 2,
   * 2), space 230: derived 87.143 and 71.429, the space worth 1.66353 a unit. Method read:
   * effective critical ratios (C_u − λa)/(C_u + C_o), λ by bisection (lecture notes on
   * capacity-constrained newsvendors). In thousandths, near the optimum.
   */
  @Test
  void theWorthOfMoreSpaceIsItsLagrangeMultiplier() {
    Programme programme =
        new Programme(
            List.of(
                thousandths(normal(100, 30, 4, 0, 1), 1, 87_000, 87_300),
                thousandths(normal(80, 20, 8, 0, 2), 2, 71_350, 71_500)),
            List.of(),
            List.of(new Limit(230)));
    List<Level> best = programme.best().levels();

    assertEquals(87.143, best.get(0).pieces() / (double) FINE, 0.0015);
    assertEquals(71.429, best.get(1).pieces() / (double) FINE, 0.0015);
    double more = programme.withMore(0, 0.02).relaxed();
    double less = programme.withMore(0, -0.02).relaxed();
    assertEquals(1.66353, (more - less) / 0.04 / FINE, 0.001);
  }

  @Test
  void spaceBeyondWhatIsWantedIsWorthNothing() {
    Programme programme =
        new Programme(
            List.of(
                thousandths(normal(100, 30, 4, 0, 1), 1, 120_000, 120_300),
                thousandths(normal(80, 20, 8, 0, 2), 2, 93_400, 93_600)),
            List.of(),
            List.of(new Limit(310)));

    assertEquals(0, programme.withMore(0, 1).relaxed() - programme.relaxed(), 1e-6);
  }

  /** Levels of thousandths of a piece, worth thousandths of money. */
  private static List<Level> thousandths(Ware ware, double space, int least, int most) {
    List<Level> levels = new ArrayList<>();
    double worth = ware.worthOf(least);
    for (int k = least; k <= most; k++) {
      worth += k == least ? 0 : ware.worth(k);
      levels.add(new Level(k, k, worth, List.of(space * k / FINE)));
    }
    return levels;
  }

  /**
   * Three products with contributions of 185 in an hour, 55 in half an hour and 48 in a quarter; 60
   * 000 of the first and 40 000 of the third can be sold, 80 000 hours are there: 60 000, 20 000
   * and 40 000 units, the third first, then the first; one more hour is worth 110, the most an hour
   * brings where demand is left. Source: OpenStax, Principles of Accounting 2, m68086 (read). In
   * all 14 120 000; those that bring most by the piece first would bring 13 300 000 (derived).
   */
  @Test
  void hoursGoWhereAnHourBringsMost() {
    List<List<Level>> products =
        List.of(hours(185, 1, 60), hours(55, 0.5, 100), hours(48, 0.25, 40));
    Programme programme = new Programme(products, List.of(), List.of(new Limit(80)));
    Programme.Chosen best = programme.best();

    assertEquals(List.of(60, 20, 40), best.levels().stream().map(Level::pieces).toList());
    assertEquals(14_120, best.worth(), 1e-6);
    assertEquals(110, programme.withMore(0, 1).relaxed() - programme.relaxed(), 1e-6);
    List<List<Level>> byThePiece =
        List.of(products.get(0).subList(60, 61), products.get(1), products.get(2).subList(0, 1));
    Programme.Chosen dearest = new Programme(byThePiece, List.of(), List.of(new Limit(80))).best();
    assertEquals(13_300, dearest.worth(), 1e-6);
  }

  /** Thousands of units, in thousands of money and hours. */
  private static List<Level> hours(double each, double hoursEach, int most) {
    List<Level> levels = new ArrayList<>();
    for (int k = 0; k <= most; k++) {
      levels.add(new Level(k, k, each * k, List.of(hoursEach * k)));
    }
    return levels;
  }

  private static List<Level> levels(Ware ware, double space) {
    List<Level> levels = new ArrayList<>();
    for (int k = 0; k <= 30; k++) {
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
