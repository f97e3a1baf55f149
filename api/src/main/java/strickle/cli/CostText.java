package strickle.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.CurrencyUnit;
import strickle.price.LargestRemainder;

/** Amounts of money as a text shows them: in the currency's own digits. */
record CostText(int decimals) {

  /** For amounts in a currency. */
  static CostText in(CurrencyUnit currency) {
    return new CostText(currency.getDecimalPlaces());
  }

  /** One amount, halves away from zero: "29.18". */
  String of(BigDecimal amount) {
    return amount.setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }

  /** One amount rounded up, as what is to be reached: "30.37". */
  String up(BigDecimal amount) {
    return amount.setScale(decimals, RoundingMode.CEILING).toPlainString();
  }

  /** One amount with its sign: "+1.20", "-0.30"; "0.00" for none. */
  String signed(BigDecimal amount) {
    String text = of(amount);
    return new BigDecimal(text).signum() > 0 ? "+" + text : text;
  }

  /** Several amounts that add up to a whole: as shown they do so as well. */
  List<BigDecimal> shares(BigDecimal whole, List<BigDecimal> amounts) {
    return LargestRemainder.share(whole.setScale(decimals, RoundingMode.HALF_UP), amounts);
  }

  /** The same as texts, the whole at the end. */
  List<String> sharesAndWhole(BigDecimal whole, List<BigDecimal> amounts) {
    List<String> texts = new ArrayList<>(shares(whole, amounts).stream().map(this::of).toList());
    texts.add(of(whole));
    return texts;
  }

  /** Minutes to a tenth: "52.7". */
  static String tenths(BigDecimal number) {
    return number.setScale(1, RoundingMode.HALF_UP).toPlainString();
  }

  /** Minutes to a tenth with their sign: "+5.0". */
  static String signedTenths(BigDecimal number) {
    String text = tenths(number);
    return new BigDecimal(text).signum() > 0 ? "+" + text : text;
  }
}
