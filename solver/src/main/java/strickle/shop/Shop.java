package strickle.shop;

import java.util.List;

/**
 * Everything there is to schedule. Indices in its parts point into its lists.
 *
 * @param horizonMinutes no activity may end after this
 * @param lateUnitMinutes lateness is counted in started units of this many minutes, 1 or more
 * @param workers a calendar for each worker; at most 64
 * @param clocks clocks that waits are measured on; the first is usually {@link Clock#wall()}
 * @param resources what can be held
 * @param families what may share a lot
 * @param kinds what is to be done
 * @param links what has to wait for what
 * @param dues when it has to be done
 * @param fixed lots that are already settled, in the order in which they are placed; those under
 *     way come first
 */
public record Shop(
    int horizonMinutes,
    int lateUnitMinutes,
    List<Calendar> workers,
    List<Clock> clocks,
    List<Resource> resources,
    List<Family> families,
    List<Kind> kinds,
    List<Link> links,
    List<Due> dues,
    List<FixedLot> fixed) {

  /** The most workers a shop can have: a set of them is the bits of one long. */
  public static final int MOST_WORKERS = 64;

  /** Copies the lists and checks what no part can check alone. */
  public Shop {
    if (workers.size() > MOST_WORKERS) {
      throw new IllegalArgumentException(
          "at most " + MOST_WORKERS + " workers, not " + workers.size());
    }
    if (lateUnitMinutes < 1 || horizonMinutes < 1) {
      throw new IllegalArgumentException("a late unit and a horizon of 1 minute or more");
    }
    workers = List.copyOf(workers);
    clocks = List.copyOf(clocks);
    resources = List.copyOf(resources);
    families = List.copyOf(families);
    kinds = List.copyOf(kinds);
    links = List.copyOf(links);
    dues = List.copyOf(dues);
    fixed = List.copyOf(fixed);
  }

  /**
   * Refuses indices that point nowhere and parts that do not go together.
   *
   * @throws IllegalArgumentException naming the part
   */
  Shop checked() {
    ShopCheck.check(this);
    return this;
  }

  /** How many jobs there are to do, settled ones included. */
  public int jobs() {
    return kinds.stream().mapToInt(Kind::jobs).sum();
  }
}
