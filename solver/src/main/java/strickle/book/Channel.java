package strickle.book;

import java.math.BigDecimal;

/**
 * A way to sell: an own table, a shop's shelf, a web page.
 *
 * @param id 1 to 64 characters
 * @param name 1 to 200 characters
 * @param percentFee what the channel keeps of the price paid, in percent, 0 to below 100
 * @param fixedFee what the channel keeps of every sale, in the book's currency, 0 or more
 * @param discountPercent what comes off the list price, in percent, 0 to below 100
 */
public record Channel(
    String id,
    String name,
    BigDecimal percentFee,
    BigDecimal fixedFee,
    BigDecimal discountPercent) {

  /**
   * Checks the channel.
   *
   * @throws Faulty with every fault, paths relative to the channel
   */
  public Channel {
    Check check = new Check();
    check.id(".id", id);
    check.name(".name", name);
    check.percentOff(".percentFee", percentFee);
    check.amount(".fixedFee", fixedFee);
    check.percentOff(".discountPercent", discountPercent);
    check.done();
  }
}
