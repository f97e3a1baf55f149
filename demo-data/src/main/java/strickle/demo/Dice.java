package strickle.demo;

import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * Draws everything the generator leaves to chance. {@link Random}'s algorithm is part of its
 * contract, so a seed gives the same draws on every machine; only whole numbers are drawn, so no
 * rounding can differ either.
 */
final class Dice {

  /** Odd and irregular, so that neighbouring seeds do not begin with similar draws. */
  private static final long SCATTER = 0x9E3779B97F4A7C15L;

  private final Random random;

  Dice(long seed) {
    random = new Random(seed * SCATTER ^ (seed >>> 17));
  }

  /** A whole number between two, both possible. */
  int from(int lowest, int highest) {
    return lowest + random.nextInt(highest - lowest + 1);
  }

  /** A number with one decimal between two tenths, both possible: 15 to 25 means 1.5 to 2.5. */
  double tenths(int lowest, int highest) {
    return from(lowest, highest) / 10.0;
  }

  /** True in so many cases of a hundred. */
  boolean chance(int percent) {
    return from(1, 100) <= percent;
  }

  /** One of some things, all equally likely. */
  <T> T oneOf(List<T> things) {
    return things.get(from(0, things.size() - 1));
  }

  /** Puts a list into a random order. */
  void shuffle(List<?> list) {
    Collections.shuffle(list, random);
  }
}
