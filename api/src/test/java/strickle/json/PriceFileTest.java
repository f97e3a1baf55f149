package strickle.json;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;
import strickle.price.ChannelPrice;
import strickle.price.CostKind;
import strickle.price.CostLine;
import strickle.price.PiecePrices;
import strickle.price.PriceBasis;
import strickle.price.Prices;

class PriceFileTest {

  @Test
  void pricesAreWrittenWithAllTheirDecimalsAndWithoutWhatIsNotKnown() {
    Prices prices =
        new Prices(
            CurrencyUnit.USD,
            PriceBasis.STANDARD,
            List.of(
                new PiecePrices(
                    "tray",
                    decimal("6.0000"),
                    decimal("1.2500"),
                    decimal("2.0000"),
                    decimal("0.0000"),
                    decimal("0.5000"),
                    decimal("3.7500"),
                    List.of(new CostLine("white blend", CostKind.MATERIAL, decimal("3.7500"))),
                    List.of(
                        new ChannelPrice(
                            "own-table",
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            decimal("4.1700"),
                            decimal("1E+1"))))));
    assertEquals(
        """
        {
          "format": "strickle-prices/1",
          "currency": "USD",
          "basis": "standard",
          "pieces": [
            {
              "piece": "tray",
              "minutes": 6.0000,
              "material": 1.2500,
              "labour": 2.0000,
              "wear": 0.0000,
              "overhead": 0.5000,
              "full": 3.7500,
              "lines": [{"what": "white blend", "kind": "material", "amount": 3.7500}],
              "channels": [{"channel": "own-table", "breakEven": 4.1700, "suggested": 10}]
            }
          ]
        }
        """,
        PriceFile.write(prices));
  }

  private static BigDecimal decimal(String number) {
    return new BigDecimal(number);
  }
}
