package strickle.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.CurrencyUnit;
import strickle.book.Book;
import strickle.book.Channel;
import strickle.book.Fault;

/** Holds a price request against the book it is asked of. */
final class RequestCheck {

  private RequestCheck() {}

  /**
   * What the book makes impossible: {@code .marginPercent} for each channel whose fee leaves no
   * room for the margin, and {@code .ending} when the ending has more digits than the currency.
   */
  static List<Fault> faults(Book book, PriceRequest request) {
    List<Fault> faults = new ArrayList<>();
    for (Channel channel : book.channels()) {
      room(channel, request.marginPercent(), faults);
    }
    faults.addAll(ofPrice(book, ".ending", request.ending()));
    faults.addAll(ofPrice(book, ".every", request.every()));
    return faults;
  }

  /** Notes a margin that the fee of a channel leaves no room for. */
  static void room(Channel channel, BigDecimal marginPercent, List<Fault> faults) {
    if (!new Sale(channel).leavesRoomFor(marginPercent)) {
      faults.add(noRoom(channel, marginPercent));
    }
  }

  /** A price, or a part of one, that has more digits than the currency. */
  static List<Fault> ofPrice(Book book, String path, BigDecimal price) {
    CurrencyUnit currency = book.studio().currency();
    return PriceRequest.digits(price) > currency.getDecimalPlaces()
        ? List.of(tooFine(path, price, currency))
        : List.of();
  }

  /** A piece that a plan makes no good one of. */
  static Fault notPlanned(String path, String piece) {
    String found = '"' + piece + "\", of which the plan makes no good one";
    return new Fault(path, found, "a piece of the plan, or no plan");
  }

  private static Fault noRoom(Channel channel, BigDecimal margin) {
    String fee = PriceRequest.found(channel.percentFee());
    String room = PriceRequest.found(Exact.HUNDRED.subtract(channel.percentFee()));
    String found =
        PriceRequest.found(margin)
            + " beside the fee of "
            + fee
            + " percent in channel \""
            + channel.id()
            + "\"";
    String right = "a margin under " + room + " percent, so that no price is all fee and margin";
    return new Fault(".marginPercent", found, right);
  }

  private static Fault tooFine(String path, BigDecimal price, CurrencyUnit currency) {
    int places = currency.getDecimalPlaces();
    String right =
        places == 0
            ? "a whole number, for prices in " + currency.getCode() + " have no decimals"
            : "at most " + places + " decimals, as prices in " + currency.getCode() + " have";
    return new Fault(path, PriceRequest.found(price), right);
  }
}
