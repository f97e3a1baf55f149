package strickle.price;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import strickle.book.Fault;
import strickle.book.Faulty;

/**
 * The cost of one good piece and its prices. Amounts are in the book's currency to four decimals
 * (halves up). The lines add up to {@code full} exactly; the four amounts by kind are each rounded
 * on their own, so that their sum may differ from {@code full} in the last decimal.
 *
 * @param piece the piece's id
 * @param minutes attended minutes for one good piece, to four decimals
 * @param material dry materials, pigment, consumables and packing
 * @param labour minutes/60 x wage
 * @param wear what a casting uses up of its forms
 * @param overhead minutes/60 x overhead per productive hour
 * @param full material + labour + wear + overhead
 * @param lines one for each material, labour, one for each form, overhead, in that order
 * @param channels one for each channel of the book, in its order
 * @param comparison with the cost by the typical run; empty when this is it
 */
public record PiecePrices(
    String piece,
    BigDecimal minutes,
    BigDecimal material,
    BigDecimal labour,
    BigDecimal wear,
    BigDecimal overhead,
    BigDecimal full,
    List<CostLine> lines,
    List<ChannelPrice> channels,
    Optional<CostComparison> comparison) {

  /**
   * Refuses a missing part and lines that do not add up.
   *
   * @throws Faulty with the path {@code .lines} when the lines do not add up to the full cost
   */
  public PiecePrices {
    Objects.requireNonNull(piece, "piece");
    Objects.requireNonNull(minutes, "minutes");
    Objects.requireNonNull(material, "material");
    Objects.requireNonNull(labour, "labour");
    Objects.requireNonNull(wear, "wear");
    Objects.requireNonNull(overhead, "overhead");
    Objects.requireNonNull(full, "full");
    lines = List.copyOf(lines);
    channels = List.copyOf(channels);
    Objects.requireNonNull(comparison, "comparison");
    BigDecimal sum = lines.stream().map(CostLine::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
    if (sum.compareTo(full) != 0) {
      throw new Faulty(
          List.of(new Fault(".lines", "a sum of " + sum, "lines that add up to " + full)));
    }
  }

  /** The cost and prices of a piece by its typical run. */
  public PiecePrices(
      String piece,
      BigDecimal minutes,
      BigDecimal material,
      BigDecimal labour,
      BigDecimal wear,
      BigDecimal overhead,
      BigDecimal full,
      List<CostLine> lines,
      List<ChannelPrice> channels) {
    this(piece, minutes, material, labour, wear, overhead, full, lines, channels, Optional.empty());
  }

  /** The same with a comparison. */
  PiecePrices with(CostComparison other) {
    return new PiecePrices(
        piece,
        minutes,
        material,
        labour,
        wear,
        overhead,
        full,
        lines,
        channels,
        Optional.of(other));
  }
}
