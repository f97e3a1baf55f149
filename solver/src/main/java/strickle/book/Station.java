package strickle.book;

/**
 * Where pieces lie while they wait: a rack, a curing box.
 *
 * @param id 1 to 64 characters
 * @param name 1 to 200 characters
 * @param places how many places it has, 1 to 100000
 */
public record Station(String id, String name, int places) {

  /**
   * Checks the station.
   *
   * @throws Faulty with every fault, paths relative to the station
   */
  public Station {
    Check check = new Check();
    check.id(".id", id);
    check.name(".name", name);
    check.whole(".places", places, 1, Check.MOST_COUNT);
    check.done();
  }
}
