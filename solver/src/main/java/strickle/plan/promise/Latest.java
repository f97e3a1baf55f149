package strickle.plan.promise;

import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * Whether a date that was asked for is possible.
 *
 * @param at the date
 * @param way how, if at all
 * @param offer a plan in which the new order is ready by then and others slip as little as was
 *     found; empty when it is not possible
 * @param alone when the order would be ready if the studio did nothing else; only where not even
 *     that is by the date
 */
public record Latest(
    OffsetDateTime at, Way way, Optional<Offer> offer, Optional<OffsetDateTime> alone) {

  /** The same with the reasons of the late orders. */
  Latest explained() {
    return new Latest(at, way, offer.map(Offer::explained), alone);
  }

  /** How a date is possible. */
  public enum Way {
    /** No present order becomes later. */
    KEPT,
    /** Others slip. */
    PRESSED,
    /** No plan was found. */
    IMPOSSIBLE
  }
}
