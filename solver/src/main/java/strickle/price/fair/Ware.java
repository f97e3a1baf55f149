package strickle.price.fair;

/**
 * A piece as a fair sees it. Money is in the book's currency.
 *
 * @param piece its id
 * @param chances how many could be sold
 * @param most more than this cannot be sold
 * @param stock pieces on hand that no order due before has a claim to
 * @param net what is left of the price of one that is sold
 * @param leftover what one is worth that is brought and not sold, at most {@code net}
 * @param cost what making one more good one costs: material, labour and wear
 */
public record Ware(
    String piece, Chances chances, int most, int stock, double net, double leftover, double cost) {

  /** Below this an amount of money is nothing. */
  private static final double TOLERANCE = 1e-9;

  /** Refuses a leftover worth more than the sale: one would bring pieces so as not to sell them. */
  public Ware {
    if (leftover > net + TOLERANCE) {
      throw new IllegalArgumentException(piece + ": leftover " + leftover + " above net " + net);
    }
  }

  /**
   * What bringing the k-th piece is worth: net x P(D ≥ k) + leftover x P(D < k), less the cost when
   * it has to be made; stock comes first. Source: marginal analysis of the newsvendor problem.
   *
   * @param number k, 1 or more
   */
  public double worth(int number) {
    double sold = chances.atLeast(number);
    return net * sold + leftover * (1 - sold) - (number > stock ? cost : 0);
  }

  /** What bringing so many is worth. */
  public double worthOf(int pieces) {
    double sum = 0;
    for (int number = 1; number <= pieces; number++) {
      sum += worth(number);
    }
    return sum;
  }

  /** E[min(D, k)]: how many of so many are sold on average. */
  public double sold(int pieces) {
    double sum = 0;
    for (int number = 1; number <= pieces; number++) {
      sum += chances.atLeast(number);
    }
    return sum;
  }

  /**
   * How many to bring if nothing limited it: as many as are each worth something. For what has to
   * be made that is the largest k with P(D ≥ k) above C_o/(C_u + C_o), C_u = net − cost, C_o = cost
   * − leftover, which is the smallest Q with F(Q) ≥ the critical ratio.
   */
  public int unlimited() {
    int least = 0;
    int highest = most;
    while (least < highest) {
      int middle = least + (highest - least + 1) / 2;
      boolean worthwhile = worth(middle) > TOLERANCE;
      least = worthwhile ? middle : least;
      highest = worthwhile ? highest : middle - 1;
    }
    return least;
  }
}
