package strickle.plan.promise;

import java.time.LocalDateTime;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * What a buyer asks for.
 *
 * @param piece id of the piece
 * @param quantity how many pieces
 * @param latest until when it would have to be ready, local time; empty when the buyer did not say
 * @param order the id the new order is to have; empty for one that is free
 * @param buyer whom it is for; may be empty
 * @param schedules how many schedules each search may lay out, 1 or more; by the size of the plan
 *     when empty
 * @param seed where the searches' chance begins
 */
public record PromiseRequest(
    String piece,
    int quantity,
    Optional<LocalDateTime> latest,
    Optional<String> order,
    String buyer,
    OptionalLong schedules,
    long seed) {

  /** A request for an order that nobody has named yet. */
  public PromiseRequest(
      String piece,
      int quantity,
      Optional<LocalDateTime> latest,
      OptionalLong schedules,
      long seed) {
    this(piece, quantity, latest, Optional.empty(), "", schedules, seed);
  }
}
