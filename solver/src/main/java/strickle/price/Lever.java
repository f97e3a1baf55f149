package strickle.price;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * One thing turned alone, all else as it is, until the margin wanted just holds.
 *
 * @param kind what is turned
 * @param unit what its values are in: "min", "castings", "%", a currency, or a currency by kilogram
 * @param present its value now
 * @param closing the value at which the margin just holds, rounded to the safe side; when it holds
 *     already, how far the value may go the other way. Empty when no value does
 * @param limit the best value there is; empty for one without a limit
 * @param marginAtLimitPercent the margin with the best value there is; empty without a limit that
 *     makes sense
 * @param note what else it takes, or why it makes no difference; may be empty
 */
public record Lever(
    LeverKind kind,
    String unit,
    BigDecimal present,
    Optional<BigDecimal> closing,
    Optional<BigDecimal> limit,
    Optional<BigDecimal> marginAtLimitPercent,
    Optional<String> note) {}
