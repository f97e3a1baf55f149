package strickle.plan.bound;

/** The fewest bins of one size that things of several sizes can lie in. */
final class Bins {

  private Bins() {}

  /**
   * The second lower bound of Martello and Toth, "Lower bounds and reduction procedures for the bin
   * packing problem", Discrete Applied Mathematics 28 (1990), value from memory: for a size a up to
   * half a bin, things larger than the bin less a share with nothing of size a or more, things over
   * half a bin share with no other of these, and what does not fit beside them needs further bins.
   *
   * @param sizes of each kind of thing, 0 or more
   * @param counts how many there are of each kind
   * @param bin what a bin takes, at least the largest size
   */
  static long least(long[] sizes, int[] counts, long bin) {
    long least = least(sizes, counts, bin, 0);
    for (int i = 0; i < sizes.length; i++) {
      if (counts[i] > 0 && sizes[i] > 0 && 2 * sizes[i] <= bin) {
        least = Math.max(least, least(sizes, counts, bin, sizes[i]));
      }
    }
    return least;
  }

  private static long least(long[] sizes, int[] counts, long bin, long small) {
    long alone = 0;
    long halves = 0;
    long room = 0;
    long rest = 0;
    for (int i = 0; i < sizes.length; i++) {
      if (sizes[i] > bin - small) {
        alone += counts[i];
      } else if (2 * sizes[i] > bin) {
        halves += counts[i];
        room += counts[i] * (bin - sizes[i]);
      } else if (sizes[i] >= small) {
        rest += counts[i] * sizes[i];
      }
    }
    return alone + halves + (rest > room ? Math.ceilDiv(rest - room, bin) : 0);
  }
}
