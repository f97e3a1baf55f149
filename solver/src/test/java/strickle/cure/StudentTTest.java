package strickle.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StudentTTest {

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 15, 20, 30, 31, 50, 200})
  void ninetyOfAHundredLieInside(int freedom) {
    // The density of Student's t, integrated by Simpson's rule and taken relative to its whole.
    double edge = StudentT.ninety(freedom);
    double inside = integral(freedom, 0, edge, 20_000);
    double whole = inside + tail(freedom, edge);
    assertEquals(0.90, inside / whole, 2e-4);
  }

  // From the edge to infinity with x = edge / u.
  private static double tail(int freedom, double edge) {
    int steps = 20_000;
    double sum = 0;
    for (int i = 0; i < steps; i++) {
      double u = (i + 0.5) / steps;
      sum += density(freedom, edge / u) * edge / (u * u) / steps;
    }
    return sum;
  }

  private static double integral(int freedom, double from, double to, int steps) {
    double width = (to - from) / steps;
    double sum = density(freedom, from) + density(freedom, to);
    for (int i = 1; i < steps; i++) {
      sum += (i % 2 == 0 ? 2 : 4) * density(freedom, from + i * width);
    }
    return sum * width / 3;
  }

  private static double density(int freedom, double x) {
    return Math.pow(1 + x * x / freedom, -(freedom + 1) / 2.0);
  }
}
