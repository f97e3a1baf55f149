package strickle.supply;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import org.joda.money.CurrencyUnit;

/**
 * What a plan uses and what to buy for it.
 *
 * @param currency the book's
 * @param now from when on something can be ordered
 * @param materials everything the plan uses: what runs out first stands first, then what is enough,
 *     in the order of the book
 * @param cost what all packs cost
 * @param tooEarly what begins before its material can be there, in the order of time
 */
public record ShoppingList(
    CurrencyUnit currency,
    OffsetDateTime now,
    List<Purchase> materials,
    BigDecimal cost,
    List<TooEarly> tooEarly) {

  /** Copies the lists. */
  public ShoppingList {
    materials = List.copyOf(materials);
    tooEarly = List.copyOf(tooEarly);
  }
}
