package strickle.book;

import java.time.LocalDateTime;

/**
 * A pour that is settled: the plan must keep it.
 *
 * @param kind always {@value #POUR}
 * @param piece id of the piece poured
 * @param castings castings of it in the lot, 1 to 1000
 * @param start local time at which the pour starts, in whole minutes
 * @param person id of the person who pours
 */
public record Pin(String kind, String piece, int castings, LocalDateTime start, String person) {

  /** The only kind of pin there is. */
  public static final String POUR = "pour";

  /**
   * Checks the pin.
   *
   * @throws Faulty with every fault, paths relative to the pin
   */
  public Pin {
    Check check = new Check();
    check.that(POUR.equals(kind), ".kind", Show.text(kind), "\"pour\"");
    check.id(".piece", piece);
    check.whole(".castings", castings, 1, Check.MOST_AT_ONCE);
    check.moment(".start", start);
    check.id(".person", person);
    check.done();
  }
}
