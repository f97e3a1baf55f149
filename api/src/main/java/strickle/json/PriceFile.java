package strickle.json;

import strickle.json.contract.Shape;
import strickle.price.Prices;

/** Writes prices ({@code strickle-prices/1}), amounts with all the decimals they have. */
public final class PriceFile {

  private static final FileFormat FORMAT = new FileFormat("strickle-prices/1", "a price list");

  /** What it looks like. */
  public static final Shape SHAPE = new Shape.Of(Prices.class, FORMAT.name());

  private PriceFile() {}

  /** Writes prices, with a newline at the end. */
  public static String write(Prices prices) {
    return FORMAT.text(RecordWriter.object(prices));
  }
}
