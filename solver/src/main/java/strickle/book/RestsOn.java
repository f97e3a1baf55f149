package strickle.book;

/**
 * Where the pieces of a run lie from the start of a step to the start of the next, or to ready.
 *
 * @param station id of the station
 * @param placesEach places one piece takes, 1 to 1000
 */
public record RestsOn(String station, int placesEach) {

  /**
   * Checks the use of the station.
   *
   * @throws Faulty with every fault, paths relative to it
   */
  public RestsOn {
    Check check = new Check();
    check.id(".station", station);
    check.whole(".placesEach", placesEach, 1, Check.MOST_AT_ONCE);
    check.done();
  }
}
