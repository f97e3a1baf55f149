package strickle.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Demand;
import strickle.book.Fair;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Piece;

/**
 * A fair's table cost spread over what is expected to sell there when enough is brought. Amounts
 * are in the book's currency, to four decimals.
 *
 * @param fair the fair's id
 * @param channel id of the channel it sells through
 * @param tableCost what the table costs
 * @param expected pieces expected to sell
 * @param perPiece table cost of each piece sold; empty when none is expected to sell
 * @param takings what buyers are expected to pay
 * @param beforeTable expected profit before the table is paid
 * @param profit expected profit when it is
 * @param breakEvenPieces pieces, in the expected proportion, that pay for the table; empty when
 *     they bring nothing towards it
 * @param pieces what is expected of each piece
 */
public record FairTable(
    String fair,
    String channel,
    BigDecimal tableCost,
    BigDecimal expected,
    Optional<BigDecimal> perPiece,
    BigDecimal takings,
    BigDecimal beforeTable,
    BigDecimal profit,
    Optional<BigDecimal> breakEvenPieces,
    List<FairPiece> pieces) {

  /**
   * One piece at a fair; amounts are of one good piece.
   *
   * @param piece the piece's id
   * @param expected how many are expected to sell
   * @param price asked at the fair
   * @param net what is left of it after discount and fees
   * @param full what it costs
   * @param profit net less full cost
   * @param withTable that less its part of the table
   */
  public record FairPiece(
      String piece,
      BigDecimal expected,
      BigDecimal price,
      BigDecimal net,
      BigDecimal full,
      BigDecimal profit,
      BigDecimal withTable) {}

  /** Freezes the list. */
  public FairTable {
    pieces = List.copyOf(pieces);
  }

  /**
   * The table of a fair.
   *
   * @param minutes where the minutes of its pieces come from
   * @throws Faulty with {@code .fair} for one that the book does not have, or of which the minutes
   *     of a piece are not known, and {@code $.fairs[0].demand[0].price} for a piece without a
   *     price
   */
  public static FairTable of(Book book, String fair, MinutesOfPiece minutes) {
    List<Fault> faults = new ArrayList<>(Weighable.faults(book));
    Optional<Fair> one = Named.fair(book, fair, ".fair", faults);
    one.ifPresent(found -> check(book, found, minutes, faults));
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
    return new FairSpread(book, one.orElseThrow(), minutes).table();
  }

  private static void check(Book book, Fair fair, MinutesOfPiece minutes, List<Fault> faults) {
    String path = "$.fairs[" + book.fairs().indexOf(fair) + "].demand[";
    for (int i = 0; i < fair.demand().size(); i++) {
      Demand demand = fair.demand().get(i);
      Piece piece = book.piece(demand.piece());
      if (demand.price().or(piece::price).isEmpty()) {
        String right = "a price there, or of the piece";
        faults.add(new Fault(path + i + "].price", "nothing", right));
      }
      if (minutes.perGoodPiece(piece).isEmpty()) {
        faults.add(RequestCheck.notPlanned(".fair", piece.id()));
      }
    }
  }
}
