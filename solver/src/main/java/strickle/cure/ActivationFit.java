package strickle.cure;

import java.util.List;
import java.util.Optional;

/**
 * The activation that the studio's own records show: the slope of the logarithm of the hours over
 * the inverse temperature in kelvin.
 *
 * @param kelvin Q = E/R in kelvin
 * @param lowKelvin 90 of 100 such fits hold the true one between this
 * @param highKelvin and this
 */
public record ActivationFit(double kelvin, double lowKelvin, double highKelvin) {

  private static final int FEWEST = 4;

  /** Over a smaller range the slope is made of chance. */
  private static final double LEAST_RANGE_C = 5;

  /** The fit; empty with fewer than four records or mean temperatures within 5 °C. */
  static Optional<ActivationFit> of(List<Found> records) {
    double[] temperatures = records.stream().mapToDouble(Found::meanC).sorted().toArray();
    boolean enough =
        records.size() >= FEWEST
            && temperatures[temperatures.length - 1] - temperatures[0] >= LEAST_RANGE_C;
    return enough ? Optional.of(slope(records)) : Optional.empty();
  }

  private static ActivationFit slope(List<Found> records) {
    double[] x =
        records.stream().mapToDouble(one -> AgeRule.Arrhenius.inverseKelvin(one.meanC())).toArray();
    double[] y = records.stream().mapToDouble(one -> Math.log(one.hours())).toArray();
    double middleX = Calibration.mean(x);
    double middleY = Calibration.mean(y);
    double squaresX = 0;
    double products = 0;
    for (int i = 0; i < x.length; i++) {
      squaresX += (x[i] - middleX) * (x[i] - middleX);
      products += (x[i] - middleX) * (y[i] - middleY);
    }
    double slope = products / squaresX;
    double rest = 0;
    for (int i = 0; i < x.length; i++) {
      double miss = y[i] - middleY - slope * (x[i] - middleX);
      rest += miss * miss;
    }
    int freedom = x.length - 2;
    double half = StudentT.ninety(freedom) * Math.sqrt(rest / freedom / squaresX);
    return new ActivationFit(slope, slope - half, slope + half);
  }
}
