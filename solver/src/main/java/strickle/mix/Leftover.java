package strickle.mix;

import java.util.Comparator;
import java.util.List;

/** What is left of a batch, and the moulds that could take it. */
public final class Leftover {

  private static final double ROUND_OFF = 1e-9;

  private Leftover() {}

  /**
   * A mould that is free.
   *
   * @param mould its id
   * @param gramsEach wet mix of one casting, waste included, above 0
   * @param most castings its forms allow, 0 or more
   */
  public record Free(String mould, double gramsEach, int most) {}

  /**
   * A mould that could take some of it.
   *
   * @param mould its id
   * @param castings how many castings the leftover fills
   * @param leftGrams what is then still left
   */
  public record Taker(String mould, int castings, double leftGrams) {}

  /** The moulds that a leftover fills at least once, the one that leaves least first. */
  public static List<Taker> takers(double grams, List<Free> moulds) {
    return moulds.stream()
        .map(mould -> taker(grams, mould))
        .filter(taker -> taker.castings() > 0)
        .sorted(Comparator.comparingDouble(Taker::leftGrams).thenComparing(Taker::mould))
        .toList();
  }

  private static Taker taker(double grams, Free mould) {
    double fills = Math.floor(grams / mould.gramsEach() + ROUND_OFF);
    int castings = (int) Math.min(fills, mould.most());
    double left = Math.max(0, grams - castings * mould.gramsEach());
    return new Taker(mould.mould(), castings, left);
  }
}
