package strickle.plan.promise;

import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * What can be promised for a new order.
 *
 * @param order the id the new order has in the books of the offers; no present order has it
 * @param piece id of the piece
 * @param quantity how many pieces
 * @param from the moment before which nothing new begins: as the present plan does, or as it was
 *     laid out anew
 * @param kept the earliest date found that makes no present order later
 * @param still the earliest date with everything present exactly as planned, where it is another
 * @param pressed the earliest date found if others may slip, where it is earlier than the kept one
 * @param latest what is to be said of the date asked for; empty when none was
 */
public record Promise(
    String order,
    String piece,
    int quantity,
    OffsetDateTime from,
    Optional<Offer> kept,
    Optional<Offer> still,
    Optional<Offer> pressed,
    Optional<Latest> latest) {

  /** The same promise with the reasons of all late orders. */
  Promise explained() {
    return new Promise(
        order,
        piece,
        quantity,
        from,
        kept.map(Offer::explained),
        still.map(Offer::explained),
        pressed.map(Offer::explained),
        latest.map(Latest::explained));
  }
}
