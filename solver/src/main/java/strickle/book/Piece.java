package strickle.book;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * A thing for sale: a mould, a mix and a route.
 *
 * @param id 1 to 64 characters
 * @param name 1 to 200 characters
 * @param mould id of the mould
 * @param mix id of the mix
 * @param goodPercent how many of a hundred castings turn out good, above 0, at most 100
 * @param onHand finished pieces in stock, 0 to 100000
 * @param typicalRun castings usually poured from one lot, 1 to 1000
 * @param route the steps after the mould, in order; may be empty
 * @param finalDryHours elapsed hours from the end of the last task to ready, 0 to 8760
 * @param packing what packing one piece uses up
 * @param price the list price in the book's currency, 0 or more, or empty
 * @param leftoverValue what an unsold piece is still worth after a fair, 0 or more, or empty
 */
public record Piece(
    String id,
    String name,
    String mould,
    String mix,
    double goodPercent,
    int onHand,
    int typicalRun,
    List<Step> route,
    double finalDryHours,
    List<Use> packing,
    Optional<BigDecimal> price,
    Optional<BigDecimal> leftoverValue) {

  /**
   * Checks the piece and copies its lists.
   *
   * @throws Faulty with every fault, paths relative to the piece
   */
  public Piece {
    Check check = new Check();
    check.id(".id", id);
    check.name(".name", name);
    check.id(".mould", mould);
    check.id(".mix", mix);
    check.positive(".goodPercent", goodPercent, 100);
    check.whole(".onHand", onHand, 0, Check.MOST_COUNT);
    check.whole(".typicalRun", typicalRun, 1, Check.MOST_AT_ONCE);
    route = check.list(".route", route);
    check.hours(".finalDryHours", finalDryHours);
    packing = check.list(".packing", packing);
    check.amount(".price", price);
    check.amount(".leftoverValue", leftoverValue);
    check.done();
  }
}
