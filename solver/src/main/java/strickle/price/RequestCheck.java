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
      if (!new Sale(channel).leavesRoomFor(request.marginPercent())) {
        faults.add(noRoom(channel, request.marginPercent()));
      }
    }
    CurrencyUnit currency = book.studio().currency();
    if (PriceRequest.digits(request.ending()) > currency.getDecimalPlaces()) {
      faults.add(tooFine(request.ending(), currency));
    }
    return faults;
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

  private static Fault tooFine(BigDecimal ending, CurrencyUnit currency) {
    int places = currency.getDecimalPlaces();
    String right =
        places == 0
            ? "0, for prices in " + currency.getCode() + " are whole"
            : "at most " + places + " decimals, as prices in " + currency.getCode() + " have";
    return new Fault(".ending", PriceRequest.found(ending), right);
  }
}
