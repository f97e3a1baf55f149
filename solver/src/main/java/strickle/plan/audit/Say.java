package strickle.plan.audit;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Puts figures into the text of a finding. */
final class Say {

  private static final int DECIMALS = 3;

  private Say() {}

  /** A number to three decimals at most, without a needless fraction. */
  static String number(double value) {
    if (!Double.isFinite(value)) {
      return Double.toString(value);
    }
    return BigDecimal.valueOf(value)
        .setScale(DECIMALS, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
