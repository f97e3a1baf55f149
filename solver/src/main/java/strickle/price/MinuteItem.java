package strickle.price;

import java.math.BigDecimal;
import java.util.Objects;

/**
 * Minutes spent on one thing, over all the runs that are looked at.
 *
 * @param what what is done: "mixing", or a step's name
 * @param kind what they grow with
 * @param minutes unrounded
 */
public record MinuteItem(String what, MinuteKind kind, BigDecimal minutes) {

  /** Refuses a missing part. */
  public MinuteItem {
    Objects.requireNonNull(what, "what");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(minutes, "minutes");
  }

  /** So many times as many minutes. */
  MinuteItem times(BigDecimal factor) {
    return new MinuteItem(what, kind, minutes.multiply(factor));
  }
}
