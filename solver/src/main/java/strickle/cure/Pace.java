package strickle.cure;

import java.time.Instant;
import java.util.Objects;

/**
 * How fast concrete ages from a moment on.
 *
 * @param from when this pace begins; it holds until the next one does
 * @param factor hours of age gained in one elapsed hour, above 0
 */
public record Pace(Instant from, double factor) {

  /**
   * Refuses what would let a wait run on for ever.
   *
   * @throws IllegalArgumentException unless the factor is above 0
   */
  public Pace {
    Objects.requireNonNull(from, "from");
    if (!(factor > 0 && Double.isFinite(factor))) {
      throw new IllegalArgumentException(
          "A pace of " + factor + " from " + from + " cannot be; the factor is above 0.");
    }
  }
}
